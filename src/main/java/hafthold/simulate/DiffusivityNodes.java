package hafthold.simulate;

import hafthold.material.WaterUptake;
import java.util.ArrayList;
import java.util.List;

/**
 * The few diffusivities that a year of moisture is computed for, and the weights that any other one between them gives
 * their courses: Lagrange's polynomial through the nearest nodes in the logarithm of the diffusivity, time sample by time
 * sample. What that errs by stands in accuracy.md and is held by a test.
 *
 * @param logFactors natural logarithms of the factors on the diffusivity, ascending, one of them 0
 */
record DiffusivityNodes(List<Double> logFactors) {
    /** Furthest that nodes lie apart: a factor of 2.1. */
    private static final double SPACING = 0.75;

    private static final int NEAREST = 6;
    private static final double SAME = 1e-9;

    /** Keeps its own copy. */
    DiffusivityNodes {
        logFactors = List.copyOf(logFactors);
    }

    /** Nodes over the range of a diffusivity, evenly on either side of its value; one where it is known exactly. */
    static DiffusivityNodes of(WaterUptake water) {
        double lowest = Math.log(Doubt.diffusivityFactor(water, -Draws.FURTHEST));
        double highest = Math.log(Doubt.diffusivityFactor(water, Draws.FURTHEST));
        List<Double> nodes = new ArrayList<>();
        int below = steps(-lowest);
        for (int step = below; step > 0; step--) {
            nodes.add(lowest * step / below);
        }
        nodes.add(0.0);
        int above = steps(highest);
        for (int step = 1; step <= above; step++) {
            nodes.add(highest * step / above);
        }
        return new DiffusivityNodes(nodes);
    }

    private static int steps(double range) {
        return range < SAME ? 0 : (int) Math.ceil(range / SPACING);
    }

    /** Factor on the diffusivity at a node. */
    double factor(int node) {
        return Math.exp(logFactors.get(node));
    }

    /** Weight of each node for a factor; exactly one of them where the factor is a node's. */
    double[] weights(double factor) {
        double x = Math.log(factor);
        int size = logFactors.size();
        int from = 0;
        while (from + NEAREST < size && x > (logFactors.get(from) + logFactors.get(from + NEAREST)) / 2) {
            from++;
        }
        int to = Math.min(size, from + NEAREST);
        double[] weights = new double[size];
        for (int i = from; i < to; i++) {
            double weight = 1;
            for (int j = from; j < to; j++) {
                if (j != i) {
                    weight *= (x - logFactors.get(j)) / (logFactors.get(i) - logFactors.get(j));
                }
            }
            weights[i] = weight;
        }
        return weights;
    }
}
