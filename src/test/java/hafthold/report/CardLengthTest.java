package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.quantity.Band;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sheet of paper is 0.1 mm, a fingernail 0.5 mm (common practice), a bank card 0.76 mm (ISO/IEC 7810, from memory). */
class CardLengthTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.00 | nothing you can feel",
                "0.02 | nothing you can feel",
                "0.03 | half a sheet of paper",
                "0.10 | one sheet of paper",
                "0.15 | one and a half sheets of paper",
                "0.22 | two sheets of paper",
                "0.32 | three sheets of paper",
                "0.50 | the thickness of a fingernail",
                "0.76 | the thickness of a bank card",
                "1.50 | as thick as 2 bank cards"
            })
    void likensASizeToAThingAsThick(double millimetres, String thing) {
        assertEquals(
                thing,
                CardLength.exact(millimetres / 1000, LengthUnits.MM, Wording.english())
                        .thing());
    }

    @ParameterizedTest
    @CsvSource({"MM,0.15 mm", "THOU,6 thou", "BOTH,0.15 mm or 6 thou"})
    void speaksTheUnitsAskedFor(LengthUnits units, String words) {
        assertEquals(words, new CardLength(new Band(0.145e-3, 0.15e-3, 0.155e-3), units, Wording.english()).number());
    }
}
