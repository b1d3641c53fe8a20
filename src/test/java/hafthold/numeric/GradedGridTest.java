package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class GradedGridTest {

    @Test
    void theLastGapIsTheOneAskedForAndGapsShrinkTowardsIt() {
        GradedGrid grid = GradedGrid.of(8e-3, 14, 1e-4);
        double[] gaps = grid.gaps();
        assertEquals(1e-4, gaps[13], 1e-15);
        assertEquals(8e-3, grid.thickness(), 0);
        assertEquals(8e-3, Arrays.stream(gaps).sum(), 1e-16);
        for (int i = 1; i < gaps.length; i++) {
            assertTrue(gaps[i] < gaps[i - 1]);
        }
        assertTrue(grid.steepestRatio() < 1.4);
    }

    @Test
    void aWideFinestGapGivesAnEvenGrid() {
        assertArrayEquals(new double[] {0, 1, 2, 3, 4}, GradedGrid.of(4, 4, 5).positions(), 1e-15);
    }

    @Test
    void meansOfSmoothProfilesThatAreLevelAtTheStartComeOutRight() {
        GradedGrid grid = GradedGrid.of(1, 14, 0.02);
        double from = 0.35;
        double to = 0.62;
        double[] weight = grid.meanWeights(from, to);
        double level = 0;
        double square = 0;
        double wave = 0;
        for (int i = 0; i < weight.length; i++) {
            double x = grid.position(i);
            level += weight[i];
            square += weight[i] * x * x;
            wave += weight[i] * Math.cos(2 * x);
        }
        assertEquals(1, level, 1e-13);
        assertEquals((to * to * to - from * from * from) / 3 / (to - from), square, 1e-13);
        assertEquals((Math.sin(2 * to) - Math.sin(2 * from)) / 2 / (to - from), wave, 5e-5);
    }

    @Test
    void sizesThatMakeNoGridAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> GradedGrid.of(0, 10, 1));
        assertThrows(IllegalArgumentException.class, () -> GradedGrid.of(1, 2, 1));
        assertThrows(IllegalArgumentException.class, () -> GradedGrid.of(1, 10, 0));
    }
}
