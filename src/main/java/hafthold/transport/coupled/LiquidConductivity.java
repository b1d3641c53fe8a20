package hafthold.transport.coupled;

/** What flows as liquid towards stronger suction: g = K ds/dx, s = -rho_w R_v T ln(phi) (Kelvin's equation). */
@FunctionalInterface
public interface LiquidConductivity {
    /** Draws no liquid. */
    LiquidConductivity NONE = (water, temperature) -> 0;

    /**
     * K.
     *
     * @param waterKilogramsPerCubicMetre water content, kg/m3
     * @param temperatureCelsius temperature in degrees Celsius
     * @return seconds, that is kg/(m s Pa), zero or more
     */
    double seconds(double waterKilogramsPerCubicMetre, double temperatureCelsius);
}
