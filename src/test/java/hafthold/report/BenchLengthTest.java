package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.quantity.Band;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchLengthTest {

    @ParameterizedTest
    @CsvSource({
        // low, value, high, printed value, printed range
        "0.163, 0.213, 0.263, 0.2, 0.15–0.25",
        "0.18, 0.213, 0.25, 0.21, 0.18–0.25",
        "0.213, 0.213, 0.213, 0.21, ''",
        "0.15, 0.2, 0.25, 0.2, 0.15–0.25",
        "0.17, 0.24, 0.33, 0.2, 0.15–0.35",
        "0, 0, 0, 0.00, ''",
        "0.002, 0.004, 0.008, 0.00, 0.00–0.01",
        "0.20, 1.12, 3.00, 1, 0.0–3.0",
        "0.03, 0.09, 0.16, 0.1, 0.05–0.15",
        "0.10, 0.26, 0.27, 0.3, 0.10–0.30",
    })
    void printsNoMoreDigitsThanTheBandDeserves(double low, double value, double high, String printed, String range) {
        BenchLength length = new BenchLength(new Band(low, value, high).times(1e-3));
        assertEquals(printed, length.millimetres().toPlainString());
        assertEquals(range, length.range(BenchStyle.ENGLISH));
    }

    @Test
    void givesThouBesideMillimetres() {
        BenchLength length = new BenchLength(new Band(0.16e-3, 0.213e-3, 0.263e-3));
        assertEquals(
                "0.2 mm (8 thou)", Paragraph.plain(length.text(new BenchStyle(LengthUnits.BOTH, Wording.english()))));
        assertEquals("0.2 mm", Paragraph.plain(length.text(BenchStyle.ENGLISH)));
        assertEquals("<1", new BenchLength(Band.exact(0.011e-3)).thou());
    }

    @Test
    void callsNothingOnlyWhatEvenTheUpperEndPrintsAsNothing() {
        assertTrue(new BenchLength(new Band(0, 1e-6, 4e-6)).isNothing());
        assertFalse(new BenchLength(new Band(0, 4e-6, 40e-6)).isNothing());
        assertTrue(new BenchLength(new Band(0, 4e-6, 40e-6)).isZero());
    }
}
