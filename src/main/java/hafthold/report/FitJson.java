package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.decide.Advice;
import hafthold.decide.EventFit;
import hafthold.decide.FullTangFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.Reason;
import hafthold.decide.StackFit;
import hafthold.knife.WorkState;
import hafthold.knife.WorkState.MeasuredMoisture;
import hafthold.knife.WorkState.SettledAir;
import hafthold.quantity.Band;
import hafthold.report.AnswerFigures.BandKey;
import hafthold.report.AnswerFigures.NumberKey;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.PinYear;
import hafthold.simulate.FitYear.PlaceYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Settling;
import hafthold.simulate.StackYear;
import hafthold.simulate.StackYear.PartYear;
import hafthold.source.Finding;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One knife in one place as a JSON object: numbers unformatted, units at the end of the keys. */
public final class FitJson {
    private static final AnswerWords WORDS = new AnswerWords(LengthUnits.MM, true);
    private static final double MILLI = 1e3;
    private static final double MEGA = 1e-6;

    private FitJson() {}

    /** The object, ending in a line feed. */
    public static String of(KnifeFit fit) {
        return of(EventFit.quiet(fit));
    }

    /** Likewise, with what each event does. */
    public static String of(EventFit answer) {
        KnifeFit fit = answer.fit();
        return JsonText.of(json -> {
            json.writeStartObject();
            whole(json, fit);
            if (fit instanceof FullTangFit full) {
                settling(json, full);
                bonded(json, full.year());
            } else {
                stack(json, ((StackFit) fit).year());
            }
            if (answer.events().isPresent()) {
                EventJson.write(json, answer.events().get());
            }
            advice(json, fit.advice());
            json.writeArrayFieldStart("reasons");
            for (Reason reason : fit.reasons()) {
                json.writeString(Paragraph.plain(WORDS.reason(reason)));
            }
            json.writeEndArray();
            findings(json, fit.findings());
            json.writeEndObject();
        });
    }

    private static void whole(JsonGenerator json, KnifeFit fit) throws IOException {
        HandleYear year = fit.whole();
        json.writeStringField("name", fit.knife().build().order().name().orElse(""));
        json.writeStringField("build", fit instanceof FullTangFit ? "full-tang" : "tang-stack");
        json.writeStringField("place", fit.destination().id());
        json.writeStringField("setting", fit.destination().setting().id());
        state(json, "made", fit.knife().build().made());
        if (fit instanceof FullTangFit full) {
            state(json, "glue_up", full.knife().build().glueUp());
        }
        json.writeStringField("material", year.scale().id());
        json.writeStringField("material_name", year.scale().name());
        json.writeStringField("family", year.scale().family().word());
        json.writeStringField("cut", year.scale().cut().word());
        for (NumberKey key : AnswerFigures.MOISTURE) {
            number(json, key.key(), key.of().applyAsDouble(year));
        }
        for (BandKey key : AnswerFigures.MOVEMENTS) {
            AnswerFigures.write(json, key.key(), key.of().apply(year), 1);
        }
        json.writeNumberField("worst_month", year.worstMonth());
        StayJson.write(json, year);
        json.writeStringField("verdict", fit.verdict().word());
        json.writeStringField("evidence", year.grounds().evidence().grade());
        json.writeStringField("rests_on", year.grounds().restsOn().figure());
        SampledFigures.write(json, fit.likelihood(), year);
        json.writeBooleanField("bonded", fit instanceof FullTangFit);
    }

    private static void state(JsonGenerator json, String key, WorkState state) throws IOException {
        json.writeObjectFieldStart(key);
        number(json, "temperature_c", state.temperature().celsius());
        if (state instanceof SettledAir air) {
            number(json, "rh_percent", air.humidity().percent());
        } else {
            number(json, "mc_percent", ((MeasuredMoisture) state).moisture().percent());
        }
        json.writeEndObject();
    }

    private static void settling(JsonGenerator json, FullTangFit fit) throws IOException {
        Optional<Settling> settling = Settling.of(fit.knife(), fit.destination());
        if (settling.isPresent()) {
            band(json, "shows_days", settling.get().showsDays(), 1);
            band(json, "rest_days", settling.get().restDays(), 1);
            number(json, "do_not_sand_days", settling.get().sandDays());
        }
    }

    private static void bonded(JsonGenerator json, FitYear year) throws IOException {
        band(json, "outer_edge_shy_mm", year.outerShy(), MILLI);
        band(json, "outer_edge_proud_mm", year.outerProud(), MILLI);
        band(json, "face_hollow_mm", year.domeHollow(), MILLI);
        band(json, "face_round_mm", year.domeRound(), MILLI);
        band(json, "end_short_mm", year.whole().ends().shortBy(), MILLI);
        band(json, "end_long_mm", year.whole().ends().longBy(), MILLI);
        band(json, "pin_span_mismatch_mm", year.pinSpan(), MILLI);
        if (year.bow().isPresent()) {
            band(json, "bow_hollow_left_mm", year.bow().get().hollowLeft(), MILLI);
            band(json, "bow_hollow_right_mm", year.bow().get().hollowRight(), MILLI);
            json.writeNumberField("bow_month", year.bow().get().month());
        }
        if (year.bolster().isPresent()) {
            band(json, "bolster_shy_mm", year.bolster().get().againstTang().shy(), MILLI);
            band(json, "bolster_proud_mm", year.bolster().get().againstTang().proud(), MILLI);
            band(json, "scale_at_bolster_shy_mm", year.bolster().get().scale().shy(), MILLI);
            band(json, "scale_at_bolster_proud_mm", year.bolster().get().scale().proud(), MILLI);
        }
        band(json, "set_mm", year.set(), MILLI);
        band(json, "glue_shear_mpa", year.glueShear(), MEGA);
        band(json, "glue_peel_mpa", year.gluePeel(), MEGA);
        band(json, "glue_shear_last_mm_mpa", year.glueShearLastMillimetre(), MEGA);
        band(json, "glue_peel_last_mm_mpa", year.gluePeelLastMillimetre(), MEGA);
        band(json, "glue_use", year.glueUse(), 1);
        json.writeNumberField("glue_month", year.glueMonth());
        AnswerFigures.write(json, "crack_use", year.crackUse(), 1);
        AnswerFigures.write(json, "middle_use", year.middleUse(), 1);
        AnswerFigures.write(json, "tear_use", year.tearUse(), 1);
        band(json, "softening_margin_k", year.softeningMarginKelvin(), 1);
        json.writeStringField("softens_first", year.softensFirst());
        json.writeArrayFieldStart("pins");
        for (PinYear pin : year.pins()) {
            json.writeStartObject();
            number(json, "diameter_mm", pin.diameter().millimetres());
            number(json, "edge_distance_mm", pin.edgeDistance().millimetres());
            band(json, "gap_along_mm", pin.gapAlong(), MILLI);
            band(json, "gap_across_mm", pin.gapAcross(), MILLI);
            band(json, "squeeze_along_mm", pin.squeezeAlong(), MILLI);
            band(json, "squeeze_across_mm", pin.squeezeAcross(), MILLI);
            band(json, "head_proud_mm", pin.headProud(), MILLI);
            band(json, "head_sunk_mm", pin.headSunk(), MILLI);
            AnswerFigures.write(json, "crack_use", pin.crackUse(), 1);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("sides");
        for (SideYear side : year.sides()) {
            json.writeStartObject();
            json.writeStringField("side", side.name());
            json.writeStringField("cut", side.cut().word());
            band(json, "edge_shy_mm", side.edgeShy(), MILLI);
            band(json, "edge_proud_mm", side.edgeProud(), MILLI);
            band(json, "free_shy_mm", side.freeShy(), MILLI);
            band(json, "free_proud_mm", side.freeProud(), MILLI);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("places");
        for (PlaceYear place : year.places()) {
            json.writeStartObject();
            number(json, "along_mm", place.along().millimetres());
            number(json, "width_mm", place.width().millimetres());
            number(json, "edge_shy_mm", MILLI * place.edgeShy());
            number(json, "edge_proud_mm", MILLI * place.edgeProud());
            json.writeEndObject();
        }
        json.writeEndArray();
        SampledFigures.drivers(json, year.drivers());
    }

    private static void stack(JsonGenerator json, StackYear year) throws IOException {
        band(json, "stack_gap_mm", year.gap(), MILLI);
        band(json, "stack_growth_mm", year.growth(), MILLI);
        band(json, "stack_set_mm", year.set(), MILLI);
        band(json, "stack_load_n", year.load(), 1);
        json.writeNumberField("gap_month", year.gapMonth());
        json.writeNumberField("first_joint", year.firstJoint() + 1);
        json.writeArrayFieldStart("parts");
        for (PartYear part : year.parts()) {
            json.writeStartObject();
            json.writeStringField("material", part.materialId());
            json.writeStringField("name", part.name());
            number(json, "length_mm", MILLI * part.length());
            band(json, "shrinks_mm", part.shrinks(), MILLI);
            band(json, "grows_mm", part.grows(), MILLI);
            band(json, "set_mm", part.set(), MILLI);
            json.writeStringField("evidence", part.evidence().grade());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("pins");
        json.writeEndArray();
        SampledFigures.drivers(json, year.drivers());
    }

    private static void advice(JsonGenerator json, List<Advice> advice) throws IOException {
        json.writeArrayFieldStart("advice");
        for (Advice one : advice) {
            json.writeStartObject();
            json.writeStringField("do", Paragraph.plain(AdviceWords.toDo(one.change())));
            json.writeStringField("effect", Paragraph.plain(AdviceWords.effect(one)));
            json.writeStringField("verdict", one.verdict().word());
            json.writeEndObject();
        }
        json.writeEndArray();
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

    private static void band(JsonGenerator json, String key, Band band, double factor) throws IOException {
        AnswerFigures.write(json, key, band, factor);
    }

    private static void number(JsonGenerator json, String key, double number) throws IOException {
        json.writeNumberField(key, AnswerFigures.stable(number));
    }
}
