package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.WaterUptake;
import hafthold.transport.EarlyUptake;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The figures of the tables against the 24-hour absorption limits of NEMA LI 1-1998 and ASTM D709 at 23 C (source and
 * marks stand above the data file). Two of the three thicknesses served to find the figures: they must come back within 2
 * %, which is their rounding; the third, 3.18 mm, was not used and is held to 15 % and half its last printed digit.
 */
class LaminateAbsorptionTest {
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TableSet.builtIn());
    private static final Map<String, String> IDS = Map.of(
            "X", "paper-phenolic-x",
            "XX", "paper-phenolic-xx",
            "XXX", "paper-phenolic-xxx",
            "C", "canvas-phenolic-c",
            "CE", "canvas-phenolic-ce",
            "L", "linen-phenolic-l",
            "LE", "linen-phenolic-le",
            "G-10", "glass-epoxy-g10");
    private static final double WIDTH = 25.4e-3;
    private static final double LENGTH = 76.2e-3;
    private static final double SQUARE = 50e-3;
    private static final double DAY = 86_400;
    private static final double CELSIUS = 23;
    private static final double HUGE = 1e6;
    private static final double FITTED = 0.02;
    private static final double FORETOLD = 0.15;
    private static final double HALF_DIGIT = 0.005;

    @ParameterizedTest
    @CsvFileSource(
            resources = "/hafthold/transport/plate-absorption.csv",
            commentCharacter = '#',
            useHeadersInDisplayName = true)
    void aGradeDrinksInADayWhatItsStandardAllows(String grade, double thin, double middle, double thick) {
        assertAll(
                () -> assertEquals(1, percent(grade, 1.59e-3, WIDTH, LENGTH) / thin, FITTED, "thin"),
                () -> assertEquals(middle, percent(grade, 3.18e-3, WIDTH, LENGTH), FORETOLD * middle + HALF_DIGIT),
                () -> assertEquals(1, percent(grade, 12.7e-3, WIDTH, LENGTH) / thick, FITTED, "thick"));
    }

    /**
     * Square plates of another size and four thicknesses, one thinner and one thicker than any that served to find the
     * figures: between what a maker calls typical and the largest he allows (source stands above the data file).
     */
    @ParameterizedTest
    @CsvFileSource(
            resources = "/hafthold/transport/plate-absorption-x.csv",
            commentCharacter = '#',
            useHeadersInDisplayName = true)
    void squarePlatesOfAMakerDrinkBetweenHisTypicalAndHisLargest(
            double thicknessMillimetres, double typical, double largest) {
        double thickness = 1e-3 * thicknessMillimetres;
        double grams = SQUARE
                * SQUARE
                * thickness
                * 1e3
                * LIBRARY.plain("paper-phenolic-x")
                        .water()
                        .orElseThrow()
                        .dryDensity()
                        .value();
        double milligrams = 1e3 * grams * percent("X", thickness, SQUARE, SQUARE) / 100;
        assertTrue(milligrams > typical && milligrams < largest, thicknessMillimetres + " mm: " + milligrams + " mg");
    }

    /** The same figures on a plate that drinks through its faces alone miss the thick plate by a third or more. */
    @ParameterizedTest
    @CsvFileSource(
            resources = "/hafthold/transport/plate-absorption.csv",
            commentCharacter = '#',
            useHeadersInDisplayName = true)
    void aSlabWithoutEdgesFails(String grade, double thin, double middle, double thick) {
        double withoutEdges = percent(grade, 12.7e-3, HUGE, HUGE);
        assertTrue(withoutEdges < (1 - 2 * FORETOLD) * thick, grade + " " + withoutEdges);
        double scaled = thin * 1.59 / 12.7;
        assertTrue(scaled < (1 - 2 * FORETOLD) * thick, grade + " fitted to the thin plate alone " + scaled);
    }

    private static double percent(String grade, double thickness, double width, double length) {
        WaterUptake water = LIBRARY.plain(IDS.get(grade)).water().orElseThrow();
        double through = water.diffusivityReference().value();
        return 100
                * water.isotherm().moistureFraction(1, CELSIUS)
                * EarlyUptake.share(
                        thickness,
                        width,
                        length,
                        through,
                        through * water.alongRatio().value(),
                        DAY);
    }
}
