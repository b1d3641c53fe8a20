package hafthold.numeric;

import hafthold.source.PublishedModel;
import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

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

    private final double[] score;
    private final double[][] heldScores;
    private final double[][] wanted;

    /**
     * A pairing of columns with some that are held as they are.
     *
     * @param held columns that keep their order, no two values alike within one; may be none
     * @param points how many points a column has, more than there are columns
     * @param correlation wanted rank correlations of the held and then of all other columns, symmetric and positive
     *     definite, one row a column
     */
    public ImanConoverPairing(RankedColumns held, int points, RealMatrix correlation) {
        if (points <= correlation.getRowDimension()) {
            throw new IllegalArgumentException("pairing " + correlation.getRowDimension()
                    + " columns needs more points than columns, got " + points);
        }
        this.wanted = lower(correlation);
        this.score = new double[points];
        Arrays.setAll(score, rank -> NORMAL.inverseCumulativeProbability((rank + 1.0) / (points + 1)));
        this.heldScores = scores(held);
    }

    private double[][] scores(RankedColumns columns) {
        return Arrays.stream(columns.rank())
                .map(rank -> RankedColumns.dealt(score, rank))
                .toArray(double[][]::new);
    }

    /**
     * The columns that are not held, paired anew.
     *
     * @param columns values by column and point, no two alike within a column
     * @return new columns with the same values
     */
    public RankedColumns paired(RankedColumns columns) {
        int held = heldScores.length;
        double[][] scores = Arrays.copyOf(heldScores, held + columns.size());
        System.arraycopy(scores(columns), 0, scores, held, columns.size());
        double[][] q = lower(new Array2DRowRealMatrix(correlation(scores), false));
        int[][] rank = new int[columns.size()][];
        for (int c = 0; c < rank.length; c++) {
            rank[c] = Ranks.of(sum(share(held + c, q), scores));
        }
        return new RankedColumns(columns.ascending(), rank);
    }

    /** Row of S = P Q^-1, from S Q = P. */
    private double[] share(int row, double[][] q) {
        double[] share = wanted[row].clone();
        for (int j = share.length - 1; j >= 0; j--) {
            share[j] /= q[j][j];
            for (int i = 0; i < j; i++) {
                share[i] -= share[j] * q[j][i];
            }
        }
        return share;
    }

    private static double[] sum(double[] share, double[][] scores) {
        double[] sum = new double[scores[0].length];
        for (int c = 0; c < share.length; c++) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += share[c] * scores[c][i];
            }
        }
        return sum;
    }

    /** Every column holds the same scores, whose mean is zero. */
    private static double[][] correlation(double[][] scores) {
        double square = dot(scores[0], scores[0]);
        double[][] correlation = new double[scores.length][scores.length];
        for (int c = 0; c < scores.length; c++) {
            correlation[c][c] = 1;
            for (int d = 0; d < c; d++) {
                correlation[c][d] = dot(scores[c], scores[d]) / square;
                correlation[d][c] = correlation[c][d];
            }
        }
        return correlation;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    private static double[][] lower(RealMatrix symmetric) {
        return new CholeskyDecomposition(symmetric).getL().getData();
    }
}
