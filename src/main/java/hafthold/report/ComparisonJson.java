package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.EventComparison;
import hafthold.decide.Reason;
import hafthold.simulate.EventYear;
import hafthold.simulate.HandleYear;
import java.io.IOException;

/** A comparison as one JSON object: numbers unformatted, units at the end of the keys, equal runs give equal bytes. */
public final class ComparisonJson {
    private static final ReasonWords WORDS = new ReasonWords(BenchStyle.ENGLISH, false);

    private ComparisonJson() {}

    /** The object, ending in a line feed. */
    public static String of(Comparison comparison) {
        return of(EventComparison.quiet(comparison));
    }

    /** Likewise, with what each event does. */
    public static String of(EventComparison answers) {
        return JsonText.of(json -> write(json, answers));
    }

    private static void write(JsonGenerator json, EventComparison answers) throws IOException {
        Comparison comparison = answers.comparison();
        json.writeStartObject();
        json.writeStringField("place", comparison.placeId());
        json.writeStringField("setting", comparison.settingId());
        json.writeObjectFieldStart("made");
        JsonFigures.number(json, "temperature_c", comparison.madeTemperature().celsius());
        JsonFigures.number(json, "rh_percent", comparison.madeHumidity().percent());
        json.writeEndObject();
        json.writeArrayFieldStart("results");
        for (Ranked answer : comparison.ranked()) {
            result(json, answer, answers);
        }
        json.writeEndArray();
        JsonFigures.findings(json, comparison.findings());
        json.writeEndObject();
    }

    private static void result(JsonGenerator json, Ranked answer, EventComparison answers) throws IOException {
        HandleYear year = answer.year();
        json.writeStartObject();
        json.writeNumberField("rank", answer.rank());
        json.writeStringField("material", year.scale().id());
        json.writeStringField("name", year.scale().name());
        json.writeStringField("family", year.scale().family().word());
        json.writeStringField("cut", year.scale().cut().word());
        JsonFigures.moisture(json, year);
        JsonFigures.movements(json, year);
        if (year.load().isPresent()) {
            JsonFigures.band(json, "glue_use", year.load().get().glueUse());
            JsonFigures.band(json, "split_use", year.load().get().splitUse());
        }
        json.writeNumberField("worst_month", year.worstMonth());
        StayJson.write(json, year);
        if (answer.settling().isPresent()) {
            JsonFigures.settling(json, answer.settling().get());
        }
        json.writeStringField("verdict", answer.verdict().word());
        json.writeStringField("evidence", year.grounds().evidence().grade());
        json.writeStringField("rests_on", new AnswerWords(BenchStyle.ENGLISH).restsOn(year));
        SampledFigures.write(json, answer.likelihood(), year);
        SampledFigures.drivers(json, year.grounds().drivers());
        json.writeBooleanField("bonded", EdgeStep.isBonded(year));
        json.writeArrayFieldStart("reasons");
        for (Reason reason : answer.reasons()) {
            json.writeString(Paragraph.plain(WORDS.clause(reason)));
        }
        json.writeEndArray();
        for (EventYear events : answers.events()) {
            if (events.isOf(year)) {
                EventJson.write(json, events);
            }
        }
        JsonFigures.findings(json, year.grounds().findings());
        json.writeEndObject();
    }
}
