package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class PeriodicFilterTest {
    @Test
    void trailingMeanReachesBackOverTheSeam() {
        double[] series = {1, 2, 3, 4, 10};
        assertArrayEquals(
                new double[] {15.0 / 3, 13.0 / 3, 2, 3, 17.0 / 3}, PeriodicFilter.trailingMean(series, 3), 1e-12);
        assertArrayEquals(series, PeriodicFilter.trailingMean(series, 1), 1e-12);
        assertArrayEquals(new double[] {4, 4, 4, 4, 4}, PeriodicFilter.trailingMean(series, 99), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> PeriodicFilter.trailingMean(series, 0));
    }

    /** Analytic: a wave of angular step w leaves a first-order lag with gain (1-r)/sqrt(1 - 2 r cos w + r^2). */
    @Test
    void aWaveIsDampedAsTheFirstOrderResponseSays() {
        int n = 240;
        double step = 2 * Math.PI / 24;
        double[] wave = new double[n];
        for (int i = 0; i < n; i++) {
            wave[i] = Math.cos(step * i);
        }
        double kept = Math.pow(0.5, 1 / 12.0);
        double gain = (1 - kept) / Math.sqrt(1 - 2 * kept * Math.cos(step) + kept * kept);
        double square = 0;
        for (double y : PeriodicFilter.firstOrderLag(wave, 12)) {
            square += y * y;
        }
        assertEquals(gain, Math.sqrt(2 * square / n), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> PeriodicFilter.firstOrderLag(wave, 0));
    }

    @Test
    void aLagNeverLeavesTheRangeOfItsSeries() {
        double[] saturated = new double[8760];
        Arrays.fill(saturated, 1);
        for (double halfTime : new double[] {0.3, 7, 24, 240, 8000}) {
            for (double y : PeriodicFilter.firstOrderLag(saturated, halfTime)) {
                assertEquals(1, y, 0);
            }
        }
    }

    /** Analytic: with a pace that changes, y = r y + (1 - r) x worked out by hand for two samples. */
    @Test
    void aChangingPaceIsFollowedRoundTheRing() {
        double[] lagged = PeriodicFilter.firstOrderLag(new double[] {1, 0}, new double[] {0.5, 0.8});
        // y0 = 0.5 y1 + 0.5, y1 = 0.8 y0: y0 = 5/6, y1 = 2/3.
        assertArrayEquals(new double[] {5.0 / 6, 2.0 / 3}, lagged, 1e-12);
    }
}
