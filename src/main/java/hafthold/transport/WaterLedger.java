package hafthold.transport;

import java.util.Arrays;

/** Water through the surface of each slab of a bundle, with the steps and errors on the way. */
final class WaterLedger {
    private final double[] loss;
    private final double[] grossLoss;
    private final double[] largestError;
    private final long[] steps;

    WaterLedger(int slabs) {
        loss = new double[slabs];
        grossLoss = new double[slabs];
        largestError = new double[slabs];
        steps = new long[slabs];
    }

    /** Forgets what was counted so far. */
    void clear() {
        Arrays.fill(loss, 0);
        Arrays.fill(grossLoss, 0);
        Arrays.fill(largestError, 0);
        Arrays.fill(steps, 0);
    }

    void tried(int slab) {
        steps[slab]++;
    }

    void accepted(int slab, double stepLoss, double stepError) {
        loss[slab] += stepLoss;
        grossLoss[slab] += Math.abs(stepLoss);
        largestError[slab] = Math.max(largestError[slab], stepError);
    }

    /** Net loss, moisture content times metres. */
    double loss(int slab) {
        return loss[slab];
    }

    /** Sum of the sizes of all losses and gains. */
    double grossLoss(int slab) {
        return grossLoss[slab];
    }

    /** Largest local error accepted; above the tolerance only where the shortest step was not short enough. */
    double largestError(int slab) {
        return largestError[slab];
    }

    /** Steps tried. */
    long steps(int slab) {
        return steps[slab];
    }
}
