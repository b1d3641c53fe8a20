package hafthold.transport.coupled;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import hafthold.numeric.GradedGrid;
import org.junit.jupiter.api.Test;

/** Heat alone. */
class TransientHeatTest {
    private static final SaturationPressure SATURATION = new HylandWexlerSaturationPressure();
    private static final Accuracy FINE = new Accuracy(1, 1e-5);

    /**
     * The Standard NAFEMS Benchmarks (1990), test T3: a bar of 0.1 m, 0 C at one end, 100 sin(pi t/40) C at the other; after
     * 32 s it has 36.60 C at 0.08 m. Read in descriptions of the benchmark, not in the print.
     */
    @Test
    void theBarOfBenchmarkT3HasThePrintedTemperature() {
        double conductivity = 35;
        OpenFace cold = new OpenFace(Double.POSITIVE_INFINITY, 1e9, Surroundings.steady(0, 0, SATURATION));
        OpenFace swinging = new OpenFace(Double.POSITIVE_INFINITY, 1e9, new Swing());
        CoupledSlab slab = new CoupledSlab(DryMaterial.of(conductivity, 7200 * 440.5), cold, swinging, SATURATION);
        GradedGrid grid = GradedGrid.of(0.1, 200, 0.1);
        CoupledHistory history = CoupledSolution.through(slab, CoupledProfile.even(grid, 0, 0), FINE, 32);
        assertEquals(36.60, history.last().temperatureAtCelsius(0.08), 0.005);
        assertTrue(history.heatBalanceResidual() < 1e-10);
    }

    /** Energy balance of two bodies: the metal's capacity is C_m, the plate's C L; sealed otherwise. */
    @Test
    void aTangAndAScaleShareTheirHeat() {
        double metalCapacity = 8000;
        double plateCapacity = 2e6 * 0.01;
        CoupledSlab slab =
                new CoupledSlab(DryMaterial.of(0.2, 2e6), new SealedFace(metalCapacity), SealedFace.BARE, SATURATION);
        GradedGrid grid = GradedGrid.of(0.01, 40, 0.01);
        double[] temperature = new double[grid.size()];
        temperature[0] = 50;
        double firstStretch = 0.5 * 0.01 / 40 * 2e6;
        CoupledProfile start = new CoupledProfile(grid, new double[grid.size()], temperature);
        CoupledHistory history = CoupledSolution.through(slab, start, FINE, 40_000);
        double shared = 50 * (metalCapacity + firstStretch) / (metalCapacity + plateCapacity);
        assertEquals(shared, history.last().temperatureCelsius(0), 1e-6);
        assertEquals(shared, history.last().temperatureCelsius(40), 1e-6);
    }

    /** Crank 1975, equation 3.15 (error function), for a step at the face of a plate too thick to feel its back. */
    @Test
    void aStepOfTheFaceSpreadsAsTheErrorFunction() {
        OpenFace hot = new OpenFace(Double.POSITIVE_INFINITY, 1e9, Surroundings.steady(100, 0, SATURATION));
        CoupledSlab slab = new CoupledSlab(DryMaterial.of(1, 1e6), SealedFace.BARE, hot, SATURATION);
        GradedGrid grid = GradedGrid.of(0.1, 400, 0.1);
        CoupledHistory history = CoupledSolution.through(slab, CoupledProfile.even(grid, 0, 0), FINE, 100);
        double[] depths = {0.005, 0.01, 0.02, 0.03};
        for (double depth : depths) {
            double exact = 100 * org.apache.commons.math3.special.Erf.erfc(depth / (2 * Math.sqrt(1e-6 * 100)));
            assertEquals(exact, history.last().temperatureAtCelsius(0.1 - depth), 0.01);
        }
    }

    private record Swing() implements Surroundings {
        @Override
        public double temperatureCelsius(double seconds) {
            return 100 * Math.sin(Math.PI * seconds / 40);
        }

        @Override
        public double vapourPascals(double seconds) {
            return 0;
        }
    }
}
