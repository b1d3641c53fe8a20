package hafthold.transport.coupled;

import hafthold.air.AirSeries;
import hafthold.air.SaturationPressure;

/** Air beside a slab as it changes with time. */
public interface Surroundings {
    /** Temperature in degrees Celsius at a time in seconds. */
    double temperatureCelsius(double seconds);

    /** Vapour pressure in pascals at a time in seconds. */
    double vapourPascals(double seconds);

    /** Next time in seconds, after the given one, at which the air changes its course: a step must end there. */
    default double nextBendSeconds(double seconds) {
        return Double.POSITIVE_INFINITY;
    }

    /** Air that stays as it is. */
    static Surroundings steady(
            double temperatureCelsius, double relativeHumidityFraction, SaturationPressure saturation) {
        return new SteadyAir(temperatureCelsius, relativeHumidityFraction * saturation.pascals(temperatureCelsius));
    }

    /** A series whose first sample is time zero; straight lines of temperature and relative humidity between samples. */
    static Surroundings of(AirSeries air, SaturationPressure saturation) {
        return new SampledAir(air, saturation);
    }
}
