package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.decide.DaySpan;
import hafthold.decide.Season;
import hafthold.decide.SeasonAnswer;
import hafthold.decide.SeasonAnswer.Conditioning;
import hafthold.decide.SeasonAnswer.CutChoice;
import hafthold.decide.SeasonAnswer.Hindrance;
import hafthold.decide.SeasonWeek;
import hafthold.decide.Verdict;
import hafthold.simulate.BlankYear;
import hafthold.simulate.HandleYear;
import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** A season as a JSON object: numbers unformatted, units at the end of the keys, days of a common year as MM-DD. */
public final class SeasonJson {
    private static final double MILLI = 1e3;
    private static final double PERCENT = 100;
    private static final int COMMON_YEAR = 2023;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MM-dd", Locale.ROOT);

    private SeasonJson() {}

    /** The object, ending in a line feed. */
    public static String of(Season season) {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringField("place", season.conditions().destination().id());
            json.writeStringField(
                    "setting", season.conditions().destination().setting().id());
            json.writeStringField("today", season.today().toString());
            json.writeStringField("limits", season.held().name());
            json.writeObjectFieldStart("shop");
            json.writeStringField("air", BenchStyle.ENGLISH.tell(season.shop().rule()));
            JsonFigures.number(json, "rh_doubt_percent", PERCENT * season.shop().humidityDoubtFraction());
            json.writeEndObject();
            json.writeObjectFieldStart("blank");
            JsonFigures.number(
                    json, "thickness_mm", season.stock().blank().thickness().millimetres());
            JsonFigures.number(json, "width_mm", season.stock().blank().width().millimetres());
            JsonFigures.number(
                    json, "length_mm", season.stock().blank().length().millimetres());
            json.writeNumberField("open_faces", season.stock().blank().open().bothFaces() ? 2 : 1);
            json.writeBooleanField("open_edges", season.stock().blank().open().edges());
            json.writeBooleanField("open_ends", season.stock().blank().open().ends());
            if (season.stock().reading().isPresent()) {
                JsonFigures.number(
                        json, "mc_read_percent", season.stock().reading().get().percent());
            } else {
                json.writeNullField("mc_read_percent");
            }
            json.writeNumberField("glued_days", season.stock().gluedDays());
            json.writeEndObject();
            json.writeArrayFieldStart("results");
            for (SeasonAnswer answer : season.answers()) {
                answer(json, answer);
            }
            json.writeEndArray();
            json.writeNumberField("samples", season.samples());
            JsonFigures.findings(json, season.findings());
            json.writeEndObject();
        });
    }

    private static void answer(JsonGenerator json, SeasonAnswer answer) throws IOException {
        json.writeStartObject();
        json.writeStringField("material", answer.scale().id());
        json.writeStringField("name", answer.scale().name());
        json.writeStringField("family", answer.scale().family().word());
        json.writeStringField("cut", answer.scale().cut().word());
        json.writeObjectFieldStart("finish");
        json.writeStringField("call", word(answer.finish().call()));
        json.writeNumberField("wait_days", answer.finish().waitDays());
        json.writeEndObject();
        json.writeObjectFieldStart("glue");
        json.writeBooleanField("go", answer.glue().isGo());
        json.writeArrayFieldStart("hindrances");
        for (Hindrance why : answer.glue().hindrances()) {
            json.writeString(word(why));
        }
        json.writeEndArray();
        json.writeNumberField("wait_days", answer.glue().waitDays());
        json.writeEndObject();
        spans(json, "best", answer.best());
        spans(json, "good", answer.good());
        spans(json, "worst", answer.worst());
        if (answer.blank().reading().isPresent()) {
            reading(json, answer.blank().reading().get());
        } else {
            json.writeNullField("reading");
        }
        json.writeFieldName("today");
        week(json, answer.today());
        JsonFigures.number(
                json, "mc_glued_today_percent", PERCENT * answer.blank().gluedFraction(answer.now()));
        if (answer.conditioning().isPresent()) {
            conditioning(json, answer.conditioning().get());
        } else {
            json.writeNullField("conditioning");
        }
        json.writeArrayFieldStart("cuts");
        for (CutChoice cut : answer.cuts()) {
            json.writeStartObject();
            json.writeStringField("cut", cut.cut().word());
            year(json, "sanded_today", cut.today(), cut.todayVerdict());
            year(json, "sanded_in_best_week", cut.best(), cut.bestVerdict());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("weeks");
        for (SeasonWeek week : answer.weeks()) {
            week(json, week);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void week(JsonGenerator json, SeasonWeek week) throws IOException {
        json.writeStartObject();
        json.writeStringField("from", day(week.blank().firstDay()));
        json.writeStringField("to", day(week.blank().lastDay()));
        JsonFigures.number(json, "temperature_c", week.blank().celsius());
        JsonFigures.number(json, "rh_percent", PERCENT * week.blank().humidityFraction());
        JsonFigures.number(json, "mc_blank_percent", PERCENT * week.blank().meanFraction());
        JsonFigures.number(json, "mc_surface_percent", PERCENT * week.blank().surfaceFraction());
        JsonFigures.number(json, "mc_core_percent", PERCENT * week.blank().coreFraction());
        JsonFigures.band(json, "leave_proud_mm", week.allowance().proud(), MILLI);
        JsonFigures.number(json, "then_shy_mm", MILLI * week.allowance().shyAfter());
        JsonFigures.number(json, "then_proud_mm", MILLI * week.allowance().proudAfter());
        JsonFigures.moisture(json, week.year());
        JsonFigures.movements(json, week.year());
        json.writeNumberField("worst_month", week.year().worstMonth());
        json.writeStringField("verdict", week.verdict().word());
        if (week.keeps().isPresent()) {
            JsonFigures.number(json, "keeps_limits", week.keeps().getAsDouble());
        } else {
            json.writeNullField("keeps_limits");
        }
        json.writeEndObject();
    }

    private static void reading(JsonGenerator json, BlankYear.Reading reading) throws IOException {
        json.writeObjectFieldStart("reading");
        JsonFigures.number(json, "mc_read_percent", PERCENT * reading.readFraction());
        JsonFigures.number(json, "mc_settled_percent", PERCENT * reading.settledFraction());
        JsonFigures.number(json, "may_differ_points", PERCENT * reading.doubtFraction());
        json.writeBooleanField("contradicts", reading.contradicts());
        json.writeEndObject();
    }

    private static void conditioning(JsonGenerator json, Conditioning air) throws IOException {
        json.writeObjectFieldStart("conditioning");
        JsonFigures.number(json, "rh_percent", PERCENT * air.humidityFraction());
        JsonFigures.number(json, "mc_percent", PERCENT * air.moistureFraction());
        JsonFigures.band(json, "blank_days", air.blankDays());
        JsonFigures.band(json, "scale_days", air.scaleDays());
        year(json, "sanded_then", air.after(), air.verdict());
        json.writeEndObject();
    }

    private static void year(JsonGenerator json, String key, HandleYear year, Verdict verdict) throws IOException {
        json.writeObjectFieldStart(key);
        JsonFigures.moisture(json, year);
        JsonFigures.movements(json, year);
        json.writeStringField("verdict", verdict.word());
        json.writeEndObject();
    }

    private static void spans(JsonGenerator json, String key, List<DaySpan> spans) throws IOException {
        json.writeArrayFieldStart(key);
        for (DaySpan span : spans) {
            json.writeStartObject();
            json.writeStringField("from", day(span.firstDay()));
            json.writeStringField("to", day(span.lastDay()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A day counted from 0 on 1 January. */
    static String day(int day) {
        return LocalDate.ofYearDay(COMMON_YEAR, day + 1).format(DAY);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
