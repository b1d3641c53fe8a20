package hafthold.simulate;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Mean moisture content of a scale hour by hour, as a computed year that a doubt stretches and shifts.
 *
 * @param computedFraction mean moisture content of each hour, kg/kg; shared, never written to
 * @param factor multiplies it
 * @param shiftFraction added after that, kg/kg
 */
record MoistureCourse(double[] computedFraction, double factor, double shiftFraction) {
    private static final int HOURS_A_DAY = 24;

    /** Moisture content of an hour, kg/kg. */
    double fraction(int hour) {
        return factor * computedFraction[hour] + shiftFraction;
    }

    int hours() {
        return computedFraction.length;
    }

    /** Lowest of the year, kg/kg. */
    double least() {
        return IntStream.range(0, hours()).mapToDouble(this::fraction).min().orElseThrow();
    }

    /** Highest of the year, kg/kg. */
    double most() {
        return IntStream.range(0, hours()).mapToDouble(this::fraction).max().orElseThrow();
    }

    /** Mean of each whole day, kg/kg. */
    List<Double> dailyMeans() {
        return IntStream.range(0, hours() / HOURS_A_DAY)
                .mapToObj(day -> IntStream.range(day * HOURS_A_DAY, (day + 1) * HOURS_A_DAY)
                        .mapToDouble(this::fraction)
                        .average()
                        .orElseThrow())
                .toList();
    }
}
