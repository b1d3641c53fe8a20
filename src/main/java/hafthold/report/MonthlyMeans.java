package hafthold.report;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;

/**
 * Means of the twelve months of a year of daily values.
 *
 * @param values twelve means from January on
 */
record MonthlyMeans(List<Double> values) {
    private static final int DAYS = 365;

    /** Means of daily values that start on 1 January; a year of other than 365 values is stretched to fit. */
    static MonthlyMeans of(List<Double> daily) {
        List<Double> means = new ArrayList<>();
        for (Month month : Month.values()) {
            int first = month.firstDayOfYear(false) - 1;
            int end = first + month.length(false);
            means.add(daily.subList(first * daily.size() / DAYS, end * daily.size() / DAYS).stream()
                    .mapToDouble(Double::doubleValue)
                    .average()
                    .orElseThrow());
        }
        return new MonthlyMeans(List.copyOf(means));
    }

    /** Month 1 to 12 with the lowest mean. */
    int lowestMonth() {
        int lowest = 0;
        for (int i = 1; i < values.size(); i++) {
            if (values.get(i) < values.get(lowest)) {
                lowest = i;
            }
        }
        return lowest + 1;
    }

    /** Month 1 to 12 with the highest mean. */
    int highestMonth() {
        return new MonthlyMeans(values.stream().map(value -> -value).toList()).lowestMonth();
    }

    double of(int month) {
        return values.get(month - 1);
    }
}
