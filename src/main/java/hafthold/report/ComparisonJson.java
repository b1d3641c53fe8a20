package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.EventComparison;
import hafthold.decide.Reason;
import hafthold.quantity.Band;
import hafthold.report.AnswerFigures.BandKey;
import hafthold.report.AnswerFigures.NumberKey;
import hafthold.simulate.EventYear;
import hafthold.simulate.HandleYear;
import hafthold.source.Finding;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** A comparison as one JSON object: numbers unformatted, units at the end of the keys, equal runs give equal bytes. */
public final class ComparisonJson {
    private static final AnswerWords WORDS = new AnswerWords(LengthUnits.MM);

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
        number(json, "temperature_c", comparison.madeTemperature().celsius());
        number(json, "rh_percent", comparison.madeHumidity().percent());
        json.writeEndObject();
        json.writeArrayFieldStart("results");
        for (Ranked answer : comparison.ranked()) {
            result(json, answer, answers);
        }
        json.writeEndArray();
        findings(json, comparison.findings());
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
        for (NumberKey key : AnswerFigures.MOISTURE) {
            number(json, key.key(), key.of().applyAsDouble(year));
        }
        for (BandKey key : AnswerFigures.MOVEMENTS) {
            AnswerFigures.write(json, key.key(), key.of().apply(year), 1);
        }
        if (year.load().isPresent()) {
            band(json, "glue_use", year.load().get().glueUse());
            AnswerFigures.write(json, "split_use", year.load().get().splitUse(), 1);
        }
        json.writeNumberField("worst_month", year.worstMonth());
        StayJson.write(json, year);
        if (answer.settling().isPresent()) {
            band(json, "shows_days", answer.settling().get().showsDays());
            band(json, "rest_days", answer.settling().get().restDays());
            number(json, "do_not_sand_days", answer.settling().get().sandDays());
        }
        json.writeStringField("verdict", answer.verdict().word());
        json.writeStringField("evidence", year.grounds().evidence().grade());
        json.writeStringField("rests_on", year.grounds().restsOn().figure());
        SampledFigures.write(json, answer.likelihood(), year);
        SampledFigures.drivers(json, year.grounds().drivers());
        json.writeBooleanField("bonded", EdgeStep.isBonded(year));
        json.writeArrayFieldStart("reasons");
        for (Reason reason : answer.reasons()) {
            json.writeString(Paragraph.plain(WORDS.reason(reason)));
        }
        json.writeEndArray();
        for (EventYear events : answers.events()) {
            if (events.isOf(year)) {
                EventJson.write(json, events);
            }
        }
        findings(json, year.grounds().findings());
        json.writeEndObject();
    }

    private static void band(JsonGenerator json, String key, Band band) throws IOException {
        AnswerFigures.write(json, key, band, 1);
    }

    private static void number(JsonGenerator json, String key, double number) throws IOException {
        json.writeNumberField(key, AnswerFigures.stable(number));
    }

    private static void findings(JsonGenerator json, List<Finding> findings) throws IOException {
        json.writeArrayFieldStart("findings");
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringField("kind", finding.kind().name().toLowerCase(Locale.ROOT));
            json.writeStringField("subject", finding.subject());
            json.writeStringField("text", finding.text());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
