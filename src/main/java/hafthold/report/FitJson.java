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
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.BolsterYear;
import hafthold.simulate.FitYear.PinYear;
import hafthold.simulate.FitYear.PlaceYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Settling;
import hafthold.simulate.SofteningMargin;
import hafthold.simulate.StackYear;
import hafthold.simulate.StackYear.PartYear;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** One knife in one place as a JSON object: numbers unformatted, units at the end of the keys. */
public final class FitJson {
    private static final ReasonWords WORDS = new ReasonWords(BenchStyle.ENGLISH, true);
    private static final AdviceWords ADVICE = new AdviceWords(BenchStyle.ENGLISH);
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
            advice(json, answer);
            json.writeArrayFieldStart("reasons");
            for (Reason reason : fit.reasons()) {
                json.writeString(Paragraph.plain(WORDS.clause(reason)));
            }
            json.writeEndArray();
            JsonFigures.findings(json, fit.findings());
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
        JsonFigures.moisture(json, year);
        JsonFigures.movements(json, year);
        json.writeNumberField("worst_month", year.worstMonth());
        StayJson.write(json, year);
        json.writeStringField("verdict", fit.verdict().word());
        json.writeStringField("evidence", year.grounds().evidence().grade());
        json.writeStringField("rests_on", new AnswerWords(BenchStyle.ENGLISH).restsOn(year));
        SampledFigures.write(json, fit.likelihood(), year);
        json.writeBooleanField("bonded", fit instanceof FullTangFit);
    }

    private static void state(JsonGenerator json, String key, WorkState state) throws IOException {
        json.writeObjectFieldStart(key);
        JsonFigures.number(json, "temperature_c", state.temperature().celsius());
        if (state instanceof SettledAir air) {
            JsonFigures.number(json, "rh_percent", air.humidity().percent());
        } else {
            JsonFigures.number(
                    json, "mc_percent", ((MeasuredMoisture) state).moisture().percent());
        }
        json.writeEndObject();
    }

    private static void settling(JsonGenerator json, FullTangFit fit) throws IOException {
        Optional<Settling> settling = Settling.of(fit.knife(), fit.destination());
        if (settling.isPresent()) {
            JsonFigures.settling(json, settling.get());
        }
    }

    private static void bonded(JsonGenerator json, FitYear year) throws IOException {
        JsonFigures.band(json, "outer_edge_shy_mm", year.outerShy(), MILLI);
        JsonFigures.band(json, "outer_edge_proud_mm", year.outerProud(), MILLI);
        JsonFigures.band(json, "face_hollow_mm", year.domeHollow(), MILLI);
        JsonFigures.band(json, "face_round_mm", year.domeRound(), MILLI);
        if (year.bow().isPresent()) {
            JsonFigures.band(json, "bow_hollow_left_mm", year.bow().get().hollowLeft(), MILLI);
            JsonFigures.band(json, "bow_hollow_right_mm", year.bow().get().hollowRight(), MILLI);
            json.writeNumberField("bow_month", year.bow().get().month());
        }
        if (year.bolster().isPresent()) {
            BolsterYear bolster = year.bolster().get();
            JsonFigures.band(json, "bolster_shy_mm", bolster.againstTang().shy(), MILLI);
            JsonFigures.band(json, "bolster_proud_mm", bolster.againstTang().proud(), MILLI);
            JsonFigures.band(json, "scale_at_bolster_shy_mm", bolster.scale().shy(), MILLI);
            JsonFigures.band(json, "scale_at_bolster_proud_mm", bolster.scale().proud(), MILLI);
        }
        JsonFigures.band(json, "pin_span_mismatch_mm", year.pinSpan(), MILLI);
        JsonFigures.band(json, "set_mm", year.set(), MILLI);
        JsonFigures.band(json, "glue_shear_mpa", year.glueShear(), MEGA);
        JsonFigures.band(json, "glue_peel_mpa", year.gluePeel(), MEGA);
        JsonFigures.band(json, "glue_shear_last_mm_mpa", year.glueShearLastMillimetre(), MEGA);
        JsonFigures.band(json, "glue_peel_last_mm_mpa", year.gluePeelLastMillimetre(), MEGA);
        JsonFigures.band(json, "glue_use", year.glueUse());
        json.writeNumberField("glue_month", year.glueMonth());
        JsonFigures.band(json, "crack_use", year.crackUse());
        JsonFigures.band(json, "middle_use", year.middleUse());
        JsonFigures.band(json, "tear_use", year.tearUse());
        JsonFigures.band(json, "softening_margin_k", year.softening().map(SofteningMargin::kelvin));
        json.writeObjectField(
                "softens_first", year.softening().map(SofteningMargin::material).orElse(null));
        json.writeArrayFieldStart("pins");
        for (PinYear pin : year.pins()) {
            json.writeStartObject();
            JsonFigures.number(json, "diameter_mm", pin.diameter().millimetres());
            JsonFigures.number(json, "edge_distance_mm", pin.edgeDistance().millimetres());
            JsonFigures.band(json, "gap_along_mm", pin.gapAlong(), MILLI);
            JsonFigures.band(json, "gap_across_mm", pin.gapAcross(), MILLI);
            JsonFigures.band(json, "squeeze_along_mm", pin.squeezeAlong(), MILLI);
            JsonFigures.band(json, "squeeze_across_mm", pin.squeezeAcross(), MILLI);
            JsonFigures.band(json, "head_proud_mm", pin.headProud(), MILLI);
            JsonFigures.band(json, "head_sunk_mm", pin.headSunk(), MILLI);
            JsonFigures.band(json, "crack_use", pin.crackUse());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("sides");
        for (SideYear side : year.sides()) {
            json.writeStartObject();
            json.writeStringField("side", side.name());
            json.writeStringField("cut", side.cut().word());
            JsonFigures.band(json, "edge_shy_mm", side.edgeShy(), MILLI);
            JsonFigures.band(json, "edge_proud_mm", side.edgeProud(), MILLI);
            JsonFigures.band(json, "free_shy_mm", side.freeShy(), MILLI);
            JsonFigures.band(json, "free_proud_mm", side.freeProud(), MILLI);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("places");
        for (PlaceYear place : year.places()) {
            json.writeStartObject();
            JsonFigures.number(json, "along_mm", place.along().millimetres());
            JsonFigures.number(json, "width_mm", place.width().millimetres());
            JsonFigures.number(json, "edge_shy_mm", MILLI * place.edgeShy());
            JsonFigures.number(json, "edge_proud_mm", MILLI * place.edgeProud());
            json.writeEndObject();
        }
        json.writeEndArray();
        SampledFigures.drivers(json, year.drivers());
    }

    private static void stack(JsonGenerator json, StackYear year) throws IOException {
        JsonFigures.band(json, "stack_gap_mm", year.gap(), MILLI);
        JsonFigures.band(json, "stack_growth_mm", year.growth(), MILLI);
        JsonFigures.band(json, "stack_set_mm", year.set(), MILLI);
        JsonFigures.band(json, "stack_load_n", year.load());
        json.writeNumberField("gap_month", year.gapMonth());
        json.writeNumberField("first_joint", year.firstJoint() + 1);
        json.writeArrayFieldStart("parts");
        for (PartYear part : year.parts()) {
            json.writeStartObject();
            json.writeStringField("material", part.materialId());
            json.writeStringField("name", part.name());
            JsonFigures.number(json, "length_mm", MILLI * part.length());
            JsonFigures.band(json, "shrinks_mm", part.shrinks(), MILLI);
            JsonFigures.band(json, "grows_mm", part.grows(), MILLI);
            JsonFigures.band(json, "set_mm", part.set(), MILLI);
            json.writeStringField("evidence", part.evidence().grade());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("pins");
        json.writeEndArray();
        SampledFigures.drivers(json, year.drivers());
    }

    private static void advice(JsonGenerator json, EventFit answer) throws IOException {
        json.writeArrayFieldStart("advice");
        List<Advice> advice = answer.fit().advice();
        for (int i = 0; i < advice.size(); i++) {
            Advice one = advice.get(i);
            json.writeStartObject();
            json.writeStringField("do", Paragraph.plain(ADVICE.toDo(one.change())));
            json.writeStringField("effect", Paragraph.plain(ADVICE.effect(one)));
            json.writeStringField("verdict", one.verdict().word());
            json.writeBooleanField("enough", one.isEnough());
            if (i == 0 && answer.remedied().isPresent()) {
                json.writeStringField(
                        "verdict_with_events",
                        answer.remedied().orElseThrow().verdict().word());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
