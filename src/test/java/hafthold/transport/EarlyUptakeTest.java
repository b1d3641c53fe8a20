package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class EarlyUptakeTest {
    private static final double WIDTH = 25.4e-3;
    private static final double LENGTH = 76.2e-3;
    private static final double DAY = 86_400;
    private static final double THIN = 1.59e-3;
    private static final double MIDDLE = 3.18e-3;
    private static final double THICK = 12.7e-3;

    /**
     * Two diffusivities fitted to the limits of the thin and the thick plate; source and tolerance stand above the table.
     * Msat is taken as 100 % here: only Ms sqrt(D) counts.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "plate-absorption.csv", commentCharacter = '#', useHeadersInDisplayName = true)
    void twoThicknessesOfALaminateForetellTheThird(String grade, double thin, double middle, double thick) {
        double perRootDay = 4 / Math.sqrt(Math.PI) * Math.sqrt(DAY);
        double faces = (thin - thick) / 100 / perRootDay / (1 / THIN - 1 / THICK);
        double edges = (thick / 100 / perRootDay - faces / THICK) / (1 / WIDTH + 1 / LENGTH);
        double share = EarlyUptake.share(MIDDLE, WIDTH, LENGTH, faces * faces, edges * edges, DAY);
        assertEquals(1, 100 * share / middle, 0.15, grade);
        double withoutEdges = thin * THIN / MIDDLE;
        assertTrue(Math.abs(withoutEdges / middle - 1) > Math.abs(100 * share / middle - 1), grade);
    }

    /** One face of a sheet, early: half of what a plate open on both sides takes up by its faces. */
    @Test
    void theSolverStartsAsTheRootOfTime() {
        double step = 1e-4;
        MoistureHistory history = TransientMoisture.from(
                Sheet.withFilm(Sheet.NO_FILM),
                new double[] {0},
                Sheet.constantAir(1, step * Sheet.UNIT_SECONDS, 401),
                0,
                Sheet.SATURATION,
                Sheet.FINE);
        for (int sample : new int[] {50, 100, 400}) {
            double share = EarlyUptake.share(
                    2 * Sheet.THICKNESS,
                    1e6,
                    1e6,
                    Sheet.DIFFUSIVITY,
                    Sheet.DIFFUSIVITY,
                    sample * step * Sheet.UNIT_SECONDS);
            assertEquals(share, history.meanFraction(sample) / Sheet.HENRY, 1e-4);
        }
    }

    @Test
    void sizesThatAreNoSizesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> EarlyUptake.share(0, 1, 1, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> EarlyUptake.share(1, 1, 1, 1, 1, -1));
    }
}
