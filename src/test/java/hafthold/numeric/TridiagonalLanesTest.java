package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Systems side by side, against the dense solver of Commons Math. */
class TridiagonalLanesTest {
    private static final int SIZE = 11;
    private static final int LANES = 5;

    @Test
    void everyLaneIsSolvedAsByADenseSolver() {
        Random random = new Random(4);
        double[][] lower = rows(random, SIZE - 1, 0);
        double[][] diagonal = rows(random, SIZE, 3);
        double[][] upper = rows(random, SIZE - 1, 0);
        double[][] x = rows(random, SIZE, 0);
        RealMatrix[] matrix = new RealMatrix[LANES];
        double[][] right = new double[LANES][SIZE];
        for (int lane = 0; lane < LANES; lane++) {
            matrix[lane] = new Array2DRowRealMatrix(SIZE, SIZE);
            for (int i = 0; i < SIZE; i++) {
                matrix[lane].setEntry(i, i, diagonal[i][lane]);
                right[lane][i] = x[i][lane];
                if (i < SIZE - 1) {
                    matrix[lane].setEntry(i + 1, i, lower[i][lane]);
                    matrix[lane].setEntry(i, i + 1, upper[i][lane]);
                }
            }
        }
        TridiagonalLanes lanes = new TridiagonalLanes(SIZE, LANES);
        lanes.factor(lower, diagonal, upper, LANES);
        lanes.solve(x, LANES);
        for (int lane = 0; lane < LANES; lane++) {
            double[] dense = new LUDecomposition(matrix[lane])
                    .getSolver()
                    .solve(new Array2DRowRealMatrix(right[lane]))
                    .getColumn(0);
            for (int i = 0; i < SIZE; i++) {
                assertEquals(dense[i], x[i][lane], 1e-13);
            }
        }
    }

    @Test
    void oneUnknownIsNoSystem() {
        assertThrows(IllegalArgumentException.class, () -> new TridiagonalLanes(1, 4));
    }

    private static double[][] rows(Random random, int rows, double shift) {
        double[][] values = new double[rows][LANES];
        for (double[] row : values) {
            for (int lane = 0; lane < LANES; lane++) {
                row[lane] = shift + random.nextDouble();
            }
        }
        return values;
    }
}
