package hafthold.air;

import hafthold.source.PublishedModel;

/**
 * The outdoor year that stands for a place's normals: 8760 hourly samples, closed.
 *
 * <p>Sample i holds at hour i after midnight before 1 January. Every day has its mean temperature from
 * {@link DailyAir}, the course of {@link ErbsKleinBeckmanDayShape}, and one vapour pressure e, such that the mean of
 * min(1, e/es(T)) over its 24 samples is the day's mean relative humidity. Means are means of samples. Steps at midnight
 * are those between neighbouring days, some tenths of a kelvin.
 *
 * <p>Constant e is what makes wood right: humidity swings against temperature, and because its sorption curve is hollow
 * upwards the mean of the hourly moisture is higher than the moisture of the mean.
 */
@PublishedModel(
        source = "reference-year-rule",
        locator = "constant vapour pressure through the day, fitted to the mean humidity",
        validity = "outdoor air at any place with monthly normals")
public final class ReferenceYear {
    private static final int HOURS = CommonYear.HOURS_A_DAY;
    private static final double STEP_SECONDS = 3600;
    private static final SaturationPressure SATURATION = new HylandWexlerSaturationPressure();
    private static final double[] SHAPE = new double[HOURS];
    /** Hours of the day from coldest to warmest: the same on every day, so clipping needs no sorting. */
    private static final int[] COLDEST_FIRST = new int[HOURS];

    // Plain loops: streams would cost tens of milliseconds the first time, the year itself costs a few.
    static {
        for (int hour = 0; hour < HOURS; hour++) {
            SHAPE[hour] = ErbsKleinBeckmanDayShape.departure(hour);
            int rank = hour;
            for (; rank > 0 && SHAPE[COLDEST_FIRST[rank - 1]] > SHAPE[hour]; rank--) {
                COLDEST_FIRST[rank] = COLDEST_FIRST[rank - 1];
            }
            COLDEST_FIRST[rank] = hour;
        }
    }

    private ReferenceYear() {}

    /** The year of a place's normals. */
    public static AirSeries of(MonthlyNormals normals) {
        return of(DailyAir.of(normals));
    }

    /** The hourly year of given days. */
    public static AirSeries of(DailyAir days) {
        double[] temperature = new double[CommonYear.HOURS];
        double[] humidity = new double[CommonYear.HOURS];
        double[] inverse = new double[HOURS];
        for (int day = 0; day < CommonYear.DAYS; day++) {
            int start = day * HOURS;
            for (int hour = 0; hour < HOURS; hour++) {
                double t = days.meanCelsius(day) + days.rangeKelvin(day) * SHAPE[hour];
                temperature[start + hour] = t;
                inverse[hour] = 1 / SATURATION.pascals(t);
            }
            double e = vapourPressure(inverse, days.relativeHumidityFraction(day));
            for (int hour = 0; hour < HOURS; hour++) {
                humidity[start + hour] = Math.min(1, e * inverse[hour]);
            }
        }
        return new AirSeries(STEP_SECONDS, temperature, humidity);
    }

    /**
     * The vapour pressure whose mean of min(1, e/es) over a day is the given humidity, exactly: with the k coldest hours
     * saturated, k + e times the sum of 1/es over the rest = 24 RH; k is the first that saturates no warmer hour.
     */
    private static double vapourPressure(double[] inverse, double relativeHumidityFraction) {
        double rest = 0;
        for (double hour : inverse) {
            rest += hour;
        }
        double e = HOURS * relativeHumidityFraction / rest;
        for (int k = 0; k < HOURS && e * inverse[COLDEST_FIRST[k]] > 1; k++) {
            double coldest = inverse[COLDEST_FIRST[k]];
            rest -= coldest;
            double left = HOURS * relativeHumidityFraction - (k + 1);
            if (k + 1 == HOURS || left <= 0) {
                return 1 / coldest;
            }
            e = left / rest;
        }
        return e;
    }
}
