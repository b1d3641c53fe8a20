package hafthold.transport.coupled;

import hafthold.material.SorptionIsotherm;

/**
 * A sorption isotherm per dry mass read as water per volume: w = rho0 M.
 *
 * @param isotherm M in kg/kg
 * @param dryDensityKilogramsPerCubicMetre rho0, positive
 */
record WoodStorage(SorptionIsotherm isotherm, double dryDensityKilogramsPerCubicMetre) implements MoistureStorage {
    @Override
    public double relativeHumidityFraction(double waterKilogramsPerCubicMetre, double temperatureCelsius) {
        return isotherm.waterActivity(
                waterKilogramsPerCubicMetre / dryDensityKilogramsPerCubicMetre, temperatureCelsius);
    }

    @Override
    public double waterKilogramsPerCubicMetre(double relativeHumidityFraction, double temperatureCelsius) {
        return dryDensityKilogramsPerCubicMetre
                * isotherm.moistureFraction(relativeHumidityFraction, temperatureCelsius);
    }
}
