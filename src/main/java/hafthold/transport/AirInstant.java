package hafthold.transport;

/** Air at one instant as slabs feel it; rewritten in place so that the time loop allocates nothing. */
final class AirInstant {
    /** Degrees Celsius. */
    double temperatureCelsius;

    /** H, relative humidity, 0 to 1. */
    double humidity;

    /** Saturation pressure, Pa. */
    double saturationPascals;

    /** How much faster water moves in a slab than at its reference temperature, by law of temperature. */
    final double[] speed;

    AirInstant(int laws) {
        speed = new double[laws];
    }
}
