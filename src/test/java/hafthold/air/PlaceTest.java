package hafthold.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlaceTest {
    private static final MonthlyNormals NORMALS = Fixture.normals("yakutsk");

    @Test
    void humidityDerivedFromVapourPressureIsDoubtfulInFrost() {
        HumidityKind derived = HumidityKind.of("derived_from_vapour_pressure").orElseThrow();
        assertEquals(2, derived.uncertaintyPoints(5));
        assertEquals(4, derived.uncertaintyPoints(-10));
        assertEquals(8, derived.uncertaintyPoints(-37));
        assertEquals(6, HumidityKind.TYPICAL_YEAR.uncertaintyPoints(-37));
        assertTrue(HumidityKind.of("guessed").isEmpty());
        assertEquals(8, place("x", 62, derived).humidityUncertaintyPoints());
    }

    @Test
    void aPlaceOffTheGlobeOrWithoutANameIsRefused() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> place("x", 91, HumidityKind.PUBLISHED))
                .getMessage()
                .startsWith("x lies off the globe"));
        assertThrows(IllegalArgumentException.class, () -> place(" ", 62, HumidityKind.PUBLISHED));
    }

    @Test
    void normalsOutOfOrderNameTheirMonth() {
        List<Double> swapped = new ArrayList<>(NORMALS.meanMinimumCelsius());
        swapped.set(6, 30.0);
        assertTrue(assertThrows(
                        IllegalArgumentException.class,
                        () -> new MonthlyNormals(
                                NORMALS.meanCelsius(),
                                NORMALS.meanMaximumCelsius(),
                                swapped,
                                NORMALS.relativeHumidityFraction()))
                .getMessage()
                .startsWith("month 7 needs"));
        List<Double> percent = new ArrayList<>(NORMALS.relativeHumidityFraction());
        percent.set(1, 55.0);
        assertTrue(assertThrows(
                        IllegalArgumentException.class,
                        () -> new MonthlyNormals(
                                NORMALS.meanCelsius(),
                                NORMALS.meanMaximumCelsius(),
                                NORMALS.meanMinimumCelsius(),
                                percent))
                .getMessage()
                .startsWith("month 2 needs a relative humidity"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new MonthlyNormals(
                        List.of(1.0),
                        NORMALS.meanMaximumCelsius(),
                        NORMALS.meanMinimumCelsius(),
                        NORMALS.relativeHumidityFraction()));
    }

    /** Found by AirProperties: rounding put the mean of days without a swing a hair below their minimum. */
    @Test
    void aYearWithoutDailySwingHasNormalsAllTheSame() {
        double[] temperature = new double[CommonYear.HOURS];
        double[] humidity = new double[CommonYear.HOURS];
        Arrays.fill(temperature, 0.1);
        Arrays.fill(humidity, 1);
        MonthlyNormals normals = MonthlyNormals.of(new AirSeries(3600, temperature, humidity));
        assertEquals(0.1, normals.meanMinimumCelsius().get(2), 1e-12);
        assertEquals(1, normals.relativeHumidityFraction().get(2), 1e-12);
    }

    @Test
    void onlyAWholeYearHasNormals() {
        assertThrows(
                IllegalArgumentException.class,
                () -> MonthlyNormals.of(new AirSeries(3600, new double[24], new double[24])));
    }

    private static Place place(String id, double latitude, HumidityKind kind) {
        return new Place(
                id, "Yakutsk", "Russia", "cold", "Dfd", latitude, 129.7, 98, NORMALS, kind, "a-source", "a-source", "");
    }
}
