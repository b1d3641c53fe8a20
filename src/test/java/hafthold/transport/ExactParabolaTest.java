package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.material.MoistureDiffusivity;
import hafthold.material.PowerIsotherm;
import java.util.List;
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
    /** Fine enough in depth that the error of the steps shows alone. */
    private static final Resolution PARABOLA = new Resolution(14, 0.3, 1e-3, 0.03, 0, 1);

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
        SlabLayout layout = SlabLayout.of(SLAB, MeanAir.of(air), PARABOLA);
        int points = layout.points();
        AirTrack track = new AirTrack(air, List.of(SLAB), Sheet.SATURATION);
        SlabBundle bundle = new SlabBundle(points, 1);
        bundle.set(0, layout, track.laws());
        BundleState state = new BundleState(points, 1);
        BundleState next = new BundleState(points, 1);
        for (int i = 0; i < points; i++) {
            state.moisture[i][0] = moisture(layout.grid().position(i), 0);
        }
        RosenbrockStep step = new RosenbrockStep(points, 1);
        AirInstant from = track.instant();
        AirInstant to = track.instant();
        for (int i = 0; i < steps; i++) {
            track.sample(i, from);
            track.sample(i + 1, to);
            state.refresh(bundle, 1, Sheet.CELSIUS);
            step.take(bundle, state, 1, from, to, air.stepSeconds(), next);
            state.copy(0, next, 0);
        }
        double worst = 0;
        for (int i = 0; i < points; i++) {
            worst = Math.max(
                    worst,
                    Math.abs(state.moisture[i][0] - moisture(layout.grid().position(i), SECONDS)));
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
