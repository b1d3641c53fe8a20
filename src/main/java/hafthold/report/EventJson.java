package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.simulate.BondedEventAnswer;
import hafthold.simulate.BondedEventYear;
import hafthold.simulate.EventAnswer;
import hafthold.simulate.EventYear;
import java.io.IOException;

/** What events do to one scale, as keys of the object that is told of it. */
final class EventJson {
    private static final double PERCENT = 100;
    private static final double MILLI = 1e3;

    private EventJson() {}

    static void write(JsonGenerator json, EventYear year) throws IOException {
        json.writeArrayFieldStart("events");
        for (EventAnswer answer : year.answers()) {
            json.writeStartObject();
            answer(json, answer);
            json.writeEndObject();
        }
        json.writeEndArray();
        JsonFigures.band(json, "event_softening_margin_k", year.softeningMarginKelvin());
        json.writeStringField("event_softens_first", year.softens());
        JsonFigures.number(json, "event_mc_left_at_end_points", PERCENT * year.leftAtEnd());
        JsonFigures.number(json, "event_mc_above_year_points", PERCENT * year.meanAbove());
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
        JsonFigures.number(json, "mc_face_max_percent", PERCENT * answer.faceWettest());
        JsonFigures.number(json, "mc_face_min_percent", PERCENT * answer.faceDriest());
        JsonFigures.band(json, "mc_mean_gain_points", answer.meanGain(), PERCENT);
        JsonFigures.band(json, "mc_mean_loss_points", answer.meanLoss(), PERCENT);
        JsonFigures.band(json, "edge_shy_mm", answer.edgeShy(), MILLI);
        JsonFigures.band(json, "edge_proud_mm", answer.edgeProud(), MILLI);
        JsonFigures.band(json, "pin_crack_use", answer.pinCrackUse());
        JsonFigures.band(json, "hottest_c", answer.hottestCelsius());
        JsonFigures.number(json, "coldest_c", answer.coldestCelsius());
        if (answer.isBack()) {
            JsonFigures.number(json, "back_within_h", answer.backHours());
        } else {
            json.writeNullField("back_within_h");
        }
        JsonFigures.number(json, "mc_left_before_second_points", PERCENT * answer.leftBeforeSecond());
        JsonFigures.number(json, "mc_left_before_last_points", PERCENT * answer.leftBeforeLast());
        JsonFigures.band(json, "end_grain_depth_mm", answer.endGrainMetres(), MILLI);
    }
}
