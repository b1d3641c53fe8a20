package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.quantity.Band;
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
        band(json, "event_softening_margin_k", year.softeningMarginKelvin(), 1);
        json.writeStringField("event_softens_first", year.softens());
        number(json, "event_mc_left_at_end_points", PERCENT * year.leftAtEnd());
        number(json, "event_mc_above_year_points", PERCENT * year.meanAbove());
    }

    static void write(JsonGenerator json, BondedEventYear year) throws IOException {
        json.writeArrayFieldStart("events");
        for (BondedEventAnswer answer : year.answers()) {
            json.writeStartObject();
            answer(json, answer.scale());
            band(json, "glue_use", answer.glueUse(), 1);
            AnswerFigures.write(json, "split_use", answer.splitUse(), 1);
            json.writeEndObject();
        }
        json.writeEndArray();
        number(json, "event_mc_left_at_end_points", PERCENT * year.leftAtEnd());
        number(json, "event_mc_above_year_points", PERCENT * year.meanAbove());
    }

    private static void answer(JsonGenerator json, EventAnswer answer) throws IOException {
        json.writeStringField("event", answer.event().id());
        json.writeNumberField("times", answer.times());
        number(json, "mc_face_max_percent", PERCENT * answer.faceWettest());
        number(json, "mc_face_min_percent", PERCENT * answer.faceDriest());
        band(json, "mc_mean_gain_points", answer.meanGain(), PERCENT);
        band(json, "mc_mean_loss_points", answer.meanLoss(), PERCENT);
        band(json, "edge_shy_mm", answer.edgeShy(), MILLI);
        band(json, "edge_proud_mm", answer.edgeProud(), MILLI);
        AnswerFigures.write(json, "pin_crack_use", answer.pinCrackUse(), 1);
        band(json, "hottest_c", answer.hottestCelsius(), 1);
        number(json, "coldest_c", answer.coldestCelsius());
        if (answer.isBack()) {
            number(json, "back_within_h", answer.backHours());
        } else {
            json.writeNullField("back_within_h");
        }
        number(json, "mc_left_before_second_points", PERCENT * answer.leftBeforeSecond());
        number(json, "mc_left_before_last_points", PERCENT * answer.leftBeforeLast());
        band(json, "end_grain_depth_mm", answer.endGrainMetres(), MILLI);
    }

    private static void band(JsonGenerator json, String key, Band band, double factor) throws IOException {
        AnswerFigures.write(json, key, band, factor);
    }

    private static void number(JsonGenerator json, String key, double number) throws IOException {
        json.writeNumberField(key, AnswerFigures.stable(number));
    }
}
