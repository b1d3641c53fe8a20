package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.FullTangKnife;
import hafthold.material.ScaleMaterial;
import hafthold.simulate.Destination;
import hafthold.simulate.Sampling;
import hafthold.simulate.StackEngine;
import hafthold.simulate.StackYear;
import hafthold.table.BuildFile;
import hafthold.table.LimitTable;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is told of changes: their price as well as their gain, and nothing that makes what decides worse. */
class AdviceTest {
    private static final List<ScaleMaterial> STEADY = Stream.of("glass-epoxy-g10", "linen-phenolic-le")
            .map(FitOrders.LIBRARY::find)
            .toList();
    private static final Offer OFFER = new Offer(STEADY, List.of(FitOrders.LIBRARY.plain("polyurethane-glue")));

    private static KnifeFit fit(hafthold.knife.Knife knife, Destination destination) {
        return new KnifeJudge(LimitTable.read(FitOrders.TABLES), OFFER, Sampling.VALUE_ONLY)
                .fit(knife, destination, List.of());
    }

    @Test
    void aStackDrawnUpDryIsTightAndPressesHarderInTheDamp() {
        KnifeFit fit = fit(FitOrders.knife(BuildFile.stackExample()), FitOrders.swinging(20, 0.18, 0.6));
        Advice dry = fit.advice().stream()
                .filter(advice -> advice.change() instanceof Change.Condition)
                .findFirst()
                .orElseThrow();
        Advice.Press press = dry.press().orElseThrow();
        assertAll(
                () -> assertTrue(
                        dry.effects().get(0).after() < dry.effects().get(0).before()),
                () -> assertTrue(press.growthAfter() > press.growthBefore(), press::toString),
                () -> assertTrue(press.newtonsAfter() > press.newtonsBefore(), press::toString));
    }

    @Test
    void thePartToMakeOtherwiseIsNamed() {
        KnifeFit fit = fit(FitOrders.knife(BuildFile.stackExample()), FitOrders.swinging(20, 0.18, 0.5));
        Change.Part part = fit.advice().stream()
                .map(Advice::change)
                .filter(Change.Part.class::isInstance)
                .map(Change.Part.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(((StackFit) fit).year().parts().get(part.place() - 1).name(), part.replaced());
    }

    /** A loose handle is a hazard in use (common practice, no source), however easy the work. */
    @Test
    void aStackThatRattlesIsNeverSaidToStay() {
        var stack = (hafthold.knife.TangStackKnife)
                FitOrders.knife(BuildFile.stackExample().replace("work = \"seasonal\"", "work = \"retouch\""));
        StackYear year = new StackEngine(stack, FitOrders.swinging(20, 0.56, 0.6), Sampling.VALUE_ONLY).year();
        assertTrue(year.gap().value() > 0.005e-3 && year.gap().value() < 0.2e-3, () -> "" + year.gap());
        assertEquals(
                Verdict.CARE,
                Judgement.forWork(LimitTable.read(FitOrders.TABLES), "retouch").verdict(year));
    }

    @Test
    void noChangeMakesWhatDecidesWorse() {
        String pins = FitOrders.pins(6, 0.05, "hard-epoxy", 20, 90);
        assertAll(Stream.of(
                        FitOrders.fullTang("walnut-black", "flat", 110, 55, pins),
                        FitOrders.fullTang("beech-european", "flat", 110, 60, pins),
                        FitOrders.fullTang("maple-burl", "burl", 110, 55, pins))
                .map(knife -> () -> {
                    FullTangFit fit = (FullTangFit) fit((FullTangKnife) knife, FitOrders.swinging(20, 0.15, 0.45));
                    assertTrue(!fit.advice().isEmpty(), fit.verdict()::toString);
                    Reason.Kind deciding = fit.reasons().get(0).kind();
                    for (Advice advice : fit.advice()) {
                        for (Advice.Effect effect : advice.effects()) {
                            assertTrue(
                                    effect.kind() != deciding || effect.after() <= 1.01 * effect.before() + 1e-6,
                                    () -> advice.change() + " " + effect);
                        }
                    }
                }));
    }

    /** Resin weighs and holds no water: a stabilised wood at 5 % is as damp as plain wood at 9 %, and may go drier. */
    @Test
    void stabilisedStockMayBeSettledDrierThanFivePercentOfItsWeight() {
        String pins = FitOrders.pins(6, 0.05, "hard-epoxy", 20, 90);
        FullTangFit fit = (FullTangFit) fit(
                (FullTangKnife) FitOrders.fullTang("walnut-black+lumen-resin", "flat", 110, 55, pins),
                FitOrders.swinging(20, 0.15, 0.45));
        double driest = fit.advice().stream()
                .filter(advice -> advice.change() instanceof Change.Condition)
                .mapToDouble(advice ->
                        ((Change.Condition) advice.change()).humidity().fraction())
                .min()
                .orElseThrow();
        assertTrue(driest >= 0.25 && driest < 0.45, "driest " + driest);
    }
}
