package hafthold.material;

/** Water held at rest in air of a given humidity and temperature, and the reverse. */
public interface SorptionIsotherm {

    /**
     * Equilibrium moisture content.
     *
     * @param relativeHumidityFraction relative humidity over liquid water, 0 to 1
     * @param temperatureCelsius temperature in degrees Celsius
     * @return mass of water per dry mass, kg/kg, rising with humidity
     */
    double moistureFraction(double relativeHumidityFraction, double temperatureCelsius);

    /**
     * Relative humidity of air that would leave this moisture content unchanged (water activity): the inverse of
     * {@link #moistureFraction}.
     *
     * @param moistureFraction mass of water per dry mass, kg/kg
     * @param temperatureCelsius temperature in degrees Celsius
     * @return 0 to 1; clamped to 0 below and 1 above the range of the isotherm
     */
    double waterActivity(double moistureFraction, double temperatureCelsius);

    /** Slope of {@link #waterActivity} with moisture content at fixed temperature, positive inside the range. */
    double waterActivitySlope(double moistureFraction, double temperatureCelsius);

    /**
     * Activity, slope and curvature at once, for time loops.
     *
     * @param moistureFraction mass of water per dry mass, kg/kg
     * @param temperatureCelsius temperature in degrees Celsius
     * @param local receives them; the curvature is zero where the activity is clamped. A value that it holds beforehand is
     *     taken for a guess, which may save work; any number will do
     */
    void waterActivity(double moistureFraction, double temperatureCelsius, LocalActivity local);
}
