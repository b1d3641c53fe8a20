package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.simulate.HandleYear;
import hafthold.simulate.StaySpan;
import java.io.IOException;

/** Stays as keys of an answer; none are written where the knife goes to one place. */
final class StayJson {
    private StayJson() {}

    static void write(JsonGenerator json, HandleYear year) throws IOException {
        if (year.stays().isEmpty()) {
            return;
        }
        StaySpan worst = StayWords.worst(year);
        json.writeStringField("worst_date", worst.worstOn().toString());
        json.writeStringField("worst_stay", worst.name());
        json.writeArrayFieldStart("stays");
        for (StaySpan span : year.stays()) {
            json.writeStartObject();
            json.writeStringField("name", span.name());
            json.writeStringField("from", span.from().toString());
            json.writeStringField("to", span.to().toString());
            json.writeBooleanField("repeats", span.repeats());
            JsonFigures.number(json, "mc_min_percent", 100 * span.moistureLowest());
            JsonFigures.number(json, "mc_max_percent", 100 * span.moistureHighest());
            JsonFigures.number(json, "lowest_step_mm", 1000 * span.lowestMetres());
            JsonFigures.number(json, "highest_step_mm", 1000 * span.highestMetres());
            json.writeStringField("worst_date", span.worstOn().toString());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
