package hafthold.numeric;

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
     * Follows the series with a lag: y_i = y_(i-1) + (1 - r)(x_i - y_(i-1)), the response of a first-order buffer to steps.
     *
     * @param series the series
     * @param halfTimeSamples samples after which half of a step is made up, positive
     * @return the periodic state, one value a sample, within the range of the series
     */
    public static double[] firstOrderLag(double[] series, double halfTimeSamples) {
        if (!(halfTimeSamples > 0)) {
            throw new IllegalArgumentException("the half time must be positive, got " + halfTimeSamples);
        }
        int n = series.length;
        double kept = Math.pow(0.5, 1 / halfTimeSamples);
        double sum = 0;
        for (double x : series) {
            sum = kept * sum + (1 - kept) * x;
        }
        // One turn from rest adds sum and keeps kept^n of the start, so the periodic start is their geometric series.
        double state = sum / (1 - Math.pow(kept, n));
        double[] lagged = new double[n];
        for (int i = 0; i < n; i++) {
            state = kept * state + (1 - kept) * series[i];
            lagged[i] = state;
        }
        return lagged;
    }
}
