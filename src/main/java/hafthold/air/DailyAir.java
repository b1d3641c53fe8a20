package hafthold.air;

import hafthold.numeric.RymesMyersInterpolation;
import java.util.List;

/** A year of 365 days, closed: mean temperature, daily range and mean relative humidity of each day; immutable. */
public final class DailyAir {
    private static final RymesMyersInterpolation MONTHS = new RymesMyersInterpolation(CommonYear.monthLengths());

    private final double[] meanCelsius;
    private final double[] rangeKelvin;
    private final double[] relativeHumidityFraction;

    /**
     * Copies three columns of 365 days.
     *
     * @param meanCelsius mean temperature, degrees Celsius
     * @param rangeKelvin maximum less minimum temperature, kelvin, zero or more
     * @param relativeHumidityFraction mean relative humidity, 0 to 1
     */
    public DailyAir(double[] meanCelsius, double[] rangeKelvin, double[] relativeHumidityFraction) {
        if (meanCelsius.length != CommonYear.DAYS
                || rangeKelvin.length != CommonYear.DAYS
                || relativeHumidityFraction.length != CommonYear.DAYS) {
            throw new IllegalArgumentException("a year of days has 365 of them");
        }
        for (int day = 0; day < CommonYear.DAYS; day++) {
            double humidity = relativeHumidityFraction[day];
            if (!Double.isFinite(meanCelsius[day]) || !(rangeKelvin[day] >= 0) || !(humidity >= 0 && humidity <= 1)) {
                throw new IllegalArgumentException("day " + day + " is no air: " + meanCelsius[day] + " C, range "
                        + rangeKelvin[day] + " K, " + 100 * humidity + " % relative humidity");
            }
        }
        this.meanCelsius = meanCelsius.clone();
        this.rangeKelvin = rangeKelvin.clone();
        this.relativeHumidityFraction = relativeHumidityFraction.clone();
    }

    /** The days that run smoothly through monthly normals and keep each month's means to rounding. */
    public static DailyAir of(MonthlyNormals normals) {
        double[] range = new double[CommonYear.MONTHS];
        for (int i = 0; i < range.length; i++) {
            range[i] = normals.meanMaximumCelsius().get(i)
                    - normals.meanMinimumCelsius().get(i);
        }
        return new DailyAir(
                MONTHS.points(array(normals.meanCelsius()), Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
                MONTHS.points(range, 0, Double.POSITIVE_INFINITY),
                MONTHS.points(array(normals.relativeHumidityFraction()), 0, 1));
    }

    private static double[] array(List<Double> months) {
        double[] array = new double[months.size()];
        for (int i = 0; i < array.length; i++) {
            array[i] = months.get(i);
        }
        return array;
    }

    /** Mean temperature of a day, degrees Celsius; days count from 0. */
    public double meanCelsius(int day) {
        return meanCelsius[day];
    }

    /** Maximum less minimum temperature of a day, kelvin. */
    public double rangeKelvin(int day) {
        return rangeKelvin[day];
    }

    /** Mean relative humidity of a day, 0 to 1. */
    public double relativeHumidityFraction(int day) {
        return relativeHumidityFraction[day];
    }
}
