package hafthold.transport;

import hafthold.numeric.GradedGrid;
import hafthold.numeric.HatWeights;
import java.util.Arrays;

/**
 * Carries the moisture of a slab from one air sample to the next, halving the step until its local error is small and
 * every point stays between what was in the slab and what the air asks for.
 */
final class MoistureStepper {
    /** Shortest step: sample interval over 2^12, about a second of an hour. */
    private static final int MOST_HALVINGS = 12;
    /** Moisture content by which a point may leave the range of state and air. */
    private static final double RANGE_SLACK = 1e-7;

    private final double tolerance;
    private final double largestChange;
    private final SlabEquation equation;
    private final RosenbrockStep fineStep;
    private final RosenbrockStep lumpedStep;
    private final ImplicitEulerStep safeStep;
    private final AirInstant[] halfway = new AirInstant[MOST_HALVINGS];
    private final double[] moisture;
    private final double[] next;
    private double loss;
    private double grossLoss;
    private double largestError;
    private long steps;
    private double low;
    private double high;

    MoistureStepper(Slab slab, GradedGrid grid, HatWeights storage, double tolerance, double largestChange) {
        this.tolerance = tolerance;
        this.largestChange = largestChange;
        equation = new SlabEquation(slab, grid);
        HatWeights lumped = storage.lumped();
        fineStep = new RosenbrockStep(equation, storage, grid.size());
        lumpedStep = new RosenbrockStep(equation, lumped, grid.size());
        safeStep = new ImplicitEulerStep(equation, lumped);
        Arrays.setAll(halfway, i -> new AirInstant());
        moisture = new double[grid.size()];
        next = new double[grid.size()];
    }

    /** Moisture content at the grid points, live. */
    double[] moisture() {
        return moisture;
    }

    SlabEquation equation() {
        return equation;
    }

    /** Forgets the water counted so far. */
    void startLedger() {
        loss = 0;
        grossLoss = 0;
        largestError = 0;
        steps = 0;
    }

    /** Net loss through the surface since the ledger was started, moisture content times metres. */
    double loss() {
        return loss;
    }

    /** Sum of the sizes of all losses and gains. */
    double grossLoss() {
        return grossLoss;
    }

    /** Largest local error accepted; above the tolerance only where the shortest step was not short enough. */
    double largestError() {
        return largestError;
    }

    long steps() {
        return steps;
    }

    /** Moves the state from one instant to the next along straight-line air. */
    void advance(AirTrack track, AirInstant from, AirInstant to, double seconds) {
        advance(track, from, to, seconds, 0);
    }

    private void advance(AirTrack track, AirInstant from, AirInstant to, double seconds, int halvings) {
        boolean shortest = halvings == MOST_HALVINGS;
        take(fineStep, from, to, seconds);
        if (shortest || isAccurate(fineStep)) {
            if (staysInRange(from, to)) {
                accept(fineStep.loss(), fineStep.error());
                return;
            }
            take(lumpedStep, from, to, seconds);
            if ((shortest || isAccurate(lumpedStep)) && staysInRange(from, to)) {
                accept(lumpedStep.loss(), lumpedStep.error());
                return;
            }
        }
        if (shortest) {
            safeStep.take(moisture, to, seconds, low, high, next);
            steps++;
            accept(safeStep.loss(), lumpedStep.error());
            return;
        }
        AirInstant middle = halfway[halvings];
        track.halfway(from, to, middle);
        advance(track, from, middle, 0.5 * seconds, halvings + 1);
        advance(track, middle, to, 0.5 * seconds, halvings + 1);
    }

    private boolean isAccurate(RosenbrockStep step) {
        return step.error() <= tolerance && step.largestChange() <= largestChange;
    }

    private void take(RosenbrockStep step, AirInstant from, AirInstant to, double seconds) {
        step.take(moisture, from, to, seconds, next);
        steps++;
    }

    private void accept(double stepLoss, double stepError) {
        System.arraycopy(next, 0, moisture, 0, moisture.length);
        loss += stepLoss;
        grossLoss += Math.abs(stepLoss);
        largestError = Math.max(largestError, stepError);
    }

    /** Maximum principle: no point beyond the range of the state before and the equilibria of the air. */
    private boolean staysInRange(AirInstant from, AirInstant to) {
        low = Double.POSITIVE_INFINITY;
        high = Double.NEGATIVE_INFINITY;
        double nextLow = Double.POSITIVE_INFINITY;
        double nextHigh = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < moisture.length; i++) {
            low = Math.min(low, moisture[i]);
            high = Math.max(high, moisture[i]);
            nextLow = Math.min(nextLow, next[i]);
            nextHigh = Math.max(nextHigh, next[i]);
        }
        if (nextLow >= low - RANGE_SLACK && nextHigh <= high + RANGE_SLACK) {
            return true;
        }
        double before = equation.equilibrium(from);
        double after = equation.equilibrium(to);
        low = Math.min(low, Math.min(before, after));
        high = Math.max(high, Math.max(before, after));
        return nextLow >= low - RANGE_SLACK && nextHigh <= high + RANGE_SLACK;
    }
}
