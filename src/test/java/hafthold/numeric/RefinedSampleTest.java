package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.UnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/**
 * Against a closed form: standard normal unknowns measured along straight lines with normal errors are normal afterwards,
 * precision I + A'A, mean (I + A'A)^-1 A'y (linear regression with a conjugate normal prior, such as Gelman and others,
 * Bayesian Data Analysis, 3rd edition, section 14.8; written down from memory and derived again by completing the square).
 * Commons Math inverts the matrix.
 */
class RefinedSampleTest {
    private static final int SAMPLES = 4000;
    private static final RealMatrix LINES =
            new Array2DRowRealMatrix(new double[][] {{9, 1, 0, 0}, {2, -14, 3, 0}, {0, 5, 5, 0.2}});
    private static final double[] READ = {12, 20, -4};

    private static double[] straight(double[] point) {
        double[] told = LINES.operate(point);
        return new double[] {READ[0] - told[0], READ[1] - told[1], READ[2] - told[2]};
    }

    private static RealMatrix exactCovariance() {
        return new LUDecomposition(LINES.transpose().multiply(LINES).add(MatrixUtils.createRealIdentityMatrix(4)))
                .getSolver()
                .getInverse();
    }

    private static double[] exactMean() {
        return exactCovariance().multiply(LINES.transpose()).operate(READ);
    }

    @Test
    void theBestPointOfStraightLinesIsTheKnownMean() {
        NormalMode mode = NormalMode.of(new double[] {3, -3, 1, 0}, RefinedSampleTest::straight);
        assertArrayEquals(exactMean(), mode.at(), 1e-5);
        RealMatrix exact = exactCovariance();
        for (int i = 0; i < 4; i++) {
            assertArrayEquals(exact.getRow(i), mode.covariance().getRow(i), 1e-6);
        }
    }

    @Test
    void weightedDrawsHaveTheKnownMeanSpreadAndTails() {
        RefinedSample sample = RefinedSample.of(
                NormalMode.of(new double[4], RefinedSampleTest::straight), RefinedSampleTest::straight, SAMPLES, 3);
        assertTrue(sample.weights().effectiveSamples() > SAMPLES / 3.0);
        for (int i = 0; i < 4; i++) {
            int one = i;
            double exact = exactMean()[i];
            double spread = Math.sqrt(exactCovariance().getEntry(i, i));
            double standardError = spread / Math.sqrt(sample.weights().effectiveSamples());
            double[] values = sample.values(point -> point[one]);
            assertEquals(exact, sample.weights().mean(values), 4 * standardError);
            assertEquals(exact + 1.2816 * spread, sample.weights().quantile(values, 0.9), 7 * standardError);
            assertEquals(exact - 1.6449 * spread, sample.weights().quantile(values, 0.05), 9 * standardError);
        }
    }

    /** A ridge bent so strongly that the first normal misses it; the mean by quadrature along it. */
    @Test
    void aBentRidgeIsFollowedByDrawingAnew() {
        UnaryOperator<double[]> bent =
                point -> new double[] {(point[1] - 0.8 * point[0] * point[0]) / 0.02, (point[0] - 0.3) / 0.9};
        RefinedSample sample = RefinedSample.of(NormalMode.of(new double[] {0.3, 0}, bent), bent, SAMPLES, 5);
        // What x0 is, by quadrature over it: x1 follows it at once, its prior and the bend's width taken along.
        double sum = 0;
        double mean = 0;
        for (double x = -6; x <= 6; x += 1e-3) {
            double weight = Math.exp(
                    -x * x / 2 - Math.pow((x - 0.3) / 0.9, 2) / 2 - Math.pow(0.8 * x * x, 2) / (2 * (1 + 0.02 * 0.02)));
            sum += weight;
            mean += weight * x;
        }
        double[] values = sample.values(point -> point[0]);
        double effective = sample.weights().effectiveSamples();
        assertTrue(effective > 100, "effective: " + effective);
        assertEquals(mean / sum, sample.weights().mean(values), 4 * 0.6 / Math.sqrt(effective));
    }

    @Test
    void theSameSeedGivesTheSamePoints() {
        NormalMode mode = NormalMode.of(new double[4], RefinedSampleTest::straight);
        RefinedSample one = RefinedSample.of(mode, RefinedSampleTest::straight, 500, 7);
        RefinedSample other = RefinedSample.of(mode, RefinedSampleTest::straight, 500, 7);
        assertArrayEquals(one.points(), other.points());
        assertEquals(one.weights().effectiveSamples(), other.weights().effectiveSamples(), 0);
    }
}
