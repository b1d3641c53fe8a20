package hafthold.air;

import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/** Saturation pressure of water vapour over liquid water, undercooled water below 0 C included. */
public interface SaturationPressure {
    /** Coldest dew point that {@link #dewPointCelsius} looks for, degrees Celsius. */
    double COLDEST_DEW_POINT_CELSIUS = -100;

    /** Warmest dew point that {@link #dewPointCelsius} looks for, degrees Celsius. */
    double WARMEST_DEW_POINT_CELSIUS = 200;

    /**
     * Pressure of vapour at rest over water.
     *
     * <p>Meteorological relative humidity counts from it at every temperature: below 0 C too it is the pressure over
     * undercooled water, which at -20 C is 22 % above that over ice.
     *
     * @param temperatureCelsius temperature in degrees Celsius
     * @return pascals, rising with temperature
     */
    double pascals(double temperatureCelsius);

    /**
     * Temperature at which vapour of this pressure is saturated over water: the inverse of {@link #pascals}.
     *
     * @param vapourPascals vapour pressure in pascals
     * @return degrees Celsius, within 1e-9 K of the root
     * @throws IllegalArgumentException when the dew point would lie outside -100 to 200 C
     */
    default double dewPointCelsius(double vapourPascals) {
        if (!(vapourPascals >= pascals(COLDEST_DEW_POINT_CELSIUS)
                && vapourPascals <= pascals(WARMEST_DEW_POINT_CELSIUS))) {
            throw new IllegalArgumentException(
                    "vapour of " + vapourPascals + " Pa has no dew point between -100 and 200 C");
        }
        double target = Math.log(vapourPascals);
        return new BracketingNthOrderBrentSolver(1e-14, 1e-9, 5)
                .solve(100, t -> Math.log(pascals(t)) - target, COLDEST_DEW_POINT_CELSIUS, WARMEST_DEW_POINT_CELSIUS);
    }
}
