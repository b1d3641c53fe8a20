package hafthold.air;

import java.util.ArrayList;
import java.util.List;

/**
 * Twelve months of a place's normal air, January first.
 *
 * @param meanCelsius mean temperature, degrees Celsius
 * @param meanMaximumCelsius mean of the daily maxima, degrees Celsius
 * @param meanMinimumCelsius mean of the daily minima, degrees Celsius
 * @param relativeHumidityFraction mean relative humidity over water, 0 to 1
 */
public record MonthlyNormals(
        List<Double> meanCelsius,
        List<Double> meanMaximumCelsius,
        List<Double> meanMinimumCelsius,
        List<Double> relativeHumidityFraction) {
    /** Lowest temperature accepted, degrees Celsius: colder than any monthly mean on record. */
    public static final double COLDEST_CELSIUS = -90;
    /** Highest temperature accepted, degrees Celsius. */
    public static final double WARMEST_CELSIUS = 60;

    /** Rejects anything but twelve months with minimum, mean and maximum in order and humidity from 0 to 1. */
    public MonthlyNormals {
        meanCelsius = twelve("mean temperature", meanCelsius);
        meanMaximumCelsius = twelve("mean daily maximum", meanMaximumCelsius);
        meanMinimumCelsius = twelve("mean daily minimum", meanMinimumCelsius);
        relativeHumidityFraction = twelve("relative humidity", relativeHumidityFraction);
        for (int i = 0; i < CommonYear.MONTHS; i++) {
            double low = meanMinimumCelsius.get(i);
            double mean = meanCelsius.get(i);
            double high = meanMaximumCelsius.get(i);
            if (!(low >= COLDEST_CELSIUS && low <= mean && mean <= high && high <= WARMEST_CELSIUS)) {
                throw new IllegalArgumentException("month " + (i + 1) + " needs -90 <= mean daily minimum <= mean <="
                        + " mean daily maximum <= 60 C, got " + low + ", " + mean + ", " + high);
            }
            double humidity = relativeHumidityFraction.get(i);
            if (!(humidity >= 0 && humidity <= 1)) {
                throw new IllegalArgumentException(
                        "month " + (i + 1) + " needs a relative humidity from 0 to 1, got " + humidity);
            }
        }
    }

    private static List<Double> twelve(String what, List<Double> months) {
        if (months.size() != CommonYear.MONTHS) {
            throw new IllegalArgumentException(what + " needs 12 months, got " + months.size());
        }
        return List.copyOf(months);
    }

    /**
     * The normals of one recorded year.
     *
     * @param year 8760 hourly samples from midnight before 1 January
     * @throws IllegalArgumentException when the series is no such year
     */
    public static MonthlyNormals of(AirSeries year) {
        if (year.size() != CommonYear.HOURS) {
            throw new IllegalArgumentException("a year has 8760 hourly samples, got " + year.size());
        }
        List<Double> mean = new ArrayList<>();
        List<Double> maximum = new ArrayList<>();
        List<Double> minimum = new ArrayList<>();
        List<Double> humidity = new ArrayList<>();
        for (int month = 1; month <= CommonYear.MONTHS; month++) {
            Sums sums = new Sums();
            int first = CommonYear.firstDay(month);
            int days = CommonYear.daysOfMonth(month);
            for (int day = first; day < first + days; day++) {
                sums.addDay(year, day * CommonYear.HOURS_A_DAY);
            }
            double monthMean = sums.temperature / (days * CommonYear.HOURS_A_DAY);
            mean.add(monthMean);
            // Rounding must not put the mean of a level day outside its extremes.
            maximum.add(Math.max(monthMean, sums.maximum / days));
            minimum.add(Math.min(monthMean, sums.minimum / days));
            humidity.add(Math.min(1, sums.humidity / (days * CommonYear.HOURS_A_DAY)));
        }
        return new MonthlyNormals(mean, maximum, minimum, humidity);
    }

    private static final class Sums {
        private double temperature;
        private double maximum;
        private double minimum;
        private double humidity;

        void addDay(AirSeries year, int start) {
            double high = Double.NEGATIVE_INFINITY;
            double low = Double.POSITIVE_INFINITY;
            for (int i = start; i < start + CommonYear.HOURS_A_DAY; i++) {
                double t = year.temperatureCelsius(i);
                temperature += t;
                humidity += year.relativeHumidityFraction(i);
                high = Math.max(high, t);
                low = Math.min(low, t);
            }
            maximum += high;
            minimum += low;
        }
    }
}
