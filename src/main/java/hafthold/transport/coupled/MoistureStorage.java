package hafthold.transport.coupled;

import hafthold.material.MoistureDiffusivity;
import hafthold.quantity.Temperature;

/** How humid a material that holds some water makes the air in its pores: the sorption curve, read both ways. */
public interface MoistureStorage {
    /** Molar mass of water, kg/mol. */
    double WATER_KILOGRAMS_PER_MOLE = 0.01801528;

    /** rho_w as the standards on moisture in building materials round it, kg/m3. */
    double WATER_DENSITY_KILOGRAMS_PER_CUBIC_METRE = 1000;

    /** Driest air whose suction is told apart. */
    double DRIEST_HUMIDITY_FRACTION = 1e-12;

    /**
     * Relative humidity in balance with a water content.
     *
     * @param waterKilogramsPerCubicMetre water content w, kg/m3, zero or more
     * @param temperatureCelsius temperature in degrees Celsius
     * @return 0 to 1, rising with water content
     */
    double relativeHumidityFraction(double waterKilogramsPerCubicMetre, double temperatureCelsius);

    /**
     * The reverse.
     *
     * @param relativeHumidityFraction relative humidity over liquid water, 0 to 1
     * @param temperatureCelsius temperature in degrees Celsius
     * @return water content, kg/m3
     */
    double waterKilogramsPerCubicMetre(double relativeHumidityFraction, double temperatureCelsius);

    /**
     * How hard liquid is drawn in, by Kelvin's equation s = -rho_w R_v T ln(phi). A storage whose print defines suction
     * otherwise says so here.
     *
     * @param waterKilogramsPerCubicMetre water content w, kg/m3, zero or more
     * @param temperatureCelsius temperature in degrees Celsius
     * @return pascals, falling with water content
     */
    default double suctionPascals(double waterKilogramsPerCubicMetre, double temperatureCelsius) {
        double humidity = relativeHumidityFraction(waterKilogramsPerCubicMetre, temperatureCelsius);
        double gasConstant = MoistureDiffusivity.GAS_CONSTANT / WATER_KILOGRAMS_PER_MOLE;
        double kelvin = temperatureCelsius + Temperature.ZERO_CELSIUS_KELVIN;
        return -WATER_DENSITY_KILOGRAMS_PER_CUBIC_METRE
                * gasConstant
                * kelvin
                * Math.log(Math.max(DRIEST_HUMIDITY_FRACTION, humidity));
    }
}
