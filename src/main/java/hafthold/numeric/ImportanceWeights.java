package hafthold.numeric;

import hafthold.source.PublishedModel;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Samples weighted by how well each explains what was measured: weights in proportion to the likelihood of the measurement
 * under the sample turn draws from before it into draws from after it.
 */
@PublishedModel(
        source = "smith-gelfand-1992",
        locator = "the weighted bootstrap: q_i = l_i / sum of l_j",
        validity = "as long as enough samples lie where the likelihood is: see effectiveSamples")
public final class ImportanceWeights {
    private static final int HALVINGS = 12;

    private final double[] weights;

    /**
     * Weights from their logarithms, up to any constant.
     *
     * @param logWeights one a sample; negative infinity for one that cannot be
     * @throws IllegalArgumentException when there is no sample, or none that can be
     */
    public ImportanceWeights(double[] logWeights) {
        double most = Arrays.stream(logWeights).max().orElse(Double.NEGATIVE_INFINITY);
        if (!Double.isFinite(most)) {
            throw new IllegalArgumentException(
                    "weights need a sample that can be, got " + logWeights.length + " samples");
        }
        double[] raw =
                Arrays.stream(logWeights).map(log -> Math.exp(log - most)).toArray();
        double sum = Arrays.stream(raw).sum();
        weights = Arrays.stream(raw).map(weight -> weight / sum).toArray();
    }

    /**
     * Weights of which at least so many count: where fewer do, their logarithms are halved until that many do.
     *
     * @param wantedEffective so many as {@link #effectiveSamples} is to be, less than there are samples
     */
    public static ImportanceWeights evened(double[] logWeights, double wantedEffective) {
        ImportanceWeights weights = new ImportanceWeights(logWeights);
        double power = 1;
        for (int i = 0; i < HALVINGS && weights.effectiveSamples() < wantedEffective; i++) {
            power /= 2;
            double evened = power;
            weights = new ImportanceWeights(
                    Arrays.stream(logWeights).map(log -> evened * log).toArray());
        }
        return weights;
    }

    /** Weight of a sample; all add up to 1. */
    public double of(int sample) {
        return weights[sample];
    }

    /** How many equally weighted samples would say as much: one over the sum of squared weights (Kong 1992). */
    public double effectiveSamples() {
        return 1 / Arrays.stream(weights).map(weight -> weight * weight).sum();
    }

    /** Weighted mean. */
    public double mean(double[] values) {
        return IntStream.range(0, weights.length)
                .mapToDouble(i -> weights[i] * values[i])
                .sum();
    }

    /**
     * The value below which that share of the weight lies.
     *
     * @param probability 0 to 1
     */
    public double quantile(double[] values, double probability) {
        int[] order = IntStream.range(0, weights.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double sum = 0;
        for (int i : order) {
            sum += weights[i];
            if (sum >= probability) {
                return values[i];
            }
        }
        return values[order[order.length - 1]];
    }

    /**
     * Numbers of samples drawn anew by their weights, evenly spaced through the sum of weights, so that the same weights
     * give the same draws.
     *
     * @param count how many are drawn, 1 or more
     */
    public int[] resampled(int count) {
        int[] drawn = new int[count];
        double sum = weights[0];
        int sample = 0;
        for (int n = 0; n < count; n++) {
            double mark = (n + 0.5) / count;
            while (sum < mark && sample + 1 < weights.length) {
                sample++;
                sum += weights[sample];
            }
            drawn[n] = sample;
        }
        return drawn;
    }
}
