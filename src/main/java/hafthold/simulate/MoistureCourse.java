package hafthold.simulate;

import java.util.Arrays;
import java.util.List;

/**
 * Moisture content of a scale hour by hour, or at some other samples: its mean and how lopsided it lies.
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
     * Moisture content at every sample of the half of the scale at the tang or of that at the air, kg/kg, a copy: what two
     * even halves must hold to have the scale's mean and first moment.
     */
    double[] halfFractions(boolean atTheAir) {
        double aside = (atTheAir ? 1 : -1) / 3.0;
        double[] half = new double[hourly.length];
        for (int i = 0; i < half.length; i++) {
            half[i] = hourly[i] + aside * moment[i];
        }
        return half;
    }

    int hours() {
        return hourly.length;
    }

    /** Lowest of the year, kg/kg. */
    double least() {
        return Swing.of(hourly).least();
    }

    /** Highest of the year, kg/kg. */
    double most() {
        return Swing.of(hourly).most();
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
        return Arrays.stream(YearSeries.dailyMean(hourly, samplesADay)).boxed().toList();
    }
}
