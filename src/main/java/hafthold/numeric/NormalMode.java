package hafthold.numeric;

import hafthold.source.PublishedModel;
import java.util.Arrays;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * The most plausible point after measuring, and the normal distribution that fits there, of unknowns that were standard
 * normal and independent before: minimum of |w|² + |r(w)|² with r what is left unexplained, each over its standard error;
 * covariance (I + J'J)^-1.
 *
 * @param at the point
 * @param covariance of the unknowns about it
 * @param residuals what is left there, over its standard error
 */
@PublishedModel(
        source = "tarantola-2005",
        locator = "Gauss-Newton and the posterior covariance of least squares with a prior",
        validity = "exact where r is straight; a proposal to be weighted elsewhere")
public record NormalMode(double[] at, RealMatrix covariance, double[] residuals) {
    private static final double STEP = 1e-4;
    private static final int MOST_ROUNDS = 200;

    /**
     * Finds it.
     *
     * @param start where to begin
     * @param residuals what is left unexplained at a point, over its standard error; one length for all points
     */
    public static NormalMode of(double[] start, UnaryOperator<double[]> residuals) {
        int unknowns = start.length;
        int data = residuals.apply(start).length;
        LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .target(new double[data + unknowns])
                        .model(point -> stacked(point, residuals))
                        .checkerPair(new org.apache.commons.math3.optim.SimpleVectorValueChecker(1e-9, 1e-9))
                        .maxEvaluations(MOST_ROUNDS)
                        .maxIterations(MOST_ROUNDS)
                        .build());
        double[] at = optimum.getPoint().toArray();
        return new NormalMode(at, covariance(at, residuals), residuals.apply(at));
    }

    /** Covariance (I + J'J)^-1 about a point. */
    public static RealMatrix covariance(double[] at, UnaryOperator<double[]> residuals) {
        RealMatrix jacobian = jacobian(at, residuals);
        RealMatrix precision =
                jacobian.transpose().multiply(jacobian).add(MatrixUtils.createRealIdentityMatrix(at.length));
        return new CholeskyDecomposition(precision, 1e-9, 1e-12).getSolver().getInverse();
    }

    private static Pair<RealVector, RealMatrix> stacked(RealVector point, UnaryOperator<double[]> residuals) {
        double[] at = point.toArray();
        double[] left = residuals.apply(at);
        double[] value = Arrays.copyOf(left, left.length + at.length);
        System.arraycopy(at, 0, value, left.length, at.length);
        RealMatrix slopes = new Array2DRowRealMatrix(value.length, at.length);
        slopes.setSubMatrix(jacobian(at, residuals).getData(), 0, 0);
        for (int i = 0; i < at.length; i++) {
            slopes.setEntry(left.length + i, i, 1);
        }
        return new Pair<>(new ArrayRealVector(value), slopes);
    }

    private static RealMatrix jacobian(double[] at, UnaryOperator<double[]> residuals) {
        double[][] columns = new double[at.length][];
        for (int i = 0; i < at.length; i++) {
            double[] up = at.clone();
            double[] down = at.clone();
            up[i] += STEP;
            down[i] -= STEP;
            double[] above = residuals.apply(up);
            double[] below = residuals.apply(down);
            columns[i] = new double[above.length];
            for (int k = 0; k < above.length; k++) {
                columns[i][k] = (above[k] - below[k]) / (2 * STEP);
            }
        }
        return new Array2DRowRealMatrix(columns, false).transpose();
    }
}
