package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.material.MoistureDiffusivity;
import hafthold.material.PowerIsotherm;
import org.junit.jupiter.api.Test;

/**
 * An exact solution of our own for D = D0 exp(a M): a parabola of exp(a M) stays one,
 *
 * <pre>
 * exp(a M) = E (1 + c (x/h)^2) / (1 - 2 c E D0 t/h^2)
 * </pre>
 *
 * <p>as both sides of the equation show when it is put in. It is sealed at x = 0; the air that drives it follows from the
 * flux at x = h.
 */
class ExactParabolaTest {
    private static final double A = 12;
    private static final double START = 0.06;
    private static final double CURVE = -0.35;
    private static final double H = Sheet.THICKNESS;
    private static final double D0 = 1.6e-11;
    private static final double HENRY = 0.3;
    private static final double SECONDS = 10 * 86400;
    private static final Slab SLAB =
            new Slab(H, 550, new PowerIsotherm(HENRY, 1), new MoistureDiffusivity(D0, A, 0, Sheet.CELSIUS), 4e7);

    @Test
    void theSlabFollowsTheExactParabolaOfItsPotential() {
        MoistureHistory history = drive(960, Resolution.CONVERGED);
        int last = history.size() - 1;
        assertEquals(moisture(H, SECONDS), history.surfaceFraction(last), 2e-6);
        assertEquals(moisture(0, SECONDS), history.backFraction(last), 2e-6);
    }

    @Test
    void halvingTheStepsAndTheAirSamplesQuartersTheError() {
        double coarse = errorOfFixedSteps(20);
        double fine = errorOfFixedSteps(40);
        assertTrue(coarse < 1e-3 && coarse > 1e-9, "error " + coarse);
        assertTrue(Math.log(coarse / fine) / Math.log(2) > 1.8, "order from " + coarse + " to " + fine);
    }

    private static MoistureHistory drive(int samples, Resolution resolution) {
        double[] layers = new double[400];
        for (int i = 0; i < layers.length; i++) {
            layers[i] = moisture(H * (i + 0.5) / layers.length, 0);
        }
        return TransientMoisture.from(SLAB, layers, air(samples), 0, Sheet.SATURATION, resolution);
    }

    /** The bare scheme without error control, one step a sample. */
    private static double errorOfFixedSteps(int steps) {
        AirSeries air = air(steps);
        SlabRun run = new SlabRun(SLAB, air, Sheet.SATURATION, Resolution.STANDARD);
        double[] state = run.moisture();
        for (int i = 0; i < state.length; i++) {
            state[i] = moisture(run.grid().position(i), 0);
        }
        RosenbrockStep step = new RosenbrockStep(run.stepper().equation(), run.storage(), state.length);
        AirInstant from = new AirInstant();
        AirInstant to = new AirInstant();
        double[] next = new double[state.length];
        for (int i = 0; i < steps; i++) {
            run.track().sample(i, from);
            run.track().sample(i + 1, to);
            step.take(state, from, to, air.stepSeconds(), next);
            System.arraycopy(next, 0, state, 0, state.length);
        }
        double worst = 0;
        for (int i = 0; i < state.length; i++) {
            worst = Math.max(worst, Math.abs(state[i] - moisture(run.grid().position(i), SECONDS)));
        }
        return worst;
    }

    private static double moisture(double x, double seconds) {
        double e = Math.exp(A * START);
        double potential = e * (1 + CURVE * x * x / (H * H)) / (1 - 2 * CURVE * e * D0 * seconds / (H * H));
        return Math.log(potential) / A;
    }

    private static AirSeries air(int steps) {
        double[] temperature = new double[steps + 1];
        double[] humidity = new double[steps + 1];
        double exchange = Sheet.SATURATION.pascals(Sheet.CELSIUS) / (4e7 * 550);
        double e = Math.exp(A * START);
        for (int i = 0; i <= steps; i++) {
            double seconds = SECONDS * i / steps;
            double growth = 1 / (1 - 2 * CURVE * e * D0 * seconds / (H * H));
            double loss = -D0 * e * growth * 2 * CURVE / (H * A);
            temperature[i] = Sheet.CELSIUS;
            humidity[i] = moisture(H, seconds) / HENRY - loss / exchange;
        }
        return new AirSeries(SECONDS / steps, temperature, humidity);
    }
}
