package hafthold.numeric;

import java.util.Arrays;

/** Filters for a series that repeats for ever: its last sample is followed by its first. */
public final class PeriodicFilter {
    private PeriodicFilter() {}

    /**
     * Mean of each sample and those just before it, in one pass.
     *
     * @param series the series
     * @param window number of samples averaged, 1 or more; at most the whole series is used
     * @return one mean a sample
     */
    public static double[] trailingMean(double[] series, int window) {
        int n = series.length;
        int width = Math.min(window, n);
        if (width < 1) {
            throw new IllegalArgumentException("needs a window and a series of one sample or more");
        }
        double[] mean = new double[n];
        double sum = 0;
        for (int i = n - width; i < n; i++) {
            sum += series[i];
        }
        for (int i = 0; i < n; i++) {
            sum += series[i] - series[(i - width + n) % n];
            mean[i] = sum / width;
        }
        return mean;
    }

    /**
     * Follows the series with a lag: y_i = r_i y_(i-1) + (1 - r_i) x_i, the response of a first-order buffer whose pace may
     * change from sample to sample.
     *
     * @param series the series
     * @param kept part r_i of the old state that is left after each sample, 0 to below 1
     * @return the periodic state, one value a sample, within the range of the series
     */
    public static double[] firstOrderLag(double[] series, double[] kept) {
        int n = series.length;
        double sum = 0;
        double left = 1;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            least = Math.min(least, series[i]);
            most = Math.max(most, series[i]);
            sum = kept[i] * sum + (1 - kept[i]) * series[i];
            left *= kept[i];
        }
        // One turn from rest adds sum and leaves this part of the start, so the periodic start is a geometric series.
        double state = sum / (1 - left);
        double[] lagged = new double[n];
        for (int i = 0; i < n; i++) {
            state = kept[i] * state + (1 - kept[i]) * series[i];
            // Rounding must not carry a humidity above saturation.
            lagged[i] = Math.min(most, Math.max(least, state));
        }
        return lagged;
    }

    /**
     * Follows the series with a lag of constant pace.
     *
     * @param series the series
     * @param halfTimeSamples samples after which half of a step is made up, positive
     * @return the periodic state, one value a sample, within the range of the series
     */
    public static double[] firstOrderLag(double[] series, double halfTimeSamples) {
        if (!(halfTimeSamples > 0)) {
            throw new IllegalArgumentException("the half time must be positive, got " + halfTimeSamples);
        }
        double[] kept = new double[series.length];
        Arrays.fill(kept, Math.pow(0.5, 1 / halfTimeSamples));
        return firstOrderLag(series, kept);
    }
}
