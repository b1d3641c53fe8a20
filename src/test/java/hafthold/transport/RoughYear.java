package hafthold.transport;

import hafthold.air.AirSeries;
import java.util.Random;

/** An invented hourly year with seasons, days, weather and the odd front: no real place. */
final class RoughYear {
    private static final int HOURS = 8760;

    private RoughYear() {}

    static AirSeries hourly(long seed) {
        return hours(seed, HOURS);
    }

    static AirSeries hours(long seed, int hours) {
        Random random = new Random(seed);
        double[] temperature = new double[hours];
        double[] humidity = new double[hours];
        double damp = 0;
        double warm = 0;
        double front = 0;
        for (int i = 0; i < hours; i++) {
            if (i % 24 == 0) {
                damp = 0.51 * damp + 0.086 * random.nextGaussian();
                warm = 0.68 * warm + 1.94 * random.nextGaussian();
            }
            if (random.nextDouble() < 0.01) {
                front = 0.12 * random.nextGaussian();
            }
            double season = Math.cos(2 * Math.PI * (i / (double) hours - 0.55));
            double day = Math.cos(2 * Math.PI * (i / 24.0 - 0.6));
            temperature[i] = 12 + 11 * season + 5 * day + warm;
            humidity[i] = Math.max(0.08, Math.min(0.99, 0.62 - 0.12 * season - 0.15 * day + damp + front));
        }
        return new AirSeries(3600, temperature, humidity);
    }

    /** The same year begun {@code shift} samples later. */
    static AirSeries begunLater(AirSeries air, int shift) {
        double[] temperature = new double[air.size()];
        double[] humidity = new double[air.size()];
        for (int i = 0; i < air.size(); i++) {
            temperature[i] = air.temperatureCelsius((i + shift) % air.size());
            humidity[i] = air.relativeHumidityFraction((i + shift) % air.size());
        }
        return new AirSeries(air.stepSeconds(), temperature, humidity);
    }

    /** A random walk with jumps to anywhere, dry and saturated air included. */
    static AirSeries randomWalk(long seed, int hours) {
        Random random = new Random(seed);
        double[] temperature = new double[hours];
        double[] humidity = new double[hours];
        double t = 20;
        double h = 0.5;
        for (int i = 0; i < hours; i++) {
            t = Math.max(-25, Math.min(55, t + 2 * random.nextGaussian()));
            h = random.nextDouble() < 0.1 ? random.nextDouble() : h + 0.05 * random.nextGaussian();
            h = random.nextDouble() < 0.02 ? Math.rint(random.nextDouble()) : h;
            h = Math.max(0, Math.min(1, h));
            temperature[i] = t;
            humidity[i] = h;
        }
        return new AirSeries(3600, temperature, humidity);
    }
}
