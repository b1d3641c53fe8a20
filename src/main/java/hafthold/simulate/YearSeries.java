package hafthold.simulate;

import java.util.Arrays;

/** Arithmetic of hourly series: plain arrays, one number an hour of the year, never written to. */
final class YearSeries {
    private static final int HOURS_A_DAY = 24;

    private YearSeries() {}

    static double[] difference(double[] of, double[] less) {
        double[] result = new double[of.length];
        Arrays.setAll(result, hour -> of[hour] - less[hour]);
        return result;
    }

    static double[] scaled(double[] values, double factor) {
        return Arrays.stream(values).map(value -> factor * value).toArray();
    }

    /** Mean of each day. */
    static double[] dailyMean(double[] hours) {
        double[] days = new double[days(hours)];
        for (int hour = 0; hour < hours.length; hour++) {
            days[hour / HOURS_A_DAY] += hours[hour] / HOURS_A_DAY;
        }
        return days;
    }

    /**
     * Mean of each whole day of a series that starts at midnight; what is left over at the end is dropped.
     *
     * @param samplesADay a divisor of 24
     */
    static double[] dailyMean(double[] series, int samplesADay) {
        double[] means = new double[series.length / samplesADay];
        for (int day = 0; day < means.length; day++) {
            double sum = 0;
            for (int i = day * samplesADay; i < (day + 1) * samplesADay; i++) {
                sum += series[i];
            }
            means[day] = sum / samplesADay;
        }
        return means;
    }

    /** Largest of each day, not negative. */
    static double[] dailyMost(double[] hours) {
        double[] days = new double[days(hours)];
        for (int hour = 0; hour < hours.length; hour++) {
            days[hour / HOURS_A_DAY] = Math.max(days[hour / HOURS_A_DAY], hours[hour]);
        }
        return days;
    }

    private static int days(double[] hours) {
        return (hours.length + HOURS_A_DAY - 1) / HOURS_A_DAY;
    }
}
