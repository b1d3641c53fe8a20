package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.FullTangKnife;
import hafthold.material.Axis;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.BowYear;
import hafthold.simulate.Sampling;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Bow of a handle with one cross-cut and one flat-sawn scale; the published strip is held in LayeredBowTest. */
class HandleBowTest {
    private static final double TANG = 4e-3;
    private static final double SCALE = 8e-3;
    private static final double LENGTH = 0.11;
    private static final Destination DRY = FitOrders.steady(20, 0.35);

    private static FitYear year(String left, String right, Destination destination, Sampling sampling) {
        return new BondedEngine(knife(left, right), destination, sampling).year();
    }

    private static FullTangKnife knife(String left, String right) {
        return (FullTangKnife) FitOrders.knife(String.join(
                "\n",
                "pins = []",
                "[tang]",
                "width = \"26 mm\"",
                "thickness = \"4 mm\"",
                "[scales]",
                "material = \"walnut-black\"",
                "cut_left = \"" + left + "\"",
                "cut_right = \"" + right + "\"",
                "length = \"110 mm\"",
                "thickness = \"8 mm\"",
                "[made]",
                "humidity = \"50 %\""));
    }

    private static BowYear bow(String left, String right) {
        return year(left, right, DRY, Sampling.VALUE_ONLY).bow().orElseThrow();
    }

    /**
     * In the same dry air all year, from section properties by hand: the cross-cut scale shortens by its share of the loss
     * of moisture, half of that stress is left after weeks, and the moment of its force about the neutral line of the
     * three layers over their bending stiffness is the curvature. The free shortening is what the same knife tells of two
     * cross-cut scales.
     */
    @Test
    void isThatOfAStripOfThreeLayersByHand() {
        Material walnut = FitOrders.LIBRARY.plain("walnut-black");
        double left = modulus(walnut, Axis.ACROSS);
        double right = modulus(walnut, Axis.ALONG);
        double steel = modulus(knife("cross", "flat").steel(), Axis.ALONG);
        double crossShorter = free("cross", "cross", DRY) / LENGTH;
        double alongShorter = free("flat", "flat", DRY) / LENGTH;
        double[] modulus = {left, steel, right};
        double[] thickness = {SCALE, TANG, SCALE};
        double[] middle = {SCALE / 2, SCALE + TANG / 2, SCALE + TANG + SCALE / 2};
        double[] strain = {-0.5 * crossShorter, 0, -0.5 * alongShorter};
        double stiff = 0;
        double first = 0;
        for (int i = 0; i < 3; i++) {
            stiff += modulus[i] * thickness[i];
            first += modulus[i] * thickness[i] * middle[i];
        }
        double neutral = first / stiff;
        double bending = 0;
        double moment = 0;
        for (int i = 0; i < 3; i++) {
            double arm = middle[i] - neutral;
            bending += modulus[i] * thickness[i] * (thickness[i] * thickness[i] / 12 + arm * arm);
            moment += modulus[i] * thickness[i] * strain[i] * arm;
        }
        double sag = moment / bending * LENGTH * LENGTH / 8;
        BowYear bow = bow("cross", "flat");
        assertTrue(sag > 0.02e-3, "a case worth telling: " + sag);
        assertEquals(sag, bow.hollowLeft().value(), 0.03 * sag);
        assertEquals(0, bow.hollowRight().value(), 1e-9);
    }

    @Test
    void theSideThatShrinksMoreIsHollowWhicheverItIs() {
        BowYear one = bow("cross", "flat");
        BowYear other = bow("flat", "cross");
        assertEquals(one.hollowLeft().value(), other.hollowRight().value(), 1e-12);
        assertEquals(0, other.hollowLeft().value(), 1e-9);
    }

    @Test
    void twinsStayStraightAndLikeGrainNearlySo() {
        assertEquals(
                Optional.empty(), year("flat", "flat", DRY, Sampling.VALUE_ONLY).bow());
        assertEquals(0, bow("flat", "quarter").hollowLeft().value(), 0.01e-3);
        assertEquals(0, bow("flat", "quarter").hollowRight().value(), 0.01e-3);
    }

    @Test
    void itsBandHoldsItsValue() {
        BowYear bow = year("cross", "flat", FitOrders.swinging(20, 0.3, 0.6), new Sampling(30, 1))
                .bow()
                .orElseThrow();
        assertTrue(bow.hollowLeft().low() < bow.hollowLeft().value()
                && bow.hollowLeft().value() < bow.hollowLeft().high());
        assertTrue(bow.hollowRight().value() > 0, "damp summers bow it the other way");
        assertTrue(bow.month() <= 3 || bow.month() == 12, "worst in the dry season: " + bow.month());
    }

    private static double modulus(Material material, Axis axis) {
        return material.sheet()
                .figure(Property.YOUNGS_MODULUS, axis)
                .orElseThrow()
                .value();
    }

    private static double free(String left, String right, Destination destination) {
        return year(left, right, destination, Sampling.VALUE_ONLY)
                .whole()
                .ends()
                .lengthMismatch()
                .value();
    }
}
