package hafthold.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;

class DayToDayWeatherTest {
    private static final DailyAir LEVEL = level(0.55);

    /** Analytic: over many years the drawn weather has the spread and the lag-1 correlation asked for. */
    @Test
    void spreadAndMemoryComeOutAsAskedFor() {
        int years = 60;
        double[] humidity = new double[years * 365];
        double[] warmth = new double[years * 365];
        for (int year = 0; year < years; year++) {
            DailyAir days = DayToDayWeather.temperate(year).over(LEVEL);
            for (int day = 0; day < 365; day++) {
                humidity[year * 365 + day] = days.relativeHumidityFraction(day);
                warmth[year * 365 + day] = days.meanCelsius(day);
            }
        }
        assertEquals(0.10, new StandardDeviation().evaluate(humidity), 0.002);
        assertEquals(0.51, lagOne(humidity), 0.02);
        assertEquals(2.65, new StandardDeviation().evaluate(warmth), 0.06);
        assertEquals(0.68, lagOne(warmth), 0.02);
        assertEquals(0.55, Arrays.stream(humidity).average().orElseThrow(), 0.003);
    }

    @Test
    void theSameSeedGivesTheSameYearAndAnotherSeedAnother() {
        assertEquals(
                DayToDayWeather.temperate(7).over(LEVEL).meanCelsius(200),
                DayToDayWeather.temperate(7).over(LEVEL).meanCelsius(200));
        assertNotEquals(
                DayToDayWeather.temperate(7).over(LEVEL).meanCelsius(200),
                DayToDayWeather.temperate(8).over(LEVEL).meanCelsius(200));
    }

    @Test
    void dampAndDryPlacesKeepTheirMeanNearTheBounds() {
        for (double usual : new double[] {0, 0.05, 0.97, 1}) {
            DailyAir days = DayToDayWeather.temperate(3).over(level(usual));
            double sum = 0;
            for (int day = 0; day < 365; day++) {
                sum += days.relativeHumidityFraction(day);
            }
            assertEquals(usual, sum / 365, 0.006);
        }
    }

    @Test
    void memoriesAndSpreadsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new DayToDayWeather(0.1, 1, 2, 0.5, 1));
        assertThrows(IllegalArgumentException.class, () -> new DayToDayWeather(0.6, 0.5, 2, 0.5, 1));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new DayToDayWeather(0.1, 0.5, -1, 0.5, 1))
                .getMessage()
                .contains("-1.0 K"));
    }

    private static double lagOne(double[] series) {
        return new PearsonsCorrelation()
                .correlation(
                        Arrays.copyOfRange(series, 0, series.length - 1), Arrays.copyOfRange(series, 1, series.length));
    }

    private static DailyAir level(double humidity) {
        double[] mean = new double[365];
        double[] range = new double[365];
        double[] wet = new double[365];
        Arrays.fill(mean, 12);
        Arrays.fill(range, 9);
        Arrays.fill(wet, humidity);
        return new DailyAir(mean, range, wet);
    }
}
