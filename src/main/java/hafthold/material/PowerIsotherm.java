package hafthold.material;

/**
 * Sorption isotherm of resins and laminates: M = Ms H^n, independent of temperature. With n = 1 it is Henry's law;
 * laminates are tabulated with n from 1 to about 2.
 *
 * @param saturationFraction Ms, moisture content in saturated air, kg/kg, positive
 * @param exponent n, 0.5 to 4
 */
public record PowerIsotherm(double saturationFraction, double exponent) implements SorptionIsotherm {
    /** Below this activity the slope is held, as the inverse of a power above 1 has none at zero. */
    private static final double SMALLEST_ACTIVITY = 1e-3;

    /** Rejects constants outside their ranges. */
    public PowerIsotherm {
        if (!(saturationFraction > 0) || !(exponent >= 0.5 && exponent <= 4)) {
            throw new IllegalArgumentException(
                    "a power isotherm needs Ms > 0 and 0.5 <= n <= 4, got " + saturationFraction + ", " + exponent);
        }
    }

    @Override
    public double moistureFraction(double relativeHumidityFraction, double temperatureCelsius) {
        return saturationFraction
                * (exponent == 1 ? relativeHumidityFraction : Math.pow(relativeHumidityFraction, exponent));
    }

    @Override
    public double waterActivity(double moistureFraction, double temperatureCelsius) {
        if (moistureFraction <= 0) {
            return 0;
        }
        double filling = Math.min(1, moistureFraction / saturationFraction);
        return exponent == 1 ? filling : Math.pow(filling, 1 / exponent);
    }

    @Override
    public double waterActivitySlope(double moistureFraction, double temperatureCelsius) {
        return slopeAt(waterActivity(moistureFraction, temperatureCelsius));
    }

    private double slopeAt(double waterActivity) {
        double activity = Math.max(SMALLEST_ACTIVITY, waterActivity);
        return 1 / (saturationFraction * exponent * (exponent == 1 ? 1 : Math.pow(activity, exponent - 1)));
    }

    @Override
    public void waterActivity(double moistureFraction, double temperatureCelsius, LocalActivity local) {
        double activity = waterActivity(moistureFraction, temperatureCelsius);
        if (activity <= SMALLEST_ACTIVITY || activity >= 1) {
            local.set(activity, slopeAt(activity), 0);
            return;
        }
        double slope = activity / (exponent * moistureFraction);
        local.set(activity, slope, slope * (1 / exponent - 1) / moistureFraction);
    }
}
