package hafthold.numeric;

import hafthold.source.PublishedModel;

/**
 * Points that run smoothly through a closed ring of intervals and keep the mean of each, after Rymes and Myers: replace
 * every point by the mean of itself and its neighbours, then shift each interval back to its mean; repeat.
 *
 * <p>We depart from the print by not repeating: the state that the repetition tends to has one constant second
 * difference within each interval. With m the mean and n the points of an interval and D the step into its first point,
 * the steps follow from
 *
 * <pre>
 * a D + (b + b') D' + a' D'' = m' - m,     a = (n^2 - 1)/(6n),  b = (2 n^2 + 1)/(6n)
 * </pre>
 *
 * <p>where a dash means the next interval. Means are kept to rounding. Where the smooth curve leaves the bounds, points
 * outside are put on the bound and the other points of that interval drawn towards the bound in proportion to their
 * distance from it, which is the print's correction.
 *
 * <p>The algorithm was read in an open implementation, not in the paper.
 */
@PublishedModel(
        source = "rymes-myers-2001",
        locator = "smoothing with mean correction and bounds",
        validity = "any closed series of interval means inside its bounds")
public final class RymesMyersInterpolation {
    /** The diagonal is twice the rest of its row or more, so each sweep at least halves the error. */
    private static final int SWEEPS = 60;

    private final int[] lengths;
    private final int points;

    /**
     * Prepares for intervals of given lengths; the last is followed by the first.
     *
     * @param lengths points in each interval, positive, three intervals or more
     */
    public RymesMyersInterpolation(int... lengths) {
        int sum = 0;
        for (int length : lengths) {
            if (length < 1) {
                throw new IllegalArgumentException("an interval needs one point or more, got " + length);
            }
            sum += length;
        }
        if (lengths.length < 3) {
            throw new IllegalArgumentException("a ring needs three intervals or more, got " + lengths.length);
        }
        this.lengths = lengths.clone();
        this.points = sum;
    }

    /**
     * One value a point.
     *
     * @param means mean of each interval, between the bounds
     * @param lowest lower bound; may be minus infinity
     * @param highest upper bound; may be infinity
     * @return the points of all intervals in order
     * @throws IllegalArgumentException when the number of means is wrong or a mean lies outside the bounds
     */
    public double[] points(double[] means, double lowest, double highest) {
        if (means.length != lengths.length) {
            throw new IllegalArgumentException("needs " + lengths.length + " means, got " + means.length);
        }
        double[] steps = steps(means);
        double[] values = new double[points];
        for (int k = 0, start = 0; k < means.length; start += lengths[k], k++) {
            if (!(means[k] >= lowest && means[k] <= highest)) {
                throw new IllegalArgumentException("mean " + means[k] + " lies outside " + lowest + " to " + highest);
            }
            double bend = (steps[(k + 1) % steps.length] - steps[k]) / lengths[k];
            for (int j = 0; j < lengths[k]; j++) {
                values[start + j] = j * steps[k] + 0.5 * j * (j + 1) * bend;
            }
            shiftToMean(values, start, lengths[k], means[k]);
            drawTowards(values, start, lengths[k], means[k], lowest, 1);
            drawTowards(values, start, lengths[k], means[k], highest, -1);
        }
        return values;
    }

    /** The step into the first point of each interval, by Gauss-Seidel sweeps round the ring. */
    private double[] steps(double[] means) {
        int n = means.length;
        double[] steps = new double[n];
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (int k = 0; k < n; k++) {
                int before = (k + n - 1) % n;
                double others = coupling(before) * steps[before] + coupling(k) * steps[(k + 1) % n];
                steps[k] = (means[k] - means[before] - others) / (weight(before) + weight(k));
            }
        }
        return steps;
    }

    private double coupling(int interval) {
        double n = lengths[interval];
        return (n * n - 1) / (6 * n);
    }

    private double weight(int interval) {
        double n = lengths[interval];
        return (2 * n * n + 1) / (6 * n);
    }

    private static void shiftToMean(double[] points, int start, int length, double mean) {
        double sum = 0;
        for (int i = start; i < start + length; i++) {
            sum += points[i] - mean;
        }
        for (int i = start; i < start + length; i++) {
            points[i] -= sum / length;
        }
    }

    /** Side is 1 for a lower bound, -1 for an upper one. */
    private static void drawTowards(double[] points, int start, int length, double mean, double bound, int side) {
        double surplus = 0;
        boolean outside = false;
        for (int i = start; i < start + length; i++) {
            double distance = side * (points[i] - bound);
            outside |= distance < 0;
            surplus += Math.max(0, distance);
        }
        if (!outside) {
            return;
        }
        double kept = surplus > 0 ? side * (mean - bound) * length / surplus : 0;
        for (int i = start; i < start + length; i++) {
            points[i] = bound + side * kept * Math.max(0, side * (points[i] - bound));
        }
    }
}
