package hafthold.numeric;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;

/** A sample each of whose values may be off by a normal error: what one would read when measuring what was sampled. */
public final class BlurredSample {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double FAR = 8;
    private static final int HALVINGS = 60;

    private final double[] values;
    private final double deviation;

    /**
     * Takes a copy of the values.
     *
     * @param values one or more
     * @param deviation standard deviation of the error, more than 0
     */
    public BlurredSample(double[] values, double deviation) {
        if (values.length == 0 || !(deviation > 0)) {
            throw new IllegalArgumentException(
                    "needs a value and an error above 0, got " + values.length + " values, error " + deviation);
        }
        this.values = values.clone();
        this.deviation = deviation;
    }

    /** Chance of reading no more than that. */
    public double below(double reading) {
        return Arrays.stream(values)
                .map(value -> NORMAL.cumulativeProbability((reading - value) / deviation))
                .average()
                .orElseThrow();
    }

    /** Chance of a reading that lies as far out as that one or further, to either side of the middle. */
    public double asFarOut(double reading) {
        double below = below(reading);
        return Math.min(1, 2 * Math.min(below, 1 - below));
    }

    /**
     * The reading that is exceeded with one less that probability, found by halving.
     *
     * @param probability between 0 and 1
     */
    public double quantile(double probability) {
        double low = Arrays.stream(values).min().orElseThrow() - FAR * deviation;
        double high = Arrays.stream(values).max().orElseThrow() + FAR * deviation;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            boolean tooLow = below(middle) < probability;
            low = tooLow ? middle : low;
            high = tooLow ? high : middle;
        }
        return (low + high) / 2;
    }
}
