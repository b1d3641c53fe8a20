package hafthold.material;

import hafthold.quantity.Temperature;

/**
 * Moisture diffusivity that rises exponentially with moisture content and by Arrhenius with temperature:
 * D = D0 exp(a M) exp(-Ea/R (1/T - 1/T0)).
 *
 * @param referenceSquareMetresPerSecond D0 in m2/s at zero moisture and the reference temperature, positive
 * @param moistureExponent a, dimensionless (per kg/kg), zero or more
 * @param activationJoulesPerMole Ea in J/mol, zero or more
 * @param referenceCelsius T0 in degrees Celsius
 */
public record MoistureDiffusivity(
        double referenceSquareMetresPerSecond,
        double moistureExponent,
        double activationJoulesPerMole,
        double referenceCelsius) {
    /** Molar gas constant in J/(mol K), exact since the 2019 SI (CODATA 2018). */
    public static final double GAS_CONSTANT = 8.314462618;

    /** Rejects values without physical sense. */
    public MoistureDiffusivity {
        if (!(referenceSquareMetresPerSecond > 0) || !(moistureExponent >= 0) || !(activationJoulesPerMole >= 0)) {
            throw new IllegalArgumentException("diffusivity needs D0 > 0, a >= 0, Ea >= 0, got "
                    + referenceSquareMetresPerSecond + ", " + moistureExponent + ", " + activationJoulesPerMole);
        }
    }

    /** exp(-Ea/R (1/T - 1/T0)): how much faster than at the reference temperature. */
    public double temperatureFactor(double temperatureCelsius) {
        double inverseKelvin = 1.0 / (temperatureCelsius + Temperature.ZERO_CELSIUS_KELVIN);
        double inverseReference = 1.0 / (referenceCelsius + Temperature.ZERO_CELSIUS_KELVIN);
        return Math.exp(-activationJoulesPerMole / GAS_CONSTANT * (inverseKelvin - inverseReference));
    }

    /** D in m2/s at a moisture content in kg/kg and a temperature in degrees Celsius. */
    public double squareMetresPerSecond(double moistureFraction, double temperatureCelsius) {
        return referenceSquareMetresPerSecond
                * Math.exp(moistureExponent * moistureFraction)
                * temperatureFactor(temperatureCelsius);
    }

    /** The same law for a material that became heavier by a positive factor, per moisture content of the heavier mass. */
    public MoistureDiffusivity perHeavierMass(double factor) {
        return new MoistureDiffusivity(
                referenceSquareMetresPerSecond, moistureExponent * factor, activationJoulesPerMole, referenceCelsius);
    }

    /** The same law with D0 multiplied by a positive factor. */
    public MoistureDiffusivity times(double factor) {
        return new MoistureDiffusivity(
                referenceSquareMetresPerSecond * factor, moistureExponent, activationJoulesPerMole, referenceCelsius);
    }
}
