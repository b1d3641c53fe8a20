package hafthold.air;

import hafthold.source.PublishedModel;
import java.util.Random;

/**
 * Weather from day to day about the normals: a first-order autoregression each for humidity and temperature.
 *
 * <pre>
 * z(d) = r z(d-1) + sqrt(1 - r^2) n(d),   n standard normal,   closed over the year
 * </pre>
 *
 * <p>The daily mean is the normal one plus spread times z. Near 0 and 100 % the spread of the humidity is cut to a third
 * of the way to the bound, and what still leaves 1 to 100 % is put back on it, so monthly means hold in the long run but
 * not in each year. Humidity and temperature are drawn apart, which nature does not do. The same seed gives the same
 * year on every machine.
 *
 * @param humiditySpreadFraction standard deviation of the daily mean relative humidity, fraction, 0 to 0.5
 * @param humidityMemory correlation of one day's humidity with the next, 0 to below 1
 * @param temperatureSpreadKelvin standard deviation of the daily mean temperature, kelvin, 0 to 20
 * @param temperatureMemory correlation of one day's temperature with the next, 0 to below 1
 * @param seed any number
 */
@PublishedModel(
        source = "day-to-day-statistics",
        locator = "spread and lag-1 correlation of daily means",
        validity = "temperate places; elsewhere the spread differs")
public record DayToDayWeather(
        double humiditySpreadFraction,
        double humidityMemory,
        double temperatureSpreadKelvin,
        double temperatureMemory,
        long seed) {
    private static final double DRIEST_FRACTION = 0.01;
    private static final double SHARE_OF_THE_WAY = 1.0 / 3;

    /** Rejects spreads and memories out of range. */
    public DayToDayWeather {
        if (!(humiditySpreadFraction >= 0 && humiditySpreadFraction <= 0.5)
                || !(temperatureSpreadKelvin >= 0 && temperatureSpreadKelvin <= 20)) {
            throw new IllegalArgumentException("spreads must lie in 0 to 0.5 and 0 to 20 K, got "
                    + humiditySpreadFraction + " and " + temperatureSpreadKelvin + " K");
        }
        if (!(humidityMemory >= 0 && humidityMemory < 1) || !(temperatureMemory >= 0 && temperatureMemory < 1)) {
            throw new IllegalArgumentException(
                    "memories must lie in 0 to below 1, got " + humidityMemory + " and " + temperatureMemory);
        }
    }

    /** Temperate weather: humidity 10 points, memory 0.51; temperature 2.65 K, memory 0.68. */
    public static DayToDayWeather temperate(long seed) {
        return new DayToDayWeather(0.10, 0.51, 2.65, 0.68, seed);
    }

    /** One year of weather about the normal days; daily ranges stay. */
    public DailyAir over(DailyAir normal) {
        Random random = new Random(seed);
        double[] wet = closedAutoregression(random, humidityMemory);
        double[] warm = closedAutoregression(random, temperatureMemory);
        double[] mean = new double[CommonYear.DAYS];
        double[] range = new double[CommonYear.DAYS];
        double[] humidity = new double[CommonYear.DAYS];
        for (int day = 0; day < CommonYear.DAYS; day++) {
            mean[day] = normal.meanCelsius(day) + temperatureSpreadKelvin * warm[day];
            range[day] = normal.rangeKelvin(day);
            double usual = normal.relativeHumidityFraction(day);
            double spread = Math.min(humiditySpreadFraction, SHARE_OF_THE_WAY * Math.min(usual, 1 - usual));
            double driest = Math.min(usual, DRIEST_FRACTION);
            humidity[day] = Math.min(1, Math.max(driest, usual + spread * wet[day]));
        }
        return new DailyAir(mean, range, humidity);
    }

    /** Two turns over the same noise: after the first the start is forgotten, so the second closes. */
    private static double[] closedAutoregression(Random random, double memory) {
        double[] noise = new double[CommonYear.DAYS];
        for (int day = 0; day < noise.length; day++) {
            noise[day] = Math.sqrt(1 - memory * memory) * random.nextGaussian();
        }
        double state = 0;
        double[] series = new double[noise.length];
        for (int turn = 0; turn < 2; turn++) {
            for (int day = 0; day < noise.length; day++) {
                state = memory * state + noise[day];
                series[day] = state;
            }
        }
        return series;
    }
}
