package hafthold.decide;

import hafthold.numeric.NormalMode;
import hafthold.numeric.RefinedSample;
import hafthold.numeric.SampleQuantile;
import hafthold.quantity.Band;
import hafthold.simulate.CouponModel;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What is known of the figures behind some coupons before and after measuring: draws from both, and the best point with the
 * normal distribution about it.
 */
final class CouponPosterior {
    static final double LOW = 0.1;
    static final double HIGH = 0.9;
    static final double ROW_LOW = 0.05;
    static final double ROW_HIGH = 0.95;
    private static final int SCOUTS = 300;
    private static final double STEP = 1e-3;

    /** A figure counts as told by the coupons when they alone narrow it to that share of its range (ours). */
    private static final double TOLD = 0.8;

    private final CouponModel model;
    private final List<double[]> before;
    private final NormalMode best;
    private final RefinedSample after;
    private final RealMatrix alone;

    /**
     * Weighs.
     *
     * @param samples draws before and after, 30 or more
     */
    CouponPosterior(CouponModel model, int samples, long seed) {
        this.model = model;
        UnaryOperator<double[]> residuals = model.residuals();
        before = RefinedSample.standard(model.unknowns(), samples, new SplittableRandom(seed));
        double[] start = RefinedSample.standard(model.unknowns(), SCOUTS, new SplittableRandom(~seed)).stream()
                .min(Comparator.comparingDouble(point -> square(point) + square(residuals.apply(point))))
                .orElseThrow();
        best = NormalMode.of(start, residuals);
        after = RefinedSample.of(best, residuals, samples, seed);
        alone = NormalMode.covariance(
                model.numbers(best.at()), model.eachOnItsOwn().residuals());
    }

    /** The most plausible point. */
    double[] best() {
        return best.at().clone();
    }

    /** How many equally weighted draws would say as much. */
    double effectiveSamples() {
        return after.weights().effectiveSamples();
    }

    /** How often draws were made anew. */
    int rounds() {
        return after.rounds();
    }

    /** Low, middle and high of a figure before measuring. */
    Band before(ToDoubleFunction<double[]> figure, double low, double high) {
        SampleQuantile quantile =
                new SampleQuantile(before.stream().mapToDouble(figure).toArray());
        return new Band(quantile.at(low), quantile.at(0.5), quantile.at(high));
    }

    /** Likewise after measuring. */
    Band after(ToDoubleFunction<double[]> figure, double low, double high) {
        double[] values = after.values(figure);
        return new Band(
                after.weights().quantile(values, low),
                after.weights().quantile(values, 0.5),
                after.weights().quantile(values, high));
    }

    /** Share of what is plausible after measuring that lies below a value of a figure, 0 to 1. */
    double below(ToDoubleFunction<double[]> figure, double value) {
        double[] values = after.values(figure);
        return IntStream.range(0, values.length)
                .filter(i -> values[i] < value)
                .mapToDouble(after.weights()::of)
                .sum();
    }

    /** Whether the coupons themselves, without what usually goes with it, narrow a figure. */
    boolean tell(ToDoubleBiFunction<CouponModel, double[]> figure) {
        CouponModel each = model.eachOnItsOwn();
        RealVector slope = slope(point -> figure.applyAsDouble(each, point), model.numbers(best.at()));
        double prior = slope.getNorm();
        return prior > 0 && Math.sqrt(slope.dotProduct(alone.operate(slope))) < TOLD * prior;
    }

    /** Standard deviation of the logarithm of a figure about a point, with a covariance of the independent numbers. */
    static double spread(ToDoubleFunction<double[]> figure, double[] at, RealMatrix covariance) {
        RealVector slope = slope(point -> Math.log(figure.applyAsDouble(point)), at);
        return Math.sqrt(slope.dotProduct(covariance.operate(slope)));
    }

    RealMatrix covariance() {
        return best.covariance();
    }

    /** What is left unexplained at the best point, over its standard error. */
    double[] left() {
        return best.residuals().clone();
    }

    /**
     * Chance that readings and figures of the tables lie so far apart, if both are right within their ranges.
     *
     * @param free how many of the first numbers may lie anywhere: the figures of a stock that has a name of its own
     */
    double fits(int free) {
        int freedom = best.residuals().length - model.scales();
        double[] at = best.at();
        double held = square(Arrays.copyOfRange(at, Math.min(free, at.length), at.length));
        return freedom < 1
                ? 1
                : 1 - new ChiSquaredDistribution(null, freedom).cumulativeProbability(square(best.residuals()) + held);
    }

    private static RealVector slope(ToDoubleFunction<double[]> figure, double[] at) {
        double[] slope = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            double[] up = at.clone();
            double[] down = at.clone();
            up[i] += STEP;
            down[i] -= STEP;
            slope[i] = (figure.applyAsDouble(up) - figure.applyAsDouble(down)) / (2 * STEP);
        }
        return new ArrayRealVector(slope);
    }

    private static double square(double[] vector) {
        return Arrays.stream(vector).map(x -> x * x).sum();
    }
}
