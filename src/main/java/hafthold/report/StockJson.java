package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.decide.StockAnswer;
import hafthold.decide.StockMoisture;
import hafthold.quantity.Band;
import hafthold.simulate.FillPosterior;
import java.io.IOException;
import java.util.List;

/** Judged blocks as a JSON object: numbers unformatted, units at the end of the keys, days beyond the forecast null. */
public final class StockJson {
    private static final double PERCENT = 100;
    private static final double GRAMS = 1000;

    private StockJson() {}

    /** The object, ending in a line feed. */
    public static String of(List<StockAnswer> answers) {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeArrayFieldStart("blocks");
            for (StockAnswer answer : answers) {
                block(json, answer);
            }
            json.writeEndArray();
            JsonFigures.findings(json, StockText.findings(answers));
            json.writeEndObject();
        });
    }

    private static void block(JsonGenerator json, StockAnswer answer) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", answer.block().name());
        json.writeStringField("material", answer.block().material().id());
        if (answer.block().isRead()) {
            json.writeStringField("on", answer.block().today().toString());
        }
        json.writeStringField("verdict", answer.verdict().word());
        json.writeObjectFieldStart("box");
        JsonFigures.number(json, "rh_percent", PERCENT * answer.target().aim().humidityFraction());
        JsonFigures.number(json, "temperature_c", answer.target().aim().celsius());
        JsonFigures.number(json, "mc_percent", PERCENT * answer.target().moistureFraction());
        JsonFigures.number(
                json, "within_percent", PERCENT * answer.target().aim().withinFraction());
        if (answer.box().salt().isPresent()) {
            json.writeStringField("salt", answer.box().salt().get().id());
            JsonFigures.band(
                    json, "salt_rh_percent", answer.box().saltHumidity().orElseThrow(), PERCENT);
        } else {
            json.writeNullField("salt");
        }
        json.writeNumberField("pack_rh_percent", answer.box().packPercent());
        json.writeEndObject();
        if (answer.moisture().isPresent()) {
            moisture(json, answer.moisture().get());
        }
        if (answer.fill().isPresent()) {
            fill(json, answer.fill().get(), answer.isFillSure());
        }
        json.writeEndObject();
    }

    private static void moisture(JsonGenerator json, StockMoisture moisture) throws IOException {
        JsonFigures.number(json, "chance_ready", moisture.chanceReady());
        JsonFigures.number(json, "chance_wet", moisture.chanceWet());
        JsonFigures.band(json, "mc_mean_percent", moisture.meanNow(), PERCENT);
        JsonFigures.band(json, "mc_core_percent", moisture.coreNow(), PERCENT);
        JsonFigures.band(json, "mc_goal_percent", moisture.goal(), PERCENT);
        JsonFigures.band(json, "mc_storage_percent", moisture.rest(), PERCENT);
        JsonFigures.band(json, "dry_g", moisture.dryKilograms(), GRAMS);
        days(json, "ready_in_box_days", moisture.boxDays());
        days(json, "ready_in_storage_days", moisture.storageDays());
        JsonFigures.number(json, "ready_below_g_in_7_days", GRAMS * moisture.telltaleKilograms());
        json.writeNumberField("weigh_together", moisture.weighTogether());
        json.writeNumberField("samples", moisture.posterior().samples());
        JsonFigures.number(json, "effective_samples", moisture.posterior().effectiveSamples());
        json.writeArrayFieldStart("drivers");
        for (var driver : moisture.posterior().drivers().entrySet()) {
            json.writeStartObject();
            json.writeStringField("input", driver.getKey().word());
            JsonFigures.number(json, "share", driver.getValue());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("course");
        for (StockMoisture.Day day : moisture.past()) {
            day(json, day, false);
        }
        for (StockMoisture.Day day : moisture.ahead()) {
            day(json, day, true);
        }
        json.writeEndArray();
    }

    private static void day(JsonGenerator json, StockMoisture.Day day, boolean isAhead) throws IOException {
        json.writeStartObject();
        json.writeStringField("on", day.on().toString());
        json.writeStringField("in", isAhead ? "box" : "storage");
        JsonFigures.band(json, "mc_mean_percent", day.mean(), PERCENT);
        JsonFigures.band(json, "mc_core_percent", day.core(), PERCENT);
        json.writeEndObject();
    }

    private static void days(JsonGenerator json, String key, StockMoisture.Days days) throws IOException {
        json.writeObjectFieldStart(key);
        day(json, "low", days.low());
        day(json, "value", days.middle());
        day(json, "high", days.high());
        json.writeEndObject();
    }

    private static void day(JsonGenerator json, String key, double day) throws IOException {
        if (Double.isInfinite(day)) {
            json.writeNullField(key);
        } else {
            JsonFigures.number(json, key, day);
        }
    }

    private static void fill(JsonGenerator json, FillPosterior fill, boolean isSure) throws IOException {
        json.writeObjectFieldStart("fill");
        json.writeStringField("grade", isSure ? fill.likeliest().word() : "open");
        json.writeObjectFieldStart("chances");
        for (var chance : fill.chances().entrySet()) {
            JsonFigures.number(json, chance.getKey().word().replace('-', '_'), chance.getValue());
        }
        json.writeEndObject();
        Band filled = fill.filledFraction();
        JsonFigures.band(json, "lumens_filled_percent", filled, PERCENT);
        JsonFigures.band(json, "density_kg_m3", fill.densityKilogramsPerCubicMetre());
        if (fill.soakRatio().isPresent()) {
            JsonFigures.number(json, "soak_over_plain", fill.soakRatio().get());
        } else {
            json.writeNullField("soak_over_plain");
        }
        json.writeEndObject();
    }
}
