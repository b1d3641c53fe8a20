package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.air.SaturationPressure;

/** A series of air read by a slab: at its samples from stored values, between them on straight lines of T and H. */
final class AirTrack {
    private final AirSeries air;
    private final Slab slab;
    private final SaturationPressure saturation;
    private final double[] exchange;
    private final double[] diffusivity;

    AirTrack(AirSeries air, Slab slab, SaturationPressure saturation) {
        this.air = air;
        this.slab = slab;
        this.saturation = saturation;
        exchange = new double[air.size()];
        diffusivity = new double[air.size()];
        for (int i = 0; i < exchange.length; i++) {
            exchange[i] = exchangeAt(air.temperatureCelsius(i));
            diffusivity[i] = diffusivityAt(air.temperatureCelsius(i));
        }
    }

    int size() {
        return exchange.length;
    }

    double stepSeconds() {
        return air.stepSeconds();
    }

    /** Air of a sample; after the last one the first follows again. */
    void sample(int index, AirInstant instant) {
        int i = index % exchange.length;
        instant.temperatureCelsius = air.temperatureCelsius(i);
        instant.humidity = air.relativeHumidityFraction(i);
        instant.exchange = exchange[i];
        instant.diffusivity = diffusivity[i];
    }

    /** Air half-way between two instants of the same sample interval. */
    void halfway(AirInstant from, AirInstant to, AirInstant middle) {
        middle.temperatureCelsius = 0.5 * (from.temperatureCelsius + to.temperatureCelsius);
        middle.humidity = 0.5 * (from.humidity + to.humidity);
        middle.exchange = exchangeAt(middle.temperatureCelsius);
        middle.diffusivity = diffusivityAt(middle.temperatureCelsius);
    }

    private double exchangeAt(double temperatureCelsius) {
        return saturation.pascals(temperatureCelsius)
                / (slab.surfaceResistanceSquareMetreSecondPascalsPerKilogram()
                        * slab.dryDensityKilogramsPerCubicMetre());
    }

    private double diffusivityAt(double temperatureCelsius) {
        return slab.diffusivity().squareMetresPerSecond(0, temperatureCelsius);
    }
}
