package hafthold.transport.coupled;

/** Rates of gain of all stretches and of the slab as a whole; rewritten in place. */
final class Gains {
    /** Water, kg/(m2 s), and heat, W/m2, by turns. */
    final double[] rate;

    /** Water from outside, kg/(m2 s). */
    double waterIn;

    /** Heat from outside, W/m2. */
    double heatIn;

    /** Heat that comes with water settling at its temperature, W/m2. */
    double heatWithWater;

    Gains(int points) {
        rate = new double[2 * points];
    }
}
