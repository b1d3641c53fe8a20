package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.material.SorptionIsotherm;

/**
 * The air of a year in three numbers, and what an isotherm makes of a change about them.
 *
 * @param celsius mean temperature
 * @param humidityFraction mean relative humidity
 * @param seasonsFraction from the driest to the dampest month's mean of relative humidity
 */
record YearMean(double celsius, double humidityFraction, double seasonsFraction) {
    private static final double LARGEST_MEAN_HUMIDITY = 0.98;
    private static final double MONTHS = 12;

    static YearMean of(AirSeries air) {
        double temperature = 0;
        double humidity = 0;
        for (int i = 0; i < air.size(); i++) {
            temperature += air.temperatureCelsius(i) / air.size();
            humidity += air.relativeHumidityFraction(i) / air.size();
        }
        return new YearMean(temperature, humidity, seasons(air));
    }

    private static double seasons(AirSeries air) {
        int month = Math.max(1, (int) (air.size() / MONTHS));
        double sum = 0;
        for (int i = 0; i < month; i++) {
            sum += air.relativeHumidityFraction(i);
        }
        double least = sum;
        double most = sum;
        for (int i = 0; i < air.size(); i++) {
            sum += air.relativeHumidityFraction((i + month) % air.size()) - air.relativeHumidityFraction(i);
            least = Math.min(least, sum);
            most = Math.max(most, sum);
        }
        return (most - least) / month;
    }

    /** Moisture that the isotherm adds when the air of the whole year is damper by so much, kg/kg. */
    double shiftFraction(SorptionIsotherm isotherm, double humidityShift) {
        if (humidityShift == 0) {
            return 0;
        }
        double shifted = Math.max(0, Math.min(LARGEST_MEAN_HUMIDITY, humidityFraction + humidityShift));
        return isotherm.moistureFraction(shifted, celsius) - isotherm.moistureFraction(humidityFraction, celsius);
    }

    /** Moisture from the driest to the dampest month for what settles at once, kg/kg. */
    double seasonsFraction(SorptionIsotherm isotherm) {
        return shiftFraction(isotherm, seasonsFraction / 2) - shiftFraction(isotherm, -seasonsFraction / 2);
    }
}
