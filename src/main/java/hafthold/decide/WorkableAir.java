package hafthold.decide;

import hafthold.material.Family;
import hafthold.material.Material;

/**
 * Air that stock may be sent to before it is worked.
 *
 * <p>Plain wood is never sent below 5 % moisture content, and nothing out of 25 to 65 % humidity: drier wood takes up water
 * faster than it can be sanded, damper wood does not stay (a workshop's judgement). Resin in the wood weighs and drinks
 * nothing, so that its moisture content says less of it.
 *
 * @param driestFraction relative humidity, 0 to 1
 * @param dampestFraction likewise
 */
record WorkableAir(double driestFraction, double dampestFraction) {
    private static final double DRIEST_MOISTURE = 0.05;
    private static final double DRIEST_HUMIDITY = 0.25;
    private static final double DAMPEST_HUMIDITY = 0.65;

    /** For a material that takes up water, at a temperature in degrees Celsius. */
    static WorkableAir of(Material material, double celsius) {
        double driest = material.family() == Family.WOOD
                ? Math.max(
                        DRIEST_HUMIDITY,
                        material.water().orElseThrow().isotherm().waterActivity(DRIEST_MOISTURE, celsius))
                : DRIEST_HUMIDITY;
        return new WorkableAir(driest, DAMPEST_HUMIDITY);
    }

    /** Whether it may be sent there. */
    boolean allows(double humidityFraction) {
        return humidityFraction >= driestFraction && humidityFraction <= dampestFraction;
    }

    /** The nearest that it may be sent to, in whole percent, never drier. */
    long percentNearest(double humidityFraction) {
        return (long) Math.ceil(100 * Math.min(dampestFraction, Math.max(driestFraction, humidityFraction)) - 1e-9);
    }
}
