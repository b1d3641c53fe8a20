package hafthold.transport.coupled;

/** What flows as vapour down a slope of vapour pressure: g = -delta dp/dx. */
@FunctionalInterface
public interface VapourPermeability {
    /** Lets no vapour through; water then moves only otherwise. */
    VapourPermeability NONE = (water, temperature) -> 0;

    /**
     * delta.
     *
     * @param waterKilogramsPerCubicMetre water content, kg/m3
     * @param temperatureCelsius temperature in degrees Celsius
     * @return kg/(m s Pa), zero or more
     */
    double kilogramsPerMetreSecondPascal(double waterKilogramsPerCubicMetre, double temperatureCelsius);
}
