package hafthold.transport;

import hafthold.numeric.HatWeights;
import hafthold.numeric.TridiagonalSystem;
import hafthold.source.PublishedModel;

/**
 * One step of the slab in time by RODAS3: linearly implicit, third order, L-stable and stiffly accurate, four stages on
 * one factorisation, with air needed only at the two ends of the step.
 *
 * <pre>
 * (B - tau/2 J) K_i = tau/2 [F(t + alpha_i tau, M + sum a_ij K_j) + g_i tau F_t] + 1/2 B sum c_ij K_j
 * M(t + tau) = M + 2 K1 + K3 + K4,   error estimate K4
 * a: 2 K1 (stage 3), 2 K1 + K3 (stage 4)   c: 4 | 1 -1 | 1 -1 -8/3   alpha: 0 0 1 1   g: 1/2 3/2 0 0
 * </pre>
 *
 * <p>F_t is the exact slope in time of the surface exchange and of D with temperature; the drift of the isotherm with
 * temperature is left out of it, which shows below 1e-5 in moisture content.
 *
 * <p>The loss through the surface is summed with the same weights, so that content and loss agree to rounding.
 */
@PublishedModel(
        source = "sandu-1997",
        locator = "method RODAS3; coefficients read in open implementations",
        validity = "any step; third order where air is straight over the step")
final class RosenbrockStep {
    private final SlabEquation equation;
    private final HatWeights storage;
    private final TridiagonalSystem system;
    private final int last;
    private final double[] psi;
    private final double[] stagePsi;
    private final double[] slope;
    private final double[] change;
    private final double[] gain;
    private final double[] drift;
    private final double[] k1;
    private final double[] k;
    private final double[] mix;
    private double loss;
    private double error;
    private double largestChange;

    RosenbrockStep(SlabEquation equation, HatWeights storage, int points) {
        this.equation = equation;
        this.storage = storage;
        system = new TridiagonalSystem(points);
        last = points - 1;
        psi = new double[points];
        stagePsi = new double[points];
        slope = new double[points];
        change = new double[points];
        gain = new double[points];
        drift = new double[points];
        k1 = new double[points];
        k = new double[points];
        mix = new double[points];
    }

    /** Takes the step from a state, which is left alone; the new state goes to {@code next}. */
    void take(double[] moisture, AirInstant from, AirInstant to, double seconds, double[] next) {
        double half = 0.5 * seconds;
        equation.potentials(moisture, psi);
        equation.moistureByPotential(psi, slope);
        double lossSlope = equation.surfaceLossSlope(moisture[last], from);
        equation.factor(storage, slope, from.diffusivity, lossSlope, half, system);

        double loss0 = equation.surfaceLoss(moisture[last], from);
        double lossDrift = growth(from.exchange, to.exchange) * loss0 + from.exchange * (from.humidity - to.humidity);
        double diffusivityDrift = growth(from.diffusivity, to.diffusivity) * from.diffusivity;
        equation.gains(psi, from.diffusivity, loss0, gain);
        equation.gains(psi, diffusivityDrift, lossDrift, drift);

        for (int i = 0; i <= last; i++) {
            k1[i] = half * (gain[i] + 0.5 * drift[i]);
        }
        solve(k1);
        double out1 = half * (loss0 + 0.5 * lossDrift + lossSlope * k1[last]);

        for (int i = 0; i <= last; i++) {
            k[i] = half * (gain[i] + 1.5 * drift[i]);
            change[i] = 2 * k1[i];
        }
        storage.addTo(change, k);
        solve(k);
        double out2 = half * (loss0 + 1.5 * lossDrift + lossSlope * k[last]) + 2 * out1;

        double stageLoss = equation.surfaceLoss(moisture[last] + change[last], to);
        equation.potentials(psi, change, stagePsi);
        equation.gains(stagePsi, to.diffusivity, stageLoss, gain);
        for (int i = 0; i <= last; i++) {
            mix[i] = 0.5 * (k1[i] - k[i]);
            k[i] = half * gain[i];
        }
        storage.addTo(mix, k);
        solve(k);
        double out3 = half * (stageLoss + lossSlope * k[last]) + 0.5 * (out1 - out2);

        for (int i = 0; i <= last; i++) {
            change[i] += k[i];
            mix[i] -= 4 / 3.0 * k[i];
        }
        stageLoss = equation.surfaceLoss(moisture[last] + change[last], to);
        equation.potentials(psi, change, stagePsi);
        equation.gains(stagePsi, to.diffusivity, stageLoss, gain);
        for (int i = 0; i <= last; i++) {
            k[i] = half * gain[i];
        }
        storage.addTo(mix, k);
        solve(k);
        double out4 = half * (stageLoss + lossSlope * k[last]) + 0.5 * (out1 - out2) - 4 / 3.0 * out3;

        loss = 2 * out1 + out3 + out4;
        error = 0;
        largestChange = 0;
        for (int i = 0; i <= last; i++) {
            double whole = change[i] + k[i];
            next[i] = moisture[i] + whole;
            error = Math.max(error, Math.abs(k[i]));
            largestChange = Math.max(largestChange, Math.abs(whole));
        }
    }

    /** What passed the surface outwards in the step, moisture content times metres. */
    double loss() {
        return loss;
    }

    /** Largest local error over the points, moisture content. */
    double error() {
        return error;
    }

    /** Largest change over the points, moisture content. */
    double largestChange() {
        return largestChange;
    }

    private void solve(double[] rhs) {
        system.solve(rhs);
        for (int i = 0; i <= last; i++) {
            rhs[i] *= slope[i];
        }
    }

    /** tau/y dy/dt at the start for y that grows exponentially over the step: ln(end/start) to third order. */
    private static double growth(double start, double end) {
        return 2 * (end - start) / (end + start);
    }
}
