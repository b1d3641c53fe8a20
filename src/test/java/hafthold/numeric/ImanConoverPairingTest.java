package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.junit.jupiter.api.Test;

/** Rank correlations come out as wanted, values stay what they were (Iman and Conover 1982). */
class ImanConoverPairingTest {
    private static final RealMatrix WANTED = new Array2DRowRealMatrix(new double[][] {
        {1, 0, 0, 0},
        {0, 1, 0.8, -0.5},
        {0, 0.8, 1, -0.3},
        {0, -0.5, -0.3, 1}
    });

    @Test
    void rankCorrelationsOfAHundredPointsComeWithinThreeHundredthsOfTheWantedOnes() {
        for (int points : new int[] {50, 100, 500}) {
            RealMatrix got = new SpearmansCorrelation(new Array2DRowRealMatrix(
                                    new ImanConoverPairing(RankedColumns.of(new double[0][]), points, WANTED)
                                            .paired(RankedColumns.of(columns(points)))
                                            .columns())
                            .transpose())
                    .getCorrelationMatrix();
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < i; j++) {
                    double tolerance = points < 100 ? 0.1 : 0.03;
                    assertEquals(WANTED.getEntry(i, j), got.getEntry(i, j), tolerance, points + ": " + i + ", " + j);
                }
            }
        }
    }

    @Test
    void columnsKeepTheirValuesAndPairWithThoseThatAreHeld() {
        double[][] before = columns(100);
        double[][] held = {before[0]};
        double[][] own = Arrays.copyOfRange(before, 1, 4);
        double[][] after = new ImanConoverPairing(RankedColumns.of(held), 100, WANTED)
                .paired(RankedColumns.of(own))
                .columns();
        for (int c = 0; c < 3; c++) {
            double[] one = own[c].clone();
            double[] other = after[c].clone();
            Arrays.sort(one);
            Arrays.sort(other);
            assertArrayEquals(one, other, 0);
            assertEquals(
                    WANTED.getEntry(0, c + 1),
                    new SpearmansCorrelation().correlation(before[0], after[c]),
                    0.03,
                    "" + c);
        }
    }

    @Test
    void tooFewPointsAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new ImanConoverPairing(
                        RankedColumns.of(new double[0][]), 4, MatrixUtils.createRealIdentityMatrix(4)));
    }

    private static double[][] columns(int points) {
        return LatinHypercube.of(4, points, new SplittableRandom(7)).columns();
    }
}
