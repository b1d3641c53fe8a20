package hafthold.simulate;

import hafthold.material.WaterUptake;

/**
 * The few diffusivities that a year of moisture is computed for, and the weights that any other one between them gives
 * their courses: Lagrange's polynomial through the nearest nodes in the logarithm of the diffusivity, time sample by time
 * sample. What that errs by stands in accuracy.md and is held by a test.
 */
final class DiffusivityNodes {
    /** A range of a factor of 4 to a side needs one node there. */
    private static final double ONE_STEP = 1.4;

    /** Furthest that nodes lie apart in a wider one: a factor of 2.7. */
    private static final double SPACING = 1.0;

    private static final int NEAREST = 6;
    private static final double SAME = 1e-9;

    /** Natural logarithms of the factors on the diffusivity, ascending. */
    private final double[] logFactor;

    private final int value;

    /** Nodes over the range of a diffusivity, evenly on either side of its value; one where it is known exactly. */
    DiffusivityNodes(WaterUptake water) {
        double lowest = Math.log(Doubt.diffusivityFactor(water, -Draws.FURTHEST));
        double highest = Math.log(Doubt.diffusivityFactor(water, Draws.FURTHEST));
        value = steps(-lowest);
        int above = steps(highest);
        logFactor = new double[value + 1 + above];
        for (int step = 1; step <= value; step++) {
            logFactor[value - step] = lowest * step / value;
        }
        for (int step = 1; step <= above; step++) {
            logFactor[value + step] = highest * step / above;
        }
    }

    private static int steps(double range) {
        if (range < ONE_STEP) {
            return range < SAME ? 0 : 1;
        }
        return (int) Math.ceil(range / SPACING);
    }

    int size() {
        return logFactor.length;
    }

    /** The node of the diffusivity itself. */
    int value() {
        return value;
    }

    /** Factor on the diffusivity at a node. */
    double factor(int node) {
        return node == value ? 1 : Math.exp(logFactor[node]);
    }

    /**
     * Weight of each node for a factor; exactly one of them where the factor is a node's.
     *
     * @param room length of the result, at least {@link #size()}; what is beyond is 0
     */
    double[] weights(double factor, int room) {
        double x = Math.log(factor);
        int from = 0;
        while (from + NEAREST < size() && x > (logFactor[from] + logFactor[from + NEAREST]) / 2) {
            from++;
        }
        int to = Math.min(size(), from + NEAREST);
        double[] weights = new double[room];
        for (int i = from; i < to; i++) {
            double weight = 1;
            for (int j = from; j < to; j++) {
                if (j != i) {
                    weight *= (x - logFactor[j]) / (logFactor[i] - logFactor[j]);
                }
            }
            weights[i] = weight;
        }
        return weights;
    }
}
