package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.SaturatedSalt;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SaltTableTest {
    private static final List<SaturatedSalt> SALTS = SaltTable.read(TableSet.builtIn());

    /**
     * An independent measurement: Wexler and Hasegawa 1954, Journal of Research of the National Bureau of Standards
     * 53(1), research paper 2512, abstract (read): sodium chloride 74.9, 75.6 and 74.7 % at 0, 30 and 50 C. Within 0.9.
     */
    @ParameterizedTest
    @CsvSource({"5, 74.9", "30, 75.6", "50, 74.7"})
    void tableSaltIsWhatTheDewpointMethodFound(double celsius, double percent) {
        assertEquals(percent, percent("sodium-chloride", celsius), 0.9);
    }

    /**
     * RH = A exp(B/T), T in kelvin, of a handbook of chemistry (table of constant humidity solutions, after Wexler and
     * Seinfeld 1991; read; stated accurate to 2 %), at the middle of the range each is stated for.
     */
    @ParameterizedTest
    @CsvSource({
        "magnesium-chloride, 29.26, 34, 25",
        "magnesium-nitrate, 25.28, 220, 20",
        "sodium-bromide, 20.49, 308, 20",
        "potassium-iodide, 29.35, 254, 20",
        "sodium-chloride, 69.20, 25, 25",
        "potassium-chloride, 49.38, 159, 15"
    })
    void handbookConstantsSayTheSame(String id, double a, double b, double celsius) {
        assertEquals(a * Math.exp(b / (celsius + 273.15)), percent(id, celsius), 2);
    }

    /** Between the temperatures of the table on straight lines, beyond them as at its ends. */
    @Test
    void betweenTemperaturesItLiesBetween() {
        assertEquals((33.3 + 33.07) / 2, percent("magnesium-chloride", 17.5), 1e-9);
        assertEquals(percent("magnesium-chloride", 5), percent("magnesium-chloride", -10), 0);
    }

    /** What burns, bites or is a drug is never recommended (common practice, no source). */
    @Test
    void onlyThreeAreHarmless() {
        assertEquals(
                List.of("magnesium-chloride", "sodium-chloride", "potassium-chloride"),
                SALTS.stream()
                        .filter(SaturatedSalt::isHarmless)
                        .map(SaturatedSalt::id)
                        .toList());
        assertTrue(SALTS.size() >= 7);
    }

    private static double percent(String id, double celsius) {
        return 100
                * SALTS.stream()
                        .filter(salt -> salt.id().equals(id))
                        .findFirst()
                        .orElseThrow()
                        .humidityFraction(celsius)
                        .value();
    }
}
