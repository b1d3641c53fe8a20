package hafthold.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    /** International inch: 25.4 mm exactly (ISO 80000-3:2019). */
    @ParameterizedTest
    @CsvSource({"8 mm, 8", "8mm, 8", "5/16 in, 7.9375", "0.3 in, 7.62", "3 thou, 0.0762", "1.5 cm, 15", "1/8\", 3.175"})
    void lengthsAreReadWithTheirUnit(String typed, double millimetres) {
        assertEquals(millimetres, Length.parse(typed).millimetres(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"20 C, 20", "70 F, 21.1111111111", "-40 F, -40", "293.15 K, 20", "20 °C, 20"})
    void temperaturesAreReadWithTheirUnit(String typed, double celsius) {
        assertEquals(celsius, Temperature.parse(typed).celsius(), 1e-9);
    }

    @Test
    void humidityIsReadInPercent() {
        assertEquals(0.5, RelativeHumidity.parse("50 %").fraction(), 0);
        assertEquals(0.5, RelativeHumidity.parse("50%").fraction(), 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"8", "8 furlongs", "mm", "", "eight mm", "8,5 mm", "1/0 in", "NaN mm", "1e3 mm"})
    void aTextThatIsNoLengthIsRefusedWithAnExample(String typed) {
        QuantityFormatException fault = assertThrows(QuantityFormatException.class, () -> Length.parse(typed));
        assertTrue(fault.getMessage().contains("\"8 mm\""), fault.getMessage());
    }

    @Test
    void aMissingUnitIsNamedAsSuch() {
        QuantityFormatException fault = assertThrows(QuantityFormatException.class, () -> Length.parse("8"));
        assertTrue(fault.getMessage().contains("the unit is missing"), fault.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"550 %", "-1 %", "50", "half"})
    void aHumidityOutsideZeroToHundredIsRefused(String typed) {
        assertThrows(QuantityFormatException.class, () -> RelativeHumidity.parse(typed));
    }

    @Test
    void nothingIsColderThanAbsoluteZero() {
        assertThrows(IllegalArgumentException.class, () -> new Temperature(-273.15));
    }

    @Test
    void aBandKeepsItsOrder() {
        assertThrows(IllegalArgumentException.class, () -> new Band(2, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> new Band(1, Double.NaN, 3));
        assertTrue(Band.exact(1).isExact());
        assertEquals(new Band(2, 4, 6), new Band(1, 2, 3).times(2));
    }
}
