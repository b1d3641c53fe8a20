package hafthold.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Worked examples of the Wood Handbook, chapter 13 (FPL-GTR-190). */
class ShrinkageSwellingTest {
    private static final double FIBRE_SATURATION = 0.30;

    /** White fir, flat-sawn 232 mm at 8 % MC, S_T 7.0 %: 233.7 mm at 11 %. Printed to 0.1 mm. */
    @Test
    void whiteFirGrowsAsTheHandbookExampleSays() {
        double width = 232 * (1 + wood(0.033, 0.070).strain(Axis.ACROSS, 0.08, 0.11));
        assertEquals(233.7, width, 0.05);
    }

    /** Red oak strip flooring 2.25 in wide, plainsawn, S_T 8.6 %, from 8 to 5 % MC: 0.021 in, printed to 0.001 in. */
    @Test
    void redOakFlooringShrinksAsTheHandbookExampleSays() {
        double change = 2.25 * wood(0.040, 0.086).strain(Axis.ACROSS, 0.08, 0.05);
        assertEquals(-0.021, change, 0.0005);
    }

    @Test
    void nothingMovesAboveFibreSaturation() {
        ShrinkageSwelling wood = wood(0.04, 0.08);
        assertEquals(0, wood.strain(Axis.ACROSS, 0.30, 0.45), 0);
        assertEquals(wood.strain(Axis.ACROSS, 0.10, 0.30), wood.strain(Axis.ACROSS, 0.10, 0.60), 0);
    }

    /** From green to oven-dry the strain is the tabulated shrinkage itself, by its definition. */
    @Test
    void greenToOvenDryIsTheTabulatedShrinkage() {
        assertEquals(-0.08, wood(0.04, 0.08).strain(Axis.ACROSS, 0.30, 0), 1e-15);
    }

    private static ShrinkageSwelling wood(double radial, double tangential) {
        return new ShrinkageSwelling(
                Map.of(Axis.ALONG, figure(0.0015), Axis.THROUGH, figure(radial), Axis.ACROSS, figure(tangential)),
                FIBRE_SATURATION);
    }

    private static Figure figure(double value) {
        return new Figure(Band.exact(value), Evidence.PUBLISHED, "wood-handbook-2010", "chapter 13");
    }
}
