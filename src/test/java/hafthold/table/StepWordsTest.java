package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.MeasuringPoint;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Signs by the trade's words (common practice, no source): proud stands above, shy lies below. */
class StepWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EDGES | 0.2 mm proud | 0.2",
                "EDGES | proud by 0.2 mm | 0.2",
                "EDGES | 0.2 mm shy | -0.2",
                "EDGES | Shy 8 thou | -0.2032",
                "EDGES | tang proud 0.2 mm all round | -0.2",
                "EDGES | steel 0.2 mm shy | 0.2",
                "EDGES | -0.2 mm | -0.2",
                "EDGES | +0.2 mm | 0.2",
                "EDGE_LEFT | flush | 0",
                "PIN_HEADS | 0.05 mm sunk | -0.05",
                "PIN_HEADS | 0.05 mm proud | 0.05",
                "ENDS | short by 0.3 mm | -0.3",
                "PIN_GAP | 0.1 mm | 0.1",
                "PIN_GAP | none | 0",
            })
    void readsWhatPeopleSay(MeasuringPoint point, String typed, double millimetres) {
        assertEquals(millimetres, StepWords.read(point, typed).orElseThrow().millimetres(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EDGES | 0.2 mm",
                "EDGES | 0.2 proud",
                "EDGES | proud",
                "EDGES | 0.2 mm proud shy",
                "EDGES | -0.2 mm shy",
                "EDGES | 0.2 mm wide",
                "EDGES | 0.2 mm shy all round the tang",
                "ENDS | 0.2 mm shy by the bolster",
                "PIN_GAP | -0.1 mm",
                "PIN_GAP | 0.1 mm proud",
            })
    void whatIsNotClearIsNotGuessed(MeasuringPoint point, String typed) {
        assertTrue(StepWords.read(point, typed).isEmpty(), typed);
    }
}
