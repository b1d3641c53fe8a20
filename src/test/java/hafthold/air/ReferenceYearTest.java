package hafthold.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReferenceYearTest {
    private final SaturationPressure saturation = new HylandWexlerSaturationPressure();

    static List<String> placeIds() {
        return Fixture.placeIds();
    }

    @ParameterizedTest
    @MethodSource("placeIds")
    void monthlyMeansOfTheYearAreTheNormals(String placeId) {
        MonthlyNormals normals = Fixture.normals(placeId);
        MonthlyNormals found = MonthlyNormals.of(ReferenceYear.of(normals));
        for (int i = 0; i < 12; i++) {
            assertEquals(normals.meanCelsius().get(i), found.meanCelsius().get(i), 1e-9);
            assertEquals(
                    normals.relativeHumidityFraction().get(i),
                    found.relativeHumidityFraction().get(i),
                    1e-9);
        }
    }

    /** The printed shape spans 0.97 of the range between thermometer extremes, as 24 hourly samples do. */
    @ParameterizedTest
    @MethodSource("placeIds")
    void dailyRangesAreThoseOfTheNormalsTimesTheShapesSpan(String placeId) {
        MonthlyNormals normals = Fixture.normals(placeId);
        MonthlyNormals found = MonthlyNormals.of(ReferenceYear.of(normals));
        for (int i = 0; i < 12; i++) {
            double printed = normals.meanMaximumCelsius().get(i)
                    - normals.meanMinimumCelsius().get(i);
            double range = found.meanMaximumCelsius().get(i)
                    - found.meanMinimumCelsius().get(i);
            assertEquals(0.97 * printed, range, 0.02 * printed);
        }
    }

    @ParameterizedTest
    @MethodSource("placeIds")
    void vapourPressureStandsThroughTheDayWhereTheAirIsNotSaturated(String placeId) {
        DailyAir days = DailyAir.of(Fixture.normals(placeId));
        AirSeries year = ReferenceYear.of(days);
        assertEquals(CommonYear.HOURS, year.size());
        for (int day = 0; day < CommonYear.DAYS; day++) {
            double vapour = vapour(year, day * 24 + 15);
            double humidity = 0;
            for (int i = day * 24; i < day * 24 + 24; i++) {
                humidity += year.relativeHumidityFraction(i) / 24;
                if (year.relativeHumidityFraction(i) < 1) {
                    assertEquals(vapour, vapour(year, i), 1e-10 * vapour);
                } else {
                    assertTrue(vapour(year, i) <= vapour * (1 + 1e-12));
                }
            }
            assertEquals(days.relativeHumidityFraction(day), humidity, 1e-12);
        }
    }

    @Test
    void fogIsClippedAndTheDaysMeanStillHolds() {
        double[] mean = new double[365];
        double[] range = new double[365];
        double[] humidity = new double[365];
        for (int day = 0; day < 365; day++) {
            range[day] = 20;
            humidity[day] = day / 364.0;
        }
        AirSeries year = ReferenceYear.of(new DailyAir(mean, range, humidity));
        int saturated = 0;
        for (int day = 0; day < 365; day++) {
            double sum = 0;
            for (int i = day * 24; i < day * 24 + 24; i++) {
                sum += year.relativeHumidityFraction(i);
                saturated += year.relativeHumidityFraction(i) == 1 ? 1 : 0;
            }
            assertEquals(humidity[day], sum / 24, 1e-12);
        }
        assertTrue(saturated > 1000, "the case should clip often, clipped " + saturated);
    }

    /** Erbs, Klein and Beckman 1983 place the coldest hour near sunrise and the warmest in the afternoon. */
    @Test
    void theDayIsColdestAtSixAndWarmestAtFifteenAndItsMeanIsZero() {
        double sum = 0;
        int coldest = 0;
        int warmest = 0;
        for (int hour = 0; hour < 24; hour++) {
            double departure = ErbsKleinBeckmanDayShape.departure(hour);
            sum += departure;
            coldest = departure < ErbsKleinBeckmanDayShape.departure(coldest) ? hour : coldest;
            warmest = departure > ErbsKleinBeckmanDayShape.departure(warmest) ? hour : warmest;
        }
        assertEquals(0, sum, 1e-12);
        assertEquals(6, coldest);
        assertEquals(15, warmest);
        assertEquals(ErbsKleinBeckmanDayShape.departure(0), ErbsKleinBeckmanDayShape.departure(24), 1e-12);
    }

    private double vapour(AirSeries year, int sample) {
        return year.relativeHumidityFraction(sample) * saturation.pascals(year.temperatureCelsius(sample));
    }
}
