package hafthold.numeric;

import hafthold.source.PublishedModel;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;

/**
 * Re-pairs the columns of a sample so that their rank correlations come near a wanted matrix C, and chance correlations
 * vanish, without touching what is in a column.
 *
 * <pre>
 * T = corr(R) = Q Q',   C = P P',   S = P Q^-1,   R* = R S'
 * </pre>
 *
 * <p>R holds the normal (van der Waerden) scores of the columns as they are paired; each column is then put in the order
 * of its column of R*. Departure: the first columns may be held as they are, so that several samples can share them; what
 * is left of chance correlation among these then stays.
 */
@PublishedModel(
        source = "iman-conover-1982",
        locator = "section 2, with the correction by the sample's own correlation",
        validity = "more points than columns; rank correlations are met within 0.03 from 100 points on, 0.1 at 50")
public final class ImanConoverPairing {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private ImanConoverPairing() {}

    /**
     * The columns, paired anew.
     *
     * @param columns values by column and point, no two alike within a column
     * @param held how many of the first columns keep their order
     * @param correlation wanted rank correlations, symmetric and positive definite, one row a column
     * @return new columns with the same values
     */
    public static double[][] paired(double[][] columns, int held, RealMatrix correlation) {
        int points = columns[0].length;
        if (points <= columns.length) {
            throw new IllegalArgumentException(
                    "pairing " + columns.length + " columns needs more points than columns, got " + points);
        }
        RealMatrix scores = new Array2DRowRealMatrix(points, columns.length);
        for (int c = 0; c < columns.length; c++) {
            scores.setColumn(c, scores(columns[c]));
        }
        RealMatrix q = lower(new PearsonsCorrelation(scores).getCorrelationMatrix());
        RealMatrix s =
                lower(correlation).multiply(new LUDecomposition(q).getSolver().getInverse());
        RealMatrix wanted = scores.multiply(s.transpose());
        double[][] result = new double[columns.length][];
        for (int c = 0; c < columns.length; c++) {
            result[c] = c < held ? columns[c].clone() : inOrderOf(columns[c], wanted.getColumn(c));
        }
        return result;
    }

    private static RealMatrix lower(RealMatrix symmetric) {
        return new CholeskyDecomposition(symmetric).getL();
    }

    private static double[] scores(double[] column) {
        int[] order = order(column);
        double[] scores = new double[column.length];
        for (int rank = 0; rank < order.length; rank++) {
            scores[order[rank]] = NORMAL.inverseCumulativeProbability((rank + 1.0) / (order.length + 1));
        }
        return scores;
    }

    private static double[] inOrderOf(double[] values, double[] key) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int[] order = order(key);
        double[] result = new double[values.length];
        for (int rank = 0; rank < order.length; rank++) {
            result[order[rank]] = sorted[rank];
        }
        return result;
    }

    /** Indices of the points from the smallest to the largest. */
    private static int[] order(double[] values) {
        return IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
