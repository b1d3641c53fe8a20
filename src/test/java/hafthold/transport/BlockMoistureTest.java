package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A block against the closed solutions for sheets, and against products of them. */
class BlockMoistureTest {
    private static final double HALF = 0.01;
    private static final double FILM_TOLERANCE = 1e-4;
    /** Six modes leave the first hour of a bare sheet open: ours, of the step. */
    private static final double EARLY_TOLERANCE = 2e-3;

    private static final SheetModes CLOSED = SheetModes.closed();

    /** Crank 1975, equations 4.50 and 4.53: a sheet behind a film, sealed in both other directions. */
    @Test
    void aSheetBehindAFilmTakesUpWhatTheSeriesSays() {
        BenchTable table = BenchTable.read("/hafthold/transport/film-uptake.csv");
        int rows = 0;
        for (int row = 0; row < table.size(); row++) {
            double biot = table.number(row, "biot");
            double fourier = table.number(row, "fourier_number");
            BlockMoisture block = new BlockMoisture(SheetModes.open(HALF, biot, 1), CLOSED, CLOSED, 0);
            block.meet(1);
            block.pass(fourier * HALF * HALF);
            double tolerance = fourier < 0.05 ? EARLY_TOLERANCE : FILM_TOLERANCE;
            assertEquals(table.number(row, "uptake"), block.meanFraction(), tolerance, biot + " " + fourier);
            assertEquals(table.number(row, "c_sealed"), block.coreFraction(), tolerance, biot + " " + fourier);
            rows++;
        }
        assertTrue(rows > 20);
    }

    /** Crank 1975, equations 4.17 and 4.18, by a film that hardly counts; late enough for six modes. */
    @Test
    void aBareSheetTakesUpWhatTheSeriesSays() {
        BenchTable table = BenchTable.read("/hafthold/transport/step-uptake.csv");
        for (int row = 0; row < table.size(); row++) {
            double fourier = table.number(row, "fourier_number");
            if (fourier >= 0.02) {
                BlockMoisture block = new BlockMoisture(SheetModes.open(HALF, 1e6, 1), CLOSED, CLOSED, 0);
                block.meet(1);
                block.pass(fourier * HALF * HALF);
                assertEquals(table.number(row, "uptake"), block.meanFraction(), EARLY_TOLERANCE, "at " + fourier);
                assertEquals(table.number(row, "c_0"), block.coreFraction(), EARLY_TOLERANCE, "at " + fourier);
            }
        }
    }

    /** Newman 1931: what is still to come in a block is the product of what is in its three sheets. */
    @Test
    void aBlockIsTheProductOfItsSheets() {
        SheetModes thick = SheetModes.open(0.012, 20, 1);
        SheetModes wide = SheetModes.open(0.02, 12, 1.5);
        SheetModes along = SheetModes.open(0.07, 9, 15);
        for (double diffused : new double[] {1e-6, 1e-5, 5e-5, 2e-4}) {
            double mean = 1;
            double core = 1;
            for (SheetModes sheet : new SheetModes[] {thick, wide, along}) {
                BlockMoisture one = new BlockMoisture(sheet, CLOSED, CLOSED, 1);
                one.meet(0);
                one.pass(diffused);
                mean *= one.meanFraction();
                core *= one.coreFraction();
            }
            BlockMoisture block = new BlockMoisture(thick, wide, along, 1);
            block.meet(0);
            block.pass(diffused);
            assertEquals(mean, block.meanFraction(), 1e-12);
            assertEquals(core, block.coreFraction(), 1e-12);
        }
    }

    /** Superposition: a course through two airs is the sum of the courses through each change. */
    @Test
    void changesOneAfterAnotherAddUp() {
        BlockMoisture block = cube(0.10);
        block.meet(0.14);
        block.pass(2e-5);
        block.meet(0.08);
        block.pass(3e-5);
        BlockMoisture first = cube(0.10);
        first.meet(0.14);
        first.pass(5e-5);
        BlockMoisture second = cube(0);
        second.meet(-0.06);
        second.pass(3e-5);
        assertEquals(first.meanFraction() + second.meanFraction(), block.meanFraction(), 1e-12);
        assertEquals(first.coreFraction() + second.coreFraction(), block.coreFraction(), 1e-12);
    }

    @Test
    void itStartsInBalanceAndEndsInBalance() {
        BlockMoisture block = cube(0.2);
        assertEquals(0.2, block.meanFraction(), 0);
        block.meet(0.1);
        assertEquals(0.2, block.meanFraction(), 1e-12);
        assertEquals(0.2, block.coreFraction(), 1e-12);
        BlockMoisture other = block.copy();
        other.pass(1);
        assertEquals(0.1, other.meanFraction(), 1e-12);
        assertEquals(0.2, block.meanFraction(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> SheetModes.open(0, 1, 1));
    }

    private static BlockMoisture cube(double moisture) {
        SheetModes side = SheetModes.open(0.015, 15, 1);
        return new BlockMoisture(side, side, side, moisture);
    }
}
