package hafthold.air;

import java.util.function.DoublePredicate;

/**
 * Air with the samples left out that lie on straight lines between others: a home that buffers the day needs no step an
 * hour.
 */
public final class StraightAir {
    private static final int[] STRIDES = {120, 60, 40, 24, 20, 12, 10, 8, 6, 5, 4, 3, 2};
    /** A kelvin sways the flux through the surface about as much as this fraction of relative humidity. */
    private static final double HUMIDITY_PER_KELVIN = 0.02;

    private static final double DAY_SECONDS = 86_400;

    private StraightAir() {}

    /**
     * Every how many samples it is enough to keep, so that none left out strays further than allowed from the straight
     * line between its kept neighbours.
     *
     * @param air a closed year
     * @param strayFraction allowed, fraction of relative humidity, a kelvin counting as 0.02; zero or more
     * @param mostSeconds furthest that kept samples may lie apart
     * @return 1 to 120, a divisor of the number of samples
     */
    public static int stride(AirSeries air, double strayFraction, double mostSeconds) {
        return stride(air, strayFraction, seconds -> seconds <= mostSeconds);
    }

    /**
     * As {@link #stride}, with as many samples kept in every day.
     *
     * @return 1 to 24 for hourly air
     */
    public static int strideWithinDays(AirSeries air, double strayFraction) {
        return stride(air, strayFraction, seconds -> DAY_SECONDS % seconds == 0);
    }

    private static int stride(AirSeries air, double strayFraction, DoublePredicate fits) {
        for (int stride : STRIDES) {
            if (air.size() % stride == 0
                    && fits.test(stride * air.stepSeconds())
                    && isStraight(air, stride, strayFraction)) {
                return stride;
            }
        }
        return 1;
    }

    /**
     * Every stride-th sample.
     *
     * @param stride a divisor of the number of samples
     */
    public static AirSeries thinned(AirSeries air, int stride) {
        if (stride == 1) {
            return air;
        }
        double[] temperature = new double[air.size() / stride];
        double[] humidity = new double[temperature.length];
        for (int i = 0; i < temperature.length; i++) {
            temperature[i] = air.temperatureCelsius(i * stride);
            humidity[i] = air.relativeHumidityFraction(i * stride);
        }
        return new AirSeries(stride * air.stepSeconds(), temperature, humidity);
    }

    private static boolean isStraight(AirSeries air, int stride, double strayFraction) {
        for (int from = 0; from < air.size(); from += stride) {
            int to = (from + stride) % air.size();
            for (int i = 1; i < stride; i++) {
                double share = (double) i / stride;
                double humidity = (1 - share) * air.relativeHumidityFraction(from)
                        + share * air.relativeHumidityFraction(to)
                        - air.relativeHumidityFraction(from + i);
                double kelvin = (1 - share) * air.temperatureCelsius(from)
                        + share * air.temperatureCelsius(to)
                        - air.temperatureCelsius(from + i);
                if (Math.abs(humidity) + HUMIDITY_PER_KELVIN * Math.abs(kelvin) > strayFraction) {
                    return false;
                }
            }
        }
        return true;
    }
}
