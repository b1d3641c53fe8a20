package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.air.SaturationPressure;
import java.util.List;

/**
 * A series of air read by slabs: at its samples from stored values, between them on straight lines of T and H. What the
 * slabs have in common, saturation pressure and laws of temperature, is worked out once for all of them.
 */
final class AirTrack {
    private final AirSeries air;
    private final SaturationPressure saturation;
    private final TemperatureLaws laws;
    private final double[] saturationPascals;
    private final double[][] speed;

    AirTrack(AirSeries air, List<Slab> slabs, SaturationPressure saturation) {
        this.air = air;
        this.saturation = saturation;
        laws = TemperatureLaws.of(slabs);
        saturationPascals = new double[air.size()];
        speed = new double[laws.size()][air.size()];
        for (int i = 0; i < saturationPascals.length; i++) {
            double temperature = air.temperatureCelsius(i);
            saturationPascals[i] = saturation.pascals(temperature);
            for (int law = 0; law < speed.length; law++) {
                speed[law][i] = laws.speed(law, temperature);
            }
        }
    }

    AirSeries air() {
        return air;
    }

    TemperatureLaws laws() {
        return laws;
    }

    SaturationPressure saturation() {
        return saturation;
    }

    int size() {
        return saturationPascals.length;
    }

    double stepSeconds() {
        return air.stepSeconds();
    }

    /** Room for one instant of this air. */
    AirInstant instant() {
        return new AirInstant(speed.length);
    }

    /** Air of a sample; after the last one the first follows again. */
    void sample(int index, AirInstant instant) {
        int i = index % saturationPascals.length;
        instant.temperatureCelsius = air.temperatureCelsius(i);
        instant.humidity = air.relativeHumidityFraction(i);
        instant.saturationPascals = saturationPascals[i];
        for (int law = 0; law < speed.length; law++) {
            instant.speed[law] = speed[law][i];
        }
    }

    /** Air half-way between two instants of the same sample interval. */
    void halfway(AirInstant from, AirInstant to, AirInstant middle) {
        middle.temperatureCelsius = 0.5 * (from.temperatureCelsius + to.temperatureCelsius);
        middle.humidity = 0.5 * (from.humidity + to.humidity);
        middle.saturationPascals = saturation.pascals(middle.temperatureCelsius);
        for (int law = 0; law < middle.speed.length; law++) {
            middle.speed[law] = laws.speed(law, middle.temperatureCelsius);
        }
    }
}
