package hafthold.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.HailwoodHorrobinIsotherm;
import hafthold.material.SorptionIsotherm;
import hafthold.table.EpwReader;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The year made from a place's normals against a recorded typical year of the place (NREL TMY3, public domain): run with
 * {@code -Dhafthold.weather=FOLDER}, the folder holding ID_tmy3.epw files. What is compared is the mean of the hourly
 * equilibrium moisture content of wood, in points.
 */
@EnabledIfSystemProperty(named = "hafthold.weather", matches = ".+")
class WeatherFilesTest {
    private static final SorptionIsotherm WOOD = new HailwoodHorrobinIsotherm();

    /** The rule alone: normals of the file itself, so that decade and station are the same. */
    @ParameterizedTest
    @ValueSource(strings = {"duluth", "miami", "phoenix", "sanfrancisco"})
    void theYearMadeOfAFilesOwnNormalsHoldsItsMoisture(String placeId) {
        AirSeries file = file(placeId);
        MonthlyMoisture made = MonthlyMoisture.of(ReferenceYear.of(MonthlyNormals.of(file)), WOOD);
        MonthlyMoisture recorded = MonthlyMoisture.of(file, WOOD);
        print(placeId, "own normals", made, recorded);
        assertEquals(recorded.yearPercent(), made.yearPercent(), 0.6);
        for (int month = 1; month <= 12; month++) {
            assertEquals(recorded.percent(month), made.percent(month), 1.5, placeId + " month " + month);
        }
    }

    /** What a user gets: the place's row in places.csv. */
    @ParameterizedTest
    @ValueSource(strings = {"duluth", "miami", "phoenix", "sanfrancisco"})
    void theYearOfThePlacesNormalsHoldsTheFilesMoisture(String placeId) {
        AirSeries file = file(placeId);
        MonthlyMoisture made = MonthlyMoisture.of(
                PlaceTable.read(TableSet.builtIn()).find(placeId).referenceYear(), WOOD);
        MonthlyMoisture recorded = MonthlyMoisture.of(file, WOOD);
        print(placeId, "places.csv", made, recorded);
        assertEquals(recorded.yearPercent(), made.yearPercent(), 0.6);
        for (int month = 1; month <= 12; month++) {
            assertEquals(recorded.percent(month), made.percent(month), 1.5, placeId + " month " + month);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"duluth", "miami", "phoenix", "sanfrancisco"})
    void theDaysCourseFollowsTheRecordedMeanDay(String placeId) {
        AirSeries file = file(placeId);
        double[] recorded = new double[24];
        double[] made = new double[24];
        for (int i = 0; i < file.size(); i++) {
            recorded[i % 24] += file.temperatureCelsius(i);
            made[i % 24] = ErbsKleinBeckmanDayShape.departure(i % 24);
        }
        double correlation = new PearsonsCorrelation().correlation(recorded, made);
        assertTrue(correlation > 0.95, placeId + " " + correlation);
    }

    /** The figures of DayToDayWeather: 10 points and 0.51 over many sites; single sites lie around them. */
    @ParameterizedTest
    @ValueSource(strings = {"duluth", "miami", "phoenix", "sanfrancisco"})
    void humidityVariesFromDayToDayAboutAsTheOptionSays(String placeId) {
        AirSeries file = file(placeId);
        DailyAir usual = DailyAir.of(MonthlyNormals.of(file));
        double[] departure = new double[CommonYear.DAYS];
        for (int i = 0; i < file.size(); i++) {
            departure[i / 24] += (file.relativeHumidityFraction(i) - usual.relativeHumidityFraction(i / 24))
                    / CommonYear.HOURS_A_DAY;
        }
        assertEquals(0.10, new StandardDeviation().evaluate(departure), 0.04, placeId);
        double memory = new PearsonsCorrelation()
                .correlation(
                        Arrays.copyOfRange(departure, 0, CommonYear.DAYS - 1),
                        Arrays.copyOfRange(departure, 1, CommonYear.DAYS));
        assertEquals(0.51, memory, 0.2, placeId);
    }

    private static AirSeries file(String placeId) {
        return EpwReader.read(Path.of(System.getProperty("hafthold.weather"), placeId + "_tmy3.epw"))
                .air();
    }

    private static void print(String placeId, String from, MonthlyMoisture made, MonthlyMoisture recorded) {
        StringBuilder line = new StringBuilder(String.format(
                Locale.ROOT,
                "%-13s %-12s year %5.2f recorded %5.2f difference %+.2f; months",
                placeId,
                from,
                made.yearPercent(),
                recorded.yearPercent(),
                made.yearPercent() - recorded.yearPercent()));
        for (int month = 1; month <= 12; month++) {
            line.append(String.format(Locale.ROOT, " %+.2f", made.percent(month) - recorded.percent(month)));
        }
        System.out.println(line);
    }
}
