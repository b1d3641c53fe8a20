package hafthold.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.HailwoodHorrobinIsotherm;
import hafthold.material.SorptionIsotherm;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Wood Handbook, Table 13-1 (FPL-RN-0268): outdoor equilibrium moisture content of wood in cities of the United States,
 * FROM MEMORY. The table is worked out from monthly means, so monthly means are compared. Its decades and stations are
 * others and our humidity is that of one typical year (6 points of humidity a month are about 2 of moisture), so this is
 * a loose check of the climate: 2.5 points of moisture in any month, 1 over the year.
 */
class OutdoorMoistureTest {
    private static final SorptionIsotherm WOOD = new HailwoodHorrobinIsotherm();
    private static final List<String[]> TABLE = Fixture.rows("outdoor-emc-us.csv");

    static List<String> cities() {
        return TABLE.stream().map(row -> row[0]).toList();
    }

    @ParameterizedTest
    @MethodSource("cities")
    void woodInMeanOutdoorAirHoldsAboutWhatTheHandbookSays(String placeId) {
        MonthlyNormals normals = Fixture.normals(placeId);
        String[] printed =
                TABLE.stream().filter(row -> row[0].equals(placeId)).findFirst().orElseThrow();
        double difference = 0;
        for (int i = 0; i < 12; i++) {
            double found = 100
                    * WOOD.moistureFraction(
                            normals.relativeHumidityFraction().get(i),
                            normals.meanCelsius().get(i));
            double percent = Double.parseDouble(printed[i + 1]);
            assertEquals(percent, found, 2.5, placeId + " month " + (i + 1));
            difference += (found - percent) / 12;
        }
        assertEquals(0, difference, 1.0, placeId);
    }

    /** Humidity swings against temperature and the sorption curve is hollow upwards, so hours hold more than their mean. */
    @ParameterizedTest
    @MethodSource("cities")
    void hoursHoldMoreThanTheirMean(String placeId) {
        MonthlyNormals normals = Fixture.normals(placeId);
        double ofMeans = 0;
        for (int i = 0; i < 12; i++) {
            ofMeans += WOOD.moistureFraction(
                            normals.relativeHumidityFraction().get(i),
                            normals.meanCelsius().get(i))
                    * 100
                    / 12;
        }
        double ofHours = MonthlyMoisture.of(ReferenceYear.of(normals), WOOD).yearPercent();
        assertTrue(ofHours > ofMeans + 0.2, placeId + ": " + ofHours + " against " + ofMeans);
    }
}
