package hafthold.simulate;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Moisture content of a scale hour by hour, its mean and how lopsided it lies.
 *
 * @param hourly mean moisture content of each hour, kg/kg; shared, never written to
 * @param moment first moment of each hour, kg/kg, see {@link hafthold.transport.MoistureHistory}; shared likewise
 */
record MoistureCourse(double[] hourly, double[] moment) {
    /** Moisture content of an hour, kg/kg. */
    double fraction(int hour) {
        return hourly[hour];
    }

    /**
     * Moisture content of the half of the scale at the tang or of that at the air, kg/kg: what two even halves must hold
     * to have the scale's mean and first moment.
     */
    double halfFraction(boolean atTheAir, int hour) {
        double aside = moment[hour] / 3;
        return fraction(hour) + (atTheAir ? aside : -aside);
    }

    int hours() {
        return hourly.length;
    }

    /** Lowest of the year, kg/kg. */
    double least() {
        return IntStream.range(0, hours()).mapToDouble(this::fraction).min().orElseThrow();
    }

    /** Highest of the year, kg/kg. */
    double most() {
        return IntStream.range(0, hours()).mapToDouble(this::fraction).max().orElseThrow();
    }

    /** Mean of each whole day of an hourly course, kg/kg. */
    List<Double> dailyMeans() {
        return dailyMeans(24);
    }

    /**
     * Mean of each whole day, kg/kg.
     *
     * @param samplesADay a divisor of 24
     */
    List<Double> dailyMeans(int samplesADay) {
        return IntStream.range(0, hours() / samplesADay)
                .mapToObj(day -> IntStream.range(day * samplesADay, (day + 1) * samplesADay)
                        .mapToDouble(this::fraction)
                        .average()
                        .orElseThrow())
                .toList();
    }
}
