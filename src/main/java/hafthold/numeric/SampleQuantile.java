package hafthold.numeric;

import hafthold.source.PublishedModel;
import java.util.Arrays;

/**
 * Quantiles of a sample whose points stand for equal shares of the probability: the k-th of n in order stands at
 * (k - 1/2)/n, and between two the quantile lies on a straight line.
 */
@PublishedModel(
        source = "hyndman-fan-1996",
        locator = "definition 5",
        validity = "any sample; beyond the outermost points the outermost value")
public final class SampleQuantile {
    private final double[] sorted;

    /** Takes a copy of the values. */
    public SampleQuantile(double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("a quantile needs at least one value");
        }
        sorted = values.clone();
        Arrays.sort(sorted);
    }

    /**
     * The value that this share of the sample does not exceed.
     *
     * @param probability 0 to 1
     */
    public double at(double probability) {
        double position = probability * sorted.length - 0.5;
        int below = (int) Math.floor(position);
        if (below < 0) {
            return sorted[0];
        }
        if (below >= sorted.length - 1) {
            return sorted[sorted.length - 1];
        }
        double share = position - below;
        return (1 - share) * sorted[below] + share * sorted[below + 1];
    }
}
