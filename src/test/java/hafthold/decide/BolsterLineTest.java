package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.FullTangKnife;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.BolsterYear;
import hafthold.simulate.Sampling;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BolsterLineTest {

    private static FitYear year(String bolster, Destination destination, Sampling sampling) {
        FullTangKnife knife = (FullTangKnife) FitOrders.knife(String.join(
                "\n",
                "pins = []",
                "[tang]",
                "width = \"26 mm\"",
                "[scales]",
                "material = \"walnut-black\"",
                "cut = \"flat\"",
                "[made]",
                "humidity = \"50 %\"",
                bolster.isEmpty() ? "" : "[bolster]\nmaterial = \"" + bolster + "\""));
        return new BondedEngine(knife, destination, sampling).year();
    }

    private static BolsterYear at(String bolster, double celsius, double humidity) {
        return year(bolster, FitOrders.steady(celsius, humidity), Sampling.VALUE_ONLY)
                .bolster()
                .orElseThrow();
    }

    /** Half of 26 mm, 40 K colder; expansion of nickel silver 16 to 18 and martensitic stainless 10 to 11 (from memory). */
    @Test
    void coldSinksABolsterThatGrowsMoreThanTheTang() {
        BolsterYear cold = at("nickel-silver", -20, 0.5);
        double least = 13e-3 * 40 * (16e-6 - 11e-6);
        double most = 13e-3 * 40 * (18e-6 - 10e-6);
        double shy = cold.againstTang().shy().value();
        assertTrue(shy >= least && shy <= most, 1e6 * shy + " micrometres");
        assertEquals(0, cold.againstTang().proud().value(), 0);
    }

    @Test
    void aBolsterOfTheTangsOwnSteelStaysLevelAndTheScaleStandsAsAgainstTheTang() {
        FitYear year = year("steel-stainless-martensitic", FitOrders.steady(45, 0.3), Sampling.VALUE_ONLY);
        BolsterYear bolster = year.bolster().orElseThrow();
        assertEquals(0, bolster.againstTang().larger().value(), 1e-12);
        assertEquals(
                year.whole().edge().bonded().shy().value(),
                bolster.scale().shy().value(),
                1e-9);
    }

    @Test
    void theScaleBesideItCountsFromTheBolstersOwnEdge() {
        BolsterYear hot = at("nickel-silver", 60, 0.3);
        BolsterYear level = at("steel-stainless-martensitic", 60, 0.3);
        assertEquals(
                level.scale().shy().value() + hot.againstTang().proud().value(),
                hot.scale().shy().value(),
                1e-9);
    }

    @Test
    void itHasABandAndIsNotThereWithoutABolster() {
        BolsterYear bolster = year("nickel-silver", FitOrders.steady(-20, 0.5), new Sampling(30, 1))
                .bolster()
                .orElseThrow();
        assertTrue(
                bolster.againstTang().shy().low() < bolster.againstTang().shy().high());
        assertEquals(
                Optional.empty(),
                year("", FitOrders.steady(-20, 0.5), Sampling.VALUE_ONLY).bolster());
    }
}
