package hafthold.report;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;

/**
 * Highest values of the twelve months of a year of daily values.
 *
 * @param values twelve peaks from January on
 */
record MonthlyPeaks(List<Double> values) {
    private static final int DAYS = 365;

    /** Peaks of daily values that start on 1 January; a year of other than 365 values is stretched to fit. */
    static MonthlyPeaks of(List<Double> daily) {
        List<Double> peaks = new ArrayList<>();
        for (Month month : Month.values()) {
            int first = month.firstDayOfYear(false) - 1;
            int end = first + month.length(false);
            peaks.add(daily.subList(first * daily.size() / DAYS, end * daily.size() / DAYS).stream()
                    .mapToDouble(Double::doubleValue)
                    .max()
                    .orElseThrow());
        }
        return new MonthlyPeaks(List.copyOf(peaks));
    }

    double of(int month) {
        return values.get(month - 1);
    }
}
