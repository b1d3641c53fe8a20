package hafthold.transport.coupled;

import hafthold.air.SaturationPressure;

/** Saturation pressure as EN ISO 13788 gives it at 0 C and above, 610.5 exp(17.269 t/(237.3 + t)); from memory. */
final class BuildingStandardSaturation implements SaturationPressure {
    @Override
    public double pascals(double temperatureCelsius) {
        return 610.5 * Math.exp(17.269 * temperatureCelsius / (237.3 + temperatureCelsius));
    }
}
