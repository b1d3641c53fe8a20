package hafthold.transport.coupled;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.SaturationPressure;
import hafthold.numeric.GradedGrid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Isothermal drying of a layer, benchmark 2 of HAMSTAD; source and tolerance stand above the table. */
class Hamstad2Test {
    private static final double HOUR = 3600;
    private static final double THICKNESS = 0.2;
    private static final double CELSIUS = 20;
    private static final double TOLERANCE = 1e-4;
    private static final CoupledHistory HISTORY = solve();

    private static CoupledHistory solve() {
        SaturationPressure saturation = new BuildingStandardSaturation();
        MoistureStorage storage = new DryingLayer();
        PorousMaterial material = new PorousMaterial(
                storage,
                (w, t) -> 1e-15,
                LiquidConductivity.NONE,
                (w, t) -> 6e-10,
                (w, t) -> 0.15,
                new HeatCapacity(525 * 800, 4187));
        // The benchmark's film, 1e-3 s/m, holds nothing back. Without latent heat the layer stays isothermal.
        Face outside = new OpenFace(1e3, 25, Surroundings.steady(CELSIUS, 0.45, saturation));
        Face inside = new OpenFace(1e3, 8, Surroundings.steady(CELSIUS, 0.65, saturation));
        CoupledSlab slab = new CoupledSlab(material, outside, inside, saturation, 0, Sources.NONE);
        GradedGrid grid = GradedGrid.of(THICKNESS, 800, THICKNESS);
        CoupledProfile start = CoupledProfile.even(grid, storage.waterKilogramsPerCubicMetre(0.95, CELSIUS), CELSIUS);
        return CoupledSolution.through(slab, start, new Accuracy(1e-3, 1e-3), 100 * HOUR, 300 * HOUR, 1000 * HOUR);
    }

    @ParameterizedTest(name = "at {0} m")
    @CsvFileSource(resources = "hamstad-2.csv", commentCharacter = '#', numLinesToSkip = 1)
    void waterContentIsThatOfTheSeries(double place, double after100, double after300, double after1000) {
        double[] expected = {after100, after300, after1000};
        for (int i = 0; i < expected.length; i++) {
            double w = HISTORY.profiles().get(i).waterAtKilogramsPerCubicMetre(place);
            assertEquals(expected[i], w, TOLERANCE * expected[i]);
        }
    }

    @Test
    void theBooksClose() {
        assertTrue(HISTORY.waterBalanceResidual() < 1e-10, () -> "water " + HISTORY.waterBalanceResidual());
        assertTrue(HISTORY.heatBalanceResidual() < 1e-10, () -> "heat " + HISTORY.heatBalanceResidual());
    }

    /** w = 116 / (1 - ln(phi)/0.118)^0.869. */
    private record DryingLayer() implements MoistureStorage {
        @Override
        public double relativeHumidityFraction(double w, double temperatureCelsius) {
            return Math.exp(0.118 * (1 - Math.pow(116 / w, 1 / 0.869)));
        }

        @Override
        public double waterKilogramsPerCubicMetre(double relativeHumidityFraction, double temperatureCelsius) {
            return 116 / Math.pow(1 - Math.log(relativeHumidityFraction) / 0.118, 0.869);
        }
    }
}
