package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.decide.CouponAnswer;
import hafthold.decide.CouponFigure;
import hafthold.decide.CouponPlan;
import hafthold.decide.CouponStudy;
import hafthold.decide.OutcomeTally;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/** What coupons told as a JSON object: numbers unformatted, units at the end of the keys. */
public final class CouponJson {
    private static final double MILLI = 1e3;
    private static final double PERCENT = 100;
    private static final double PICO = 1e12;

    private CouponJson() {}

    /** The object, ending in a line feed. */
    public static String of(CouponAnswer answer) {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeArrayFieldStart("materials");
            for (CouponStudy study : answer.studies()) {
                study(json, study);
            }
            json.writeEndArray();
            outcomes(json, answer.outcomes());
            JsonFigures.findings(json, answer.findings());
            json.writeEndObject();
        });
    }

    private static void study(JsonGenerator json, CouponStudy study) throws IOException {
        json.writeStartObject();
        json.writeStringField("material", study.material().id());
        json.writeStringField("name", study.material().name());
        json.writeStringField("own_id", study.own().id());
        json.writeBooleanField("use", !study.isAdverse() && !study.told().isEmpty());
        json.writeArrayFieldStart("figures");
        for (CouponFigure figure : study.figures()) {
            json.writeStartObject();
            json.writeStringField("figure", key(figure.kind()));
            json.writeStringField("unit", unit(figure.kind()));
            JsonFigures.band(json, "book", figure.book(), factor(figure.kind()));
            JsonFigures.band(json, "own", figure.own(), factor(figure.kind()));
            json.writeBooleanField("told", figure.told());
            JsonFigures.number(json, "times_as_sure", figure.timesAsSure());
            json.writeBooleanField("beyond_both_bands", figure.apart());
            json.writeEndObject();
        }
        json.writeEndArray();
        readings(json, study);
        json.writeArrayFieldStart("measure_next");
        for (CouponPlan plan : study.plans()) {
            json.writeStartObject();
            json.writeStringField("figure", key(plan.figure()));
            json.writeStringField("coupon", study.coupons().get(plan.coupon()).name());
            json.writeStringField("measure", key(plan.measure()));
            JsonFigures.number(json, "times_narrower", plan.timesNarrower());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("warnings");
        for (String warning : new CouponWords(BenchStyle.ENGLISH, study).warnings()) {
            json.writeString(warning);
        }
        json.writeEndArray();
        JsonFigures.number(json, "agrees_with_book", study.fits());
        json.writeNumberField("samples", study.samples());
        JsonFigures.number(json, "effective_samples", study.effectiveSamples());
        json.writeEndObject();
    }

    private static void readings(JsonGenerator json, CouponStudy study) throws IOException {
        json.writeArrayFieldStart("settled");
        for (CouponStudy.Settling settling : study.settlings()) {
            json.writeStartObject();
            json.writeStringField(
                    "coupon", study.coupons().get(settling.coupon()).name());
            json.writeNumberField("reading", settling.reading() + 1);
            JsonFigures.band(json, "left_percent", settling.left(), PERCENT);
            json.writeBooleanField("at_rest", settling.isAtRest());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("readings");
        for (CouponStudy.ReadingRow row : study.readings()) {
            String unit = row.side().isPresent() ? "_mm" : "_g";
            json.writeStartObject();
            json.writeStringField("coupon", study.coupons().get(row.coupon()).name());
            json.writeNumberField("reading", row.reading() + 1);
            json.writeStringField("what", row.side().map(CouponJson::key).orElse("weight"));
            JsonFigures.number(json, "measured" + unit, MILLI * row.measured());
            JsonFigures.band(json, "by_own" + unit, row.own(), MILLI);
            JsonFigures.band(json, "by_book" + unit, row.book(), MILLI);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void outcomes(JsonGenerator json, Optional<OutcomeTally> outcomes) throws IOException {
        if (outcomes.isEmpty()) {
            json.writeNullField("outcomes");
            return;
        }
        OutcomeTally tally = outcomes.get();
        json.writeObjectFieldStart("outcomes");
        json.writeNumberField("count", tally.outcomes().size());
        json.writeNumberField("inside", tally.inside());
        JsonFigures.band(json, "inside_percent", tally.insideShare(), PERCENT);
        JsonFigures.band(json, "factor", tally.factor());
        json.writeBooleanField("enough", tally.says());
        json.writeEndObject();
    }

    /** A constant's name as a key. */
    static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    /** Unit of a figure. */
    static String unit(CouponFigure.Kind kind) {
        return switch (kind) {
            case ACROSS, THROUGH, ALONG, ANY_WAY -> "percent_per_percent_mc";
            case SORPTION -> "percent_mc";
            case SPEED -> "1e-12_m2_per_s";
            case DENSITY -> "kg_per_m3";
            case WIDTH -> "percent";
        };
    }

    /** From SI to that unit. */
    static double factor(CouponFigure.Kind kind) {
        return switch (kind) {
            case SORPTION, WIDTH -> PERCENT;
            case SPEED -> PICO;
            default -> 1;
        };
    }
}
