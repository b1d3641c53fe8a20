package hafthold.transport;

import hafthold.numeric.HatWeights;
import hafthold.numeric.TridiagonalSystem;

/**
 * One step of the slab by implicit Euler on lumped storage, solved by Newton's rule: first order, but it never leaves the
 * range of state and air, whatever the step. The last resort where the air jumps.
 */
final class ImplicitEulerStep {
    private static final int NEWTON_ROUNDS = 50;
    /** Content and loss agree at any round, as both are linearised alike, so the state need not be polished further. */
    private static final double NEWTON_TOLERANCE = 1e-8;

    private final SlabEquation equation;
    private final HatWeights lumped;
    private final double[] width;
    private final TridiagonalSystem system;
    private final double[] psi;
    private final double[] slope;
    private final double[] residual;
    private double loss;

    ImplicitEulerStep(SlabEquation equation, HatWeights lumped) {
        this.equation = equation;
        this.lumped = lumped;
        width = lumped.totals();
        system = new TridiagonalSystem(width.length);
        psi = new double[width.length];
        slope = new double[width.length];
        residual = new double[width.length];
    }

    /**
     * Takes the step from a state, which is left alone; the new state goes to {@code next}.
     *
     * @param low no point can end below it; keeps Newton's rule from straying
     * @param high no point can end above it
     * @throws ArithmeticException when Newton's rule does not settle
     */
    void take(double[] moisture, SlabAir to, double seconds, double low, double high, double[] next) {
        int last = width.length - 1;
        System.arraycopy(moisture, 0, next, 0, width.length);
        double triedMoisture = Double.NaN;
        double triedLoss = Double.NaN;
        for (int round = 0; round < NEWTON_ROUNDS; round++) {
            equation.potentials(next, psi);
            equation.moistureByPotential(psi, slope);
            double surfaceLoss = equation.surfaceLoss(next[last], to);
            double secant = (surfaceLoss - triedLoss) / (next[last] - triedMoisture);
            double tangent = equation.surfaceLossSlope(next[last], to);
            double lossSlope = secant > tangent ? secant : tangent; // holds where the isotherm is all but upright
            triedMoisture = next[last];
            triedLoss = surfaceLoss;
            equation.factor(lumped, slope, to.diffusivity(), lossSlope, seconds, system);
            equation.gains(psi, to.diffusivity(), surfaceLoss, residual);
            for (int i = 0; i <= last; i++) {
                residual[i] = seconds * residual[i] - width[i] * (next[i] - moisture[i]);
            }
            system.solve(residual);
            loss = seconds * (surfaceLoss + lossSlope * slope[last] * residual[last]);
            double largest = 0;
            for (int i = 0; i <= last; i++) {
                double change = slope[i] * residual[i];
                next[i] += change;
                largest = Math.max(largest, Math.abs(change));
            }
            if (largest <= NEWTON_TOLERANCE) {
                return;
            }
            for (int i = 0; i <= last; i++) {
                next[i] = Math.min(high, Math.max(low, next[i]));
            }
        }
        throw new ArithmeticException("moisture in the slab did not settle within a step of " + seconds
                + " s: the isotherm or diffusivity may be unsound");
    }

    /** What passed the surface outwards in the step, moisture content times metres. */
    double loss() {
        return loss;
    }
}
