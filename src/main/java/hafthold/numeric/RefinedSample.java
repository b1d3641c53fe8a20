package hafthold.numeric;

import hafthold.source.PublishedModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Draws from after a measuring, of unknowns that were standard normal and independent before it: points of a Latin
 * hypercube from a mixture of the prior and of a normal distribution about the best point, each weighted by prior times
 * likelihood over the density it was drawn with. The share of the prior keeps every weight bounded where the likelihood is
 * (a defensive mixture). Where too few points count, the normal is laid anew through the weighted ones and the points are
 * drawn again.
 *
 * @param points unknowns by point
 * @param weights of the points
 * @param rounds how often points were drawn
 */
@PublishedModel(
        source = "hesterberg-1995",
        locator = "defensive mixture: a share of the draws comes from the prior itself",
        validity = "unknowns by the dozen, one hill of likelihood; see effectiveSamples")
public record RefinedSample(double[][] points, ImportanceWeights weights, int rounds) {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double PRIOR_SHARE = 0.1;

    /** The normal about the best point is drawn a little wider, so that its tails are met. */
    private static final double WIDER = 1.2;

    private static final int MOST_ROUNDS = 4;
    private static final double ENOUGH = 0.1;

    /**
     * Draws.
     *
     * @param best the best point and the normal that fits there
     * @param residuals what is left unexplained at a point, over its standard error
     * @param count how many points, 30 or more
     * @param seed the same one gives the same points
     */
    public static RefinedSample of(NormalMode best, UnaryOperator<double[]> residuals, int count, long seed) {
        double[] centre = best.at();
        RealMatrix spread = best.covariance().scalarMultiply(WIDER * WIDER);
        RefinedSample sample = drawn(centre, spread, residuals, count, seed, 1);
        for (int round = 2; round <= MOST_ROUNDS && sample.weights.effectiveSamples() < ENOUGH * count; round++) {
            double[] mean = sample.mean();
            RefinedSample next =
                    drawn(mean, sample.covariance(mean, best.covariance()), residuals, count, seed + round, round);
            sample = next.weights.effectiveSamples() > sample.weights.effectiveSamples() ? next : sample;
        }
        return sample;
    }

    /** Values of a figure at all points. */
    public double[] values(java.util.function.ToDoubleFunction<double[]> figure) {
        return Arrays.stream(points).mapToDouble(figure).toArray();
    }

    private static RefinedSample drawn(
            double[] centre, RealMatrix spread, UnaryOperator<double[]> residuals, int count, long seed, int round) {
        SplittableRandom random = new SplittableRandom(seed * 0x9e3779b97f4a7c15L + round);
        int unknowns = centre.length;
        int fromPrior = (int) Math.max(2, Math.round(PRIOR_SHARE * count));
        RealMatrix root = new CholeskyDecomposition(spread, 1e-6, 1e-14).getL();
        RealMatrix inverse = new LUDecomposition(root).getSolver().getInverse();
        double logScale = IntStream.range(0, unknowns)
                .mapToDouble(i -> Math.log(root.getEntry(i, i)))
                .sum();
        List<double[]> points = new ArrayList<>(standard(unknowns, fromPrior, random));
        for (double[] z : standard(unknowns, count - fromPrior, random)) {
            double[] point = root.operate(z);
            Arrays.setAll(point, i -> point[i] + centre[i]);
            points.add(point);
        }
        double share = (double) fromPrior / count;
        double[] logWeights = points.parallelStream()
                .mapToDouble(point -> {
                    double prior = -half(point);
                    double[] off = new double[unknowns];
                    Arrays.setAll(off, i -> point[i] - centre[i]);
                    double about = -half(inverse.operate(off)) - logScale;
                    double most = Math.max(prior, about);
                    double density =
                            most + Math.log(share * Math.exp(prior - most) + (1 - share) * Math.exp(about - most));
                    return prior - half(residuals.apply(point)) - density;
                })
                .toArray();
        return new RefinedSample(points.toArray(double[][]::new), new ImportanceWeights(logWeights), round);
    }

    /** Standard normal points of a Latin hypercube. */
    public static List<double[]> standard(int unknowns, int count, SplittableRandom random) {
        double[][] columns = LatinHypercube.of(unknowns, count, random)
                .mapped(probability -> NORMAL.inverseCumulativeProbability(probability))
                .columns();
        return IntStream.range(0, count)
                .mapToObj(point -> IntStream.range(0, unknowns)
                        .mapToDouble(i -> columns[i][point])
                        .toArray())
                .toList();
    }

    private static double half(double[] vector) {
        double sum = 0;
        for (double x : vector) {
            sum += x * x;
        }
        return sum / 2;
    }

    private double[] mean() {
        double[] mean = new double[points[0].length];
        for (int i = 0; i < mean.length; i++) {
            int one = i;
            mean[i] = weights.mean(values(point -> point[one]));
        }
        return mean;
    }

    /** Weighted covariance, held from collapsing by a share of the one at the best point. */
    private RealMatrix covariance(double[] mean, RealMatrix least) {
        RealMatrix sum = MatrixUtils.createRealMatrix(mean.length, mean.length);
        for (int p = 0; p < points.length; p++) {
            double[] off = new double[mean.length];
            for (int i = 0; i < off.length; i++) {
                off[i] = points[p][i] - mean[i];
            }
            RealMatrix column = MatrixUtils.createColumnRealMatrix(off);
            sum = sum.add(column.multiply(column.transpose()).scalarMultiply(weights.of(p)));
        }
        return sum.scalarMultiply(WIDER * WIDER).add(least.scalarMultiply(0.05));
    }
}
