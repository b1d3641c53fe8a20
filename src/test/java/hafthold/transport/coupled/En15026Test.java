package hafthold.transport.coupled;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.SaturationPressure;
import hafthold.numeric.GradedGrid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The benchmark of EN 15026:2007, Annex A; source and tolerances stand above the table. */
class En15026Test {
    private static final double DAY = 86_400;
    private static final double DEPTH = 40;
    private static final SaturationPressure SATURATION = new BuildingStandardSaturation();
    private static final CoupledHistory HISTORY = solve(400, 3e-5, 1e-3);

    static CoupledHistory solve(int gaps, double finestGap, double error) {
        PorousMaterial material = En15026Material.functions();
        OpenFace surface = new OpenFace(1e3, 1e6, Surroundings.steady(30, 0.95, SATURATION));
        CoupledSlab slab = new CoupledSlab(material, SealedFace.BARE, surface, SATURATION);
        GradedGrid grid = GradedGrid.of(DEPTH, gaps, finestGap);
        double water = material.storage().waterKilogramsPerCubicMetre(0.5, 20);
        return CoupledSolution.through(
                slab, CoupledProfile.even(grid, water, 20), new Accuracy(error, error), 7 * DAY, 30 * DAY, 365 * DAY);
    }

    private static double value(String quantity, int day, double depth) {
        int index = HISTORY.seconds().indexOf(day * DAY);
        CoupledProfile profile = HISTORY.profiles().get(index);
        return quantity.equals("T_C")
                ? profile.temperatureAtCelsius(DEPTH - depth)
                : profile.waterAtKilogramsPerCubicMetre(DEPTH - depth);
    }

    @ParameterizedTest(name = "{0} after {1} d at {2} m")
    @CsvFileSource(resources = "en-15026-annex-a.csv", commentCharacter = '#', numLinesToSkip = 1)
    void everyCellLiesBetweenThePrintedLimits(
            String quantity, int day, double depth, double least, double most, double reference) {
        double value = value(quantity, day, depth);
        assertTrue(value >= least && value <= most, () -> value + " outside " + least + " to " + most);
    }

    @ParameterizedTest(name = "{0} after {1} d at {2} m")
    @CsvFileSource(resources = "en-15026-annex-a.csv", commentCharacter = '#', numLinesToSkip = 1)
    void everyCellAgreesWithTheSimilaritySolution(
            String quantity, int day, double depth, double least, double most, double reference) {
        assertEquals(reference, value(quantity, day, depth), quantity.equals("T_C") ? 0.002 : 0.02);
    }

    @Test
    void theLimitThatLooksLikeASlipDecidesNothing() {
        double value = value("w_kg_m3", 365, 0.04);
        assertTrue(value >= 75.6 && value >= 73.6 && value <= 77.9, () -> "water content " + value);
    }

    @Test
    void booksOfWaterAndHeatClose() {
        assertTrue(HISTORY.waterBalanceResidual() < 1e-10, () -> "water " + HISTORY.waterBalanceResidual());
        assertTrue(HISTORY.heatBalanceResidual() < 1e-10, () -> "heat " + HISTORY.heatBalanceResidual());
    }
}
