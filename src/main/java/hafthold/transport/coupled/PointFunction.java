package hafthold.transport.coupled;

/** A quantity of the material at one point. */
@FunctionalInterface
interface PointFunction {
    double at(double water, double temperature);

    /** Slope with water content, from either side. */
    default double slopeWithWater(double water, double temperature) {
        double step = 1e-5 * Math.max(1, water);
        double below = Math.max(0, water - step);
        return (at(water + step, temperature) - at(below, temperature)) / (water + step - below);
    }

    /** Slope with temperature, from either side. */
    default double slopeWithTemperature(double water, double temperature) {
        double step = 1e-3;
        return (at(water, temperature + step) - at(water, temperature - step)) / (2 * step);
    }
}
