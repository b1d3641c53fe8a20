package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.quantity.Band;
import hafthold.report.AnswerFigures.BandKey;
import hafthold.report.AnswerFigures.NumberKey;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Settling;
import hafthold.source.Finding;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What every JSON of ours is made of: numbers, bands, the figures of a year, and what they rest on. */
final class JsonFigures {
    private JsonFigures() {}

    /** A plain number. */
    static void number(JsonGenerator json, String key, double number) throws IOException {
        json.writeNumberField(key, AnswerFigures.stable(number));
    }

    /** An object with low, value and high. */
    static void band(JsonGenerator json, String key, Band band) throws IOException {
        band(json, key, band, 1);
    }

    /** Likewise, in a unit that so many of make one of the band's. */
    static void band(JsonGenerator json, String key, Band band, double factor) throws IOException {
        json.writeObjectFieldStart(key);
        number(json, "low", factor * band.low());
        number(json, "value", factor * band.value());
        number(json, "high", factor * band.high());
        json.writeEndObject();
    }

    /** Likewise; null where it is not known. */
    static void band(JsonGenerator json, String key, Optional<Band> band) throws IOException {
        if (band.isPresent()) {
            band(json, key, band.get());
        } else {
            json.writeNullField(key);
        }
    }

    /** The moisture contents of a year. */
    static void moisture(JsonGenerator json, HandleYear year) throws IOException {
        for (NumberKey key : AnswerFigures.MOISTURE) {
            number(json, key.key(), key.of().applyAsDouble(year));
        }
    }

    /** The year's worst movements. */
    static void movements(JsonGenerator json, HandleYear year) throws IOException {
        for (BandKey key : AnswerFigures.MOVEMENTS) {
            band(json, key.key(), key.of().apply(year));
        }
    }

    /** When a change shows and when sanding may begin. */
    static void settling(JsonGenerator json, Settling settling) throws IOException {
        band(json, "shows_days", settling.showsDays());
        band(json, "rest_days", settling.restDays());
        number(json, "do_not_sand_days", settling.sandDays());
    }

    /** What an answer rests on; an equal sentence is told once, for all it is about. */
    static void findings(JsonGenerator json, List<Finding> findings) throws IOException {
        Map<String, List<Finding>> told = findings.stream()
                .collect(Collectors.groupingBy(
                        finding -> finding.kind() + BenchStyle.ENGLISH.tell(finding.message()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        json.writeArrayFieldStart("findings");
        for (List<Finding> alike : told.values()) {
            Finding first = alike.get(0);
            json.writeStartObject();
            json.writeStringField("kind", first.kind().name().toLowerCase(Locale.ROOT));
            json.writeArrayFieldStart("subjects");
            for (String subject :
                    alike.stream().map(Finding::subject).distinct().toList()) {
                json.writeString(subject);
            }
            json.writeEndArray();
            json.writeStringField("text", BenchStyle.ENGLISH.tell(first.message()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
