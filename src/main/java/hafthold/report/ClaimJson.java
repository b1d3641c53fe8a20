package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.decide.CauseChance;
import hafthold.decide.Claim;
import hafthold.decide.ClaimRow;
import hafthold.decide.ReTrue;
import hafthold.knife.MeasuredStep;
import hafthold.quantity.Band;
import hafthold.simulate.Cause;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;

/** A judged claim as a JSON object: numbers unformatted, units at the end of the keys, steps signed, positive proud. */
public final class ClaimJson {
    private static final double MILLI = 1e3;

    private ClaimJson() {}

    /** The object, ending in a line feed. */
    public static String of(Claim claim) {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringField("name", claim.knife().build().order().name().orElse(""));
            json.writeStringField("place", claim.home().id());
            json.writeStringField("setting", claim.home().setting().id());
            json.writeStringField("material", claim.knife().scale().id());
            json.writeStringField("finished", claim.history().finished().toString());
            json.writeStringField("delivered", claim.history().delivered().toString());
            json.writeStringField("verdict", claim.verdict().word());
            if (claim.namesACause()) {
                JsonFigures.number(json, "sure", claim.sure());
            } else {
                json.writeNullField("sure");
            }
            json.writeBooleanField("in_part", claim.mayBeInPart());
            json.writeObjectFieldStart("besides");
            for (Map.Entry<Cause.Kind, Double> other : claim.besides().entrySet()) {
                JsonFigures.number(json, other.getKey().word(), other.getValue());
            }
            json.writeEndObject();
            json.writeBooleanField("consistent", claim.consistent());
            json.writeArrayFieldStart("measured");
            for (ClaimRow row : claim.rows()) {
                row(json, row, claim.history().isAtBench(row.measured()));
            }
            json.writeEndArray();
            json.writeArrayFieldStart("causes");
            for (CauseChance chance : claim.chances()) {
                json.writeStartObject();
                json.writeStringField("cause", chance.cause().word());
                JsonFigures.number(json, "chance_before", chance.before());
                JsonFigures.number(json, "chance", chance.after());
                json.writeBooleanField("fits", chance.fits());
                json.writeEndObject();
            }
            json.writeEndArray();
            retrue(json, claim.retrue());
            JsonFigures.number(json, "thins_over_free", claim.thinsOverFree());
            JsonFigures.band(json, "glue_use", claim.year().glueUse());
            JsonFigures.band(json, "crack_use", claim.year().crackUse());
            json.writeNumberField("samples", claim.samples());
            JsonFigures.number(json, "effective_samples", claim.effectiveSamples());
            JsonFigures.findings(json, claim.findings());
            json.writeEndObject();
        });
    }

    private static void row(JsonGenerator json, ClaimRow row, boolean atBench) throws IOException {
        MeasuredStep measured = row.measured();
        json.writeStartObject();
        json.writeStringField("on", measured.on().toString());
        json.writeStringField("at", atBench ? "bench" : "home");
        json.writeStringField("point", measured.point().word());
        JsonFigures.number(json, "step_mm", MILLI * measured.step().metres());
        JsonFigures.number(json, "error_mm", MILLI * measured.error().metres());
        band(json, "expected_mm", row.expected());
        JsonFigures.number(json, "as_far_out", row.asFarOut());
        json.writeBooleanField("consistent", row.consistent());
        band(json, "fitted_mm", row.fitted());
        json.writeObjectFieldStart("shares");
        for (ClaimRow.Share share : row.parts()) {
            band(json, share.part().name().toLowerCase(Locale.ROOT) + "_mm", share.metres());
        }
        json.writeEndObject();
        JsonFigures.band(json, "settled_mm", row.settled().map(ClaimJson::millimetres));
        json.writeEndObject();
    }

    private static void retrue(JsonGenerator json, ReTrue retrue) throws IOException {
        json.writeObjectFieldStart("retrue");
        JsonFigures.band(json, "rh_percent", retrue.humidityPercent());
        JsonFigures.number(json, "temperature_c", retrue.celsius());
        JsonFigures.band(json, "mc_percent", retrue.moisturePercent());
        JsonFigures.band(json, "rest_days", retrue.restDays());
        json.writeArrayFieldStart("months");
        for (int month : retrue.months()) {
            json.writeNumber(month);
        }
        json.writeEndArray();
        JsonFigures.band(json, "edge_shy_mm", retrue.shyAfter(), MILLI);
        JsonFigures.band(json, "edge_proud_mm", retrue.proudAfter(), MILLI);
        json.writeEndObject();
    }

    private static Band millimetres(Band band) {
        return new Band(MILLI * band.low(), MILLI * band.value(), MILLI * band.high());
    }

    private static void band(JsonGenerator json, String key, Band band) throws IOException {
        JsonFigures.band(json, key, band, MILLI);
    }
}
