package hafthold.transport.coupled;

import hafthold.air.AirSeries;
import hafthold.air.SaturationPressure;

/** A series read at any time; before its first sample and after its last it stays level. */
record SampledAir(AirSeries air, SaturationPressure saturation) implements Surroundings {
    /** A time this close to a sample, in sample intervals, is that sample: sums of steps round. */
    private static final double SAME = 1e-9;

    @Override
    public double temperatureCelsius(double seconds) {
        int i = before(seconds);
        double share = share(seconds, i);
        return air.temperatureCelsius(i) + share * (air.temperatureCelsius(i + 1) - air.temperatureCelsius(i));
    }

    @Override
    public double vapourPascals(double seconds) {
        int i = before(seconds);
        double share = share(seconds, i);
        double humidity = air.relativeHumidityFraction(i)
                + share * (air.relativeHumidityFraction(i + 1) - air.relativeHumidityFraction(i));
        return humidity * saturation.pascals(temperatureCelsius(seconds));
    }

    @Override
    public double nextBendSeconds(double seconds) {
        double next = Math.floor(seconds / air.stepSeconds() + SAME) + 1;
        return next < air.size() ? next * air.stepSeconds() : Double.POSITIVE_INFINITY;
    }

    private int before(double seconds) {
        return (int) Math.max(0, Math.min(air.size() - 2, Math.floor(seconds / air.stepSeconds() + SAME)));
    }

    private double share(double seconds, int sample) {
        return Math.max(0, Math.min(1, seconds / air.stepSeconds() - sample));
    }
}
