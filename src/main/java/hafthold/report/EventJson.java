package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.quantity.Band;
import hafthold.simulate.BondedEventAnswer;
import hafthold.simulate.BondedEventYear;
import hafthold.simulate.EventAnswer;
import hafthold.simulate.EventYear;
import hafthold.simulate.SofteningMargin;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** What events do to one scale, as keys of the object that is told of it. */
final class EventJson {
    private static final double PERCENT = 100;

    private EventJson() {}

    static void write(JsonGenerator json, EventYear year) throws IOException {
        json.writeArrayFieldStart("events");
        for (EventAnswer answer : year.answers()) {
            json.writeStartObject();
            answer(json, answer);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeObjectField(
                "event_softens_first",
                year.softening().map(SofteningMargin::material).orElse(null));
        figures(json, EventFigures.OF_YEAR, year);
    }

    static void write(JsonGenerator json, BondedEventYear year) throws IOException {
        json.writeArrayFieldStart("events");
        for (BondedEventAnswer answer : year.answers()) {
            json.writeStartObject();
            answer(json, answer.scale());
            JsonFigures.band(json, "glue_use", answer.glueUse());
            JsonFigures.band(json, "split_use", answer.splitUse());
            json.writeEndObject();
        }
        json.writeEndArray();
        JsonFigures.number(json, "event_mc_left_at_end_points", PERCENT * year.leftAtEnd());
        JsonFigures.number(json, "event_mc_above_year_points", PERCENT * year.meanAbove());
    }

    private static void answer(JsonGenerator json, EventAnswer answer) throws IOException {
        json.writeStringField("event", answer.event().id());
        json.writeNumberField("times", answer.times());
        figures(json, EventFigures.ALL, answer);
    }

    private static <T> void figures(JsonGenerator json, List<EventFigures.Key<T>> keys, T told) throws IOException {
        for (EventFigures.Key<T> key : keys) {
            Optional<Band> figure = key.of().apply(told);
            if (figure.isEmpty()) {
                json.writeNullField(key.key());
            } else if (key.isBand()) {
                JsonFigures.band(json, key.key(), figure.get());
            } else {
                JsonFigures.number(json, key.key(), figure.get().value());
            }
        }
    }
}
