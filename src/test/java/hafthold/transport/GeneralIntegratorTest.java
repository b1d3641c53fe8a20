package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.air.AirSeries;
import hafthold.material.SorptionIsotherm;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * The same slab by other means: plain finite volumes of even width with arithmetic mean diffusivity, integrated by the
 * Dormand-Prince 8(5,3) method of Commons Math, hour by hour along straight-line temperature and humidity.
 */
class GeneralIntegratorTest {
    private static final int CELLS = 120;
    private static final int HOURS = 14 * 24;
    private static final double START = 0.11;
    private static final AirSeries AIR = RoughYear.hours(7, HOURS + 1);
    private static final Slab SLAB = Rack.hardwood(5e-3, 0);

    @Test
    void twoWeeksOfHardwoodComeOutAsFromAGeneralPurposeIntegrator() {
        MoistureHistory history = TransientMoisture.from(SLAB, START, AIR);
        MoistureHistory converged =
                TransientMoisture.from(SLAB, new double[] {START}, AIR, 0, Sheet.SATURATION, Resolution.CONVERGED);
        double[] state = new double[CELLS + 1];
        java.util.Arrays.fill(state, START);
        for (int hour = 1; hour <= HOURS; hour++) {
            new DormandPrince853Integrator(1e-3, 3600, 1e-9, 1e-9)
                    .integrate(new PlainVolumes(hour - 1), 0, state, 3600, state);
            assertEquals(mean(state), history.meanFraction(hour), 1e-4);
            assertEquals(state[CELLS], history.surfaceFraction(hour), 1e-3);
            assertEquals(mean(state), converged.meanFraction(hour), 3e-5);
            assertEquals(state[CELLS], converged.surfaceFraction(hour), 2e-4);
        }
    }

    private static double mean(double[] state) {
        double sum = 0.5 * (state[0] + state[CELLS]);
        for (int i = 1; i < CELLS; i++) {
            sum += state[i];
        }
        return sum / CELLS;
    }

    private record PlainVolumes(int hour) implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return CELLS + 1;
        }

        @Override
        public void computeDerivatives(double seconds, double[] moisture, double[] rate) {
            double share = seconds / 3600;
            double t = (1 - share) * AIR.temperatureCelsius(hour) + share * AIR.temperatureCelsius(hour + 1);
            double humidity =
                    (1 - share) * AIR.relativeHumidityFraction(hour) + share * AIR.relativeHumidityFraction(hour + 1);
            double gap = SLAB.thicknessMetres() / CELLS;
            double arriving = 0;
            for (int i = 0; i < CELLS; i++) {
                double diffusivity = 0.5
                        * (SLAB.diffusivity().squareMetresPerSecond(moisture[i], t)
                                + SLAB.diffusivity().squareMetresPerSecond(moisture[i + 1], t));
                double leaving = diffusivity * (moisture[i] - moisture[i + 1]) / gap;
                rate[i] = (arriving - leaving) / (i == 0 ? 0.5 * gap : gap);
                arriving = leaving;
            }
            SorptionIsotherm isotherm = SLAB.isotherm();
            double loss = (isotherm.waterActivity(moisture[CELLS], t) - humidity)
                    * Sheet.SATURATION.pascals(t)
                    / SLAB.surfaceResistanceSquareMetreSecondPascalsPerKilogram()
                    / SLAB.dryDensityKilogramsPerCubicMetre();
            rate[CELLS] = (arriving - loss) / (0.5 * gap);
        }
    }
}
