package hafthold.transport.coupled;

/** What flows as heat down a slope of temperature: q = -lambda dT/dx. */
@FunctionalInterface
public interface HeatConductivity {
    /**
     * lambda.
     *
     * @param waterKilogramsPerCubicMetre water content, kg/m3
     * @param temperatureCelsius temperature in degrees Celsius
     * @return W/(m K), positive
     */
    double wattsPerMetreKelvin(double waterKilogramsPerCubicMetre, double temperatureCelsius);
}
