package hafthold.air;

import hafthold.numeric.PeriodicFilter;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;

/** What rooms see of the outdoor air: temperature and vapour pressure, as they are and averaged over the last day. */
final class OutdoorDays {
    static final double DAY_SECONDS = 86_400;
    private static final double HOUR_SECONDS = 3600;

    private final AirSeries outdoor;
    private final double[] temperatureCelsius;
    private final double[] vapourPascals;
    private final double[] meanCelsius;
    private final double[] meanVapourPascals;

    OutdoorDays(AirSeries outdoor, SaturationPressure saturation) {
        this.outdoor = outdoor;
        int n = outdoor.size();
        temperatureCelsius = new double[n];
        vapourPascals = new double[n];
        for (int i = 0; i < n; i++) {
            temperatureCelsius[i] = outdoor.temperatureCelsius(i);
            vapourPascals[i] = outdoor.relativeHumidityFraction(i) * saturation.pascals(temperatureCelsius[i]);
        }
        meanCelsius = PeriodicFilter.trailingMean(temperatureCelsius, samples(DAY_SECONDS));
        meanVapourPascals = PeriodicFilter.trailingMean(vapourPascals, samples(DAY_SECONDS));
    }

    int size() {
        return temperatureCelsius.length;
    }

    double temperatureCelsius(int sample) {
        return temperatureCelsius[sample];
    }

    /** Mean temperature of the 24 hours that end here. */
    double meanCelsius(int sample) {
        return meanCelsius[sample];
    }

    /** Mean vapour pressure of the 24 hours that end here. */
    double meanVapourPascals(int sample) {
        return meanVapourPascals[sample];
    }

    /** Mean temperature over a longer time that ends at each sample. */
    double[] meanCelsiusOver(double seconds) {
        return PeriodicFilter.trailingMean(temperatureCelsius, samples(seconds));
    }

    /** Highest less lowest temperature of the calendar day that each sample lies in. */
    double[] rangeKelvin() {
        int day = samples(DAY_SECONDS);
        double[] range = new double[size()];
        for (int start = 0; start < size(); start += day) {
            int end = Math.min(size(), start + day);
            DoubleSummaryStatistics span =
                    Arrays.stream(temperatureCelsius, start, end).summaryStatistics();
            Arrays.fill(range, start, end, span.getMax() - span.getMin());
        }
        return range;
    }

    /** Hour of the day, 0 to below 24. */
    double clockHour(int sample) {
        return sample * outdoor.stepSeconds() / HOUR_SECONDS % CommonYear.HOURS_A_DAY;
    }

    /** Number of samples in a stretch of time, at least one. */
    int samples(double seconds) {
        return (int) Math.max(1, Math.round(seconds / outdoor.stepSeconds()));
    }
}
