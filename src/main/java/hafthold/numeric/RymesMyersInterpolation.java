package hafthold.numeric;

import hafthold.source.PublishedModel;
import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Points that run smoothly through a closed ring of intervals and keep the mean of each, after Rymes and Myers: replace
 * every point by the mean of itself and its neighbours, then shift each interval back to its mean; repeat.
 *
 * <p>We depart from the print by not repeating: the state that the repetition tends to has one constant second
 * difference within each interval, which is a small linear system, solved once for all means. Means are kept to
 * rounding. Where the smooth curve leaves the bounds, points outside are put on the bound and the other points of that
 * interval drawn towards the bound in proportion to their distance from it, which is the print's correction.
 *
 * <p>The algorithm was read in an open implementation, not in the paper.
 */
@PublishedModel(
        source = "rymes-myers-2001",
        locator = "smoothing with mean correction and bounds",
        validity = "any closed series of interval means inside its bounds")
public final class RymesMyersInterpolation {
    private final int[] lengths;
    private final double[][] weights;

    /**
     * Prepares for intervals of given lengths; the last is followed by the first.
     *
     * @param lengths points in each interval, positive, three intervals or more
     */
    public RymesMyersInterpolation(int... lengths) {
        if (lengths.length < 3 || Arrays.stream(lengths).anyMatch(n -> n < 1)) {
            throw new IllegalArgumentException(
                    "needs three or more intervals of one or more points, got " + Arrays.toString(lengths));
        }
        this.lengths = lengths.clone();
        this.weights = weights(lengths);
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
        double[] points = new double[weights.length];
        for (int i = 0; i < points.length; i++) {
            double sum = 0;
            for (int k = 0; k < means.length; k++) {
                sum += weights[i][k] * means[k];
            }
            points[i] = sum;
        }
        for (int k = 0, start = 0; k < means.length; start += lengths[k], k++) {
            if (!(means[k] >= lowest && means[k] <= highest)) {
                throw new IllegalArgumentException("mean " + means[k] + " lies outside " + lowest + " to " + highest);
            }
            shiftToMean(points, start, lengths[k], means[k]);
            drawTowards(points, start, lengths[k], means[k], lowest, 1);
            drawTowards(points, start, lengths[k], means[k], highest, -1);
        }
        return points;
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

    /**
     * Point i = x0 + i d0 + sum over intervals K of g_K B_K(i), where g_K is the second difference in K. Unknown are x0,
     * d0 and the g; equations are the means, and that slope and value close after the last point.
     */
    private static double[][] weights(int[] lengths) {
        int intervals = lengths.length;
        int points = Arrays.stream(lengths).sum();
        int unknowns = intervals + 2;
        double[][] basis = new double[points][];
        double[][] system = new double[unknowns][unknowns];
        double[] value = new double[unknowns];
        double[] slope = new double[unknowns];
        value[0] = 1;
        // Scaling the first slope by the number of points keeps the system well conditioned.
        slope[1] = 1.0 / points;
        for (int k = 0, i = 0; k < intervals; k++) {
            for (int j = 0; j < lengths[k]; j++, i++) {
                if (i > 0) {
                    slope[k + 2] += 1.0 / points;
                }
                basis[i] = value.clone();
                for (int u = 0; u < unknowns; u++) {
                    system[k][u] += value[u] / lengths[k];
                    value[u] += slope[u];
                }
            }
            system[intervals][k + 2] = lengths[k];
        }
        value[0] -= 1;
        system[intervals + 1] = value;
        RealMatrix rightHandSides = new Array2DRowRealMatrix(unknowns, intervals);
        for (int k = 0; k < intervals; k++) {
            rightHandSides.setEntry(k, k, 1);
        }
        RealMatrix solution = new LUDecomposition(MatrixUtils.createRealMatrix(system))
                .getSolver()
                .solve(rightHandSides);
        return new Array2DRowRealMatrix(basis, false).multiply(solution).getData();
    }
}
