package hafthold.report.chart;

import java.time.Month;
import java.util.List;
import java.util.stream.IntStream;

/** Days of a year of 365 and the values that are drawn at them. */
final class YearDays {
    /** Days of the year. */
    static final double DAYS = 365;

    /** Months of the year. */
    static final int MONTHS = 12;

    private YearDays() {}

    /** First day of a month counted from 0, in a year of 365 days. */
    static double monthStart(int month) {
        return month == MONTHS ? DAYS : Month.of(month + 1).firstDayOfYear(false) - 1;
    }

    static double valueAt(List<Double> daily, double day) {
        return daily.get((int) Math.min(daily.size() - 1, day / DAYS * daily.size()));
    }

    /** Height of a drawn line at a day. */
    static double between(double[] days, double[] values, double day) {
        int next = 0;
        while (next < days.length - 1 && days[next] < day) {
            next++;
        }
        if (next == 0 || days[next] < day) {
            return values[next];
        }
        double share = (day - days[next - 1]) / (days[next] - days[next - 1]);
        return values[next - 1] + share * (values[next] - values[next - 1]);
    }

    /** Means of so many days together; the last may hold fewer. */
    static double[] means(List<Double> daily, int together) {
        int count = (daily.size() + together - 1) / together;
        return IntStream.range(0, count)
                .mapToDouble(i -> daily.subList(i * together, Math.min(daily.size(), (i + 1) * together)).stream()
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElseThrow())
                .toArray();
    }

    static double[] days(int count, int daysInYear, int together) {
        return IntStream.range(0, count)
                .mapToDouble(i -> (i * together + Math.min(daysInYear, (i + 1) * together)) / 2.0 * DAYS / daysInYear)
                .map(day -> Math.min(day, DAYS))
                .toArray();
    }
}
