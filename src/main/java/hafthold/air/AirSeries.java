package hafthold.air;

import java.util.Arrays;

/**
 * Air at equal time steps: temperature and relative humidity over liquid water, immutable.
 *
 * <p>Sample i holds at the instant i times the step after the start; between samples air changes linearly. A series
 * that stands for a year that repeats is closed: its last sample is followed by its first.
 */
public final class AirSeries {
    private final double stepSeconds;
    private final double[] temperatureCelsius;
    private final double[] relativeHumidityFraction;

    /**
     * Copies two equally long columns.
     *
     * @param stepSeconds time between samples in seconds, positive
     * @param temperatureCelsius one dry-bulb temperature a sample, degrees Celsius
     * @param relativeHumidityFraction one relative humidity a sample, 0 to 1
     * @throws IllegalArgumentException when the columns differ in length, are empty, or hold a value out of range
     */
    public AirSeries(double stepSeconds, double[] temperatureCelsius, double[] relativeHumidityFraction) {
        if (!(stepSeconds > 0)) {
            throw new IllegalArgumentException("the time step must be positive, got " + stepSeconds);
        }
        if (temperatureCelsius.length == 0 || temperatureCelsius.length != relativeHumidityFraction.length) {
            throw new IllegalArgumentException("temperature and humidity need the same number of samples, got "
                    + temperatureCelsius.length + " and " + relativeHumidityFraction.length);
        }
        for (int i = 0; i < temperatureCelsius.length; i++) {
            double humidity = relativeHumidityFraction[i];
            if (!Double.isFinite(temperatureCelsius[i]) || !(humidity >= 0 && humidity <= 1)) {
                throw new IllegalArgumentException("sample " + i + " is no air: " + temperatureCelsius[i] + " C, "
                        + 100 * humidity + " % relative humidity");
            }
        }
        this.stepSeconds = stepSeconds;
        this.temperatureCelsius = temperatureCelsius.clone();
        this.relativeHumidityFraction = relativeHumidityFraction.clone();
    }

    /** Number of samples. */
    public int size() {
        return temperatureCelsius.length;
    }

    /** The first so many samples. */
    public AirSeries firstSamples(int count) {
        return new AirSeries(
                stepSeconds, Arrays.copyOf(temperatureCelsius, count), Arrays.copyOf(relativeHumidityFraction, count));
    }

    /** The same air with straight lines between its samples, so many samples in place of each; the series is closed. */
    public AirSeries finer(int samples) {
        double[] temperature = new double[size() * samples];
        double[] humidity = new double[temperature.length];
        for (int i = 0; i < temperature.length; i++) {
            int from = i / samples;
            int to = (from + 1) % size();
            double share = (double) (i % samples) / samples;
            temperature[i] = (1 - share) * temperatureCelsius[from] + share * temperatureCelsius[to];
            humidity[i] = (1 - share) * relativeHumidityFraction[from] + share * relativeHumidityFraction[to];
        }
        return new AirSeries(stepSeconds / samples, temperature, humidity);
    }

    /** Time between samples in seconds. */
    public double stepSeconds() {
        return stepSeconds;
    }

    /** Dry-bulb temperature of a sample in degrees Celsius. */
    public double temperatureCelsius(int sample) {
        return temperatureCelsius[sample];
    }

    /** Relative humidity of a sample, 0 to 1. */
    public double relativeHumidityFraction(int sample) {
        return relativeHumidityFraction[sample];
    }
}
