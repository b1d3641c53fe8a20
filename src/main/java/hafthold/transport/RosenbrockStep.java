package hafthold.transport;

import hafthold.numeric.HatWeights;
import hafthold.numeric.TridiagonalSystem;
import hafthold.source.PublishedModel;
import java.util.Arrays;

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
 * temperature is left out of it, which moves the mean by some 1e-5 kg/kg.
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
    private final double[] endPsi;
    private final double[] slope;
    private final double[] gain;
    private final double[] drift;
    private final double[] change;
    private final double[] carried;
    private final double[] k1;
    private final double[] k2;
    private final double[] k3;
    private final double[] k4;
    private double half;
    private double lossDrift;
    private double lossSlope;
    private double loss;
    private double error;
    private double largestChange;

    RosenbrockStep(SlabEquation equation, HatWeights storage, int points) {
        this.equation = equation;
        this.storage = storage;
        system = new TridiagonalSystem(points);
        last = points - 1;
        psi = new double[points];
        endPsi = new double[points];
        slope = new double[points];
        gain = new double[points];
        drift = new double[points];
        change = new double[points];
        carried = new double[points];
        k1 = new double[points];
        k2 = new double[points];
        k3 = new double[points];
        k4 = new double[points];
    }

    /** Takes the step from a state, which is left alone; the new state goes to {@code next}. */
    void take(double[] moisture, AirInstant from, AirInstant to, double seconds, double[] next) {
        half = 0.5 * seconds;
        double startLoss = startRates(moisture, from, to);
        Arrays.fill(carried, 0);
        double out1 = stage(k1, 0.5, startLoss, 0);

        for (int i = 0; i <= last; i++) {
            change[i] = 2 * k1[i];
            carried[i] = change[i];
        }
        double out2 = stage(k2, 1.5, startLoss, 2 * out1);

        double endLoss = endRates(moisture[last], to);
        for (int i = 0; i <= last; i++) {
            carried[i] = 0.5 * (k1[i] - k2[i]);
        }
        double out3 = stage(k3, 0, endLoss, 0.5 * (out1 - out2));

        for (int i = 0; i <= last; i++) {
            change[i] += k3[i];
            carried[i] -= 4 / 3.0 * k3[i];
        }
        endLoss = endRates(moisture[last], to);
        double out4 = stage(k4, 0, endLoss, 0.5 * (out1 - out2) - 4 / 3.0 * out3);

        loss = 2 * out1 + out3 + out4;
        error = 0;
        largestChange = 0;
        for (int i = 0; i <= last; i++) {
            change[i] += k4[i];
            next[i] = moisture[i] + change[i];
            error = Math.max(error, Math.abs(k4[i]));
            largestChange = Math.max(largestChange, Math.abs(change[i]));
        }
    }

    /** Gains, their drift and the factored matrix at the start of the step; returns the loss there. */
    private double startRates(double[] moisture, AirInstant from, AirInstant to) {
        equation.potentials(moisture, psi);
        equation.moistureByPotential(psi, slope);
        double startLoss = equation.surfaceLoss(moisture[last], from);
        lossSlope = equation.surfaceLossSlope(moisture[last], from);
        lossDrift = growth(from.exchange, to.exchange) * startLoss + from.exchange * (from.humidity - to.humidity);
        double diffusivityDrift = growth(from.diffusivity, to.diffusivity) * from.diffusivity;
        equation.gains(psi, from.diffusivity, startLoss, gain);
        equation.gains(psi, diffusivityDrift, lossDrift, drift);
        equation.factor(storage, slope, from.diffusivity, lossSlope, half, system);
        return startLoss;
    }

    /** Gains at the end of the step after the change so far; returns the loss there. */
    private double endRates(double surfaceMoisture, AirInstant to) {
        equation.potentials(psi, change, endPsi);
        double endLoss = equation.surfaceLoss(surfaceMoisture + change[last], to);
        equation.gains(endPsi, to.diffusivity, endLoss, gain);
        return endLoss;
    }

    /** Solves for K from gains, a share of their drift, and what is carried over; returns the loss that belongs to K. */
    private double stage(double[] k, double driftShare, double gainLoss, double carriedLoss) {
        for (int i = 0; i <= last; i++) {
            k[i] = half * (gain[i] + driftShare * drift[i]);
        }
        storage.addTo(carried, k);
        system.solve(k);
        for (int i = 0; i <= last; i++) {
            k[i] *= slope[i];
        }
        return half * (gainLoss + driftShare * lossDrift + lossSlope * k[last]) + carriedLoss;
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

    /** tau/y dy/dt at the start for y that grows exponentially over the step: ln(end/start) to third order. */
    private static double growth(double start, double end) {
        return 2 * (end - start) / (end + start);
    }
}
