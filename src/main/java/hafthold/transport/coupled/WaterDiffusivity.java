package hafthold.transport.coupled;

/** What flows down a slope of water content, as bound water in a cell wall does: g = -D dw/dx. */
@FunctionalInterface
public interface WaterDiffusivity {
    /** Nothing flows that way. */
    WaterDiffusivity NONE = (water, temperature) -> 0;

    /**
     * D.
     *
     * @param waterKilogramsPerCubicMetre water content, kg/m3
     * @param temperatureCelsius temperature in degrees Celsius
     * @return m2/s, zero or more
     */
    double squareMetresPerSecond(double waterKilogramsPerCubicMetre, double temperatureCelsius);
}
