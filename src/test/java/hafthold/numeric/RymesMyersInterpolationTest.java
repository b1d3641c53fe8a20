package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RymesMyersInterpolationTest {
    private static final int[] MONTHS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final double INFINITY = Double.POSITIVE_INFINITY;

    private final RymesMyersInterpolation months = new RymesMyersInterpolation(MONTHS);

    /** Analytic: the print's own repetition, run until it stands still, is what the linear system is said to be. */
    @Test
    void thePrintsRepetitionTendsToTheSolvedCurve() {
        int[] lengths = {5, 4, 6, 5};
        double[] means = {3, -1, 10, 4};
        double[] points = new double[20];
        for (int round = 0; round < 3000; round++) {
            double[] smooth = new double[points.length];
            for (int i = 0; i < points.length; i++) {
                smooth[i] = (points[(i + 19) % 20] + points[i] + points[(i + 1) % 20]) / 3;
            }
            for (int k = 0, start = 0; k < means.length; start += lengths[k], k++) {
                double correction = means[k] - mean(smooth, start, lengths[k]);
                for (int i = start; i < start + lengths[k]; i++) {
                    points[i] = smooth[i] + correction;
                }
            }
        }
        assertArrayEquals(points, new RymesMyersInterpolation(lengths).points(means, -INFINITY, INFINITY), 1e-9);
    }

    /** Analytic: month means of a wave of one turn a year give the wave back; a quadratic spline errs by its third order. */
    @Test
    void aYearlyWaveIsFoundFromItsMonthMeans() {
        double[] wave = new double[365];
        for (int i = 0; i < wave.length; i++) {
            wave[i] = Math.cos(2 * Math.PI * (i - 20) / 365);
        }
        double[] means = new double[12];
        for (int k = 0, start = 0; k < 12; start += MONTHS[k], k++) {
            means[k] = mean(wave, start, MONTHS[k]);
        }
        assertArrayEquals(wave, months.points(means, -INFINITY, INFINITY), 0.01);
    }

    @Test
    void equalMeansGiveALevelLine() {
        double[] means = new double[12];
        Arrays.fill(means, 7);
        for (double point : months.points(means, 0, 7)) {
            assertEquals(7, point, 1e-12);
        }
    }

    @Test
    void boundsAreKeptAndMeansToo() {
        double[] means = {0.02, 0.0, 0.9, 1.0, 0.97, 0.3, 0.01, 0.0, 0.0, 0.5, 1.0, 0.6};
        double[] points = months.points(means, 0, 1);
        for (int k = 0, start = 0; k < 12; start += MONTHS[k], k++) {
            assertEquals(means[k], mean(points, start, MONTHS[k]), 1e-12);
        }
        for (double point : points) {
            assertTrue(point >= 0 && point <= 1, "out of bounds: " + point);
        }
    }

    @Test
    void aMeanOutsideTheBoundsIsRefused() {
        double[] means = new double[12];
        means[4] = 1.2;
        assertThrows(IllegalArgumentException.class, () -> months.points(means, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> months.points(new double[11], 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new RymesMyersInterpolation(3, 0, 4));
    }

    private static double mean(double[] points, int start, int length) {
        double sum = 0;
        for (int i = start; i < start + length; i++) {
            sum += points[i];
        }
        return sum / length;
    }
}
