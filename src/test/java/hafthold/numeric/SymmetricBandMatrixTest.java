package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SymmetricBandMatrixTest {

    /** Against the dense Cholesky decomposition of Commons Math. */
    @ParameterizedTest
    @CsvSource({"1, 0, 1", "7, 0, 2", "12, 11, 3", "60, 9, 4", "200, 33, 1"})
    void solvesLikeADenseDecomposition(int size, int halfBandwidth, int columns) {
        Random random = new Random(42 + size);
        SymmetricBandMatrix band = new SymmetricBandMatrix(size, halfBandwidth);
        RealMatrix dense = new Array2DRowRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            for (int j = Math.max(0, i - halfBandwidth); j <= i; j++) {
                double value = i == j ? 2 * halfBandwidth + 1 : random.nextDouble() - 0.5;
                band.add(j, i, value);
                dense.setEntry(i, j, value);
                dense.setEntry(j, i, value);
            }
        }
        double[] right = random.doubles((long) size * columns).toArray();
        RealMatrix denseRight = new Array2DRowRealMatrix(size, columns);
        for (int i = 0; i < right.length; i++) {
            denseRight.setEntry(i / columns, i % columns, right[i]);
        }
        RealMatrix expected = new CholeskyDecomposition(dense).getSolver().solve(denseRight);
        band.factor().solve(right, columns);
        for (int column = 0; column < columns; column++) {
            double[] got = new double[size];
            for (int i = 0; i < size; i++) {
                got[i] = right[i * columns + column];
            }
            assertArrayEquals(expected.getColumn(column), got, 1e-13);
        }
    }

    @Test
    void saysWhereAPartIsLoose() {
        SymmetricBandMatrix loose = new SymmetricBandMatrix(2, 1);
        loose.add(0, 0, 1);
        loose.add(1, 0, 1);
        loose.add(1, 1, 1);
        ArithmeticException thrown = assertThrows(ArithmeticException.class, loose::factor);
        assertTrue(thrown.getMessage().contains("row 1"));
    }

    @Test
    void refusesWrongUse() {
        assertThrows(IllegalArgumentException.class, () -> new SymmetricBandMatrix(3, 3));
        SymmetricBandMatrix matrix = new SymmetricBandMatrix(3, 1);
        assertThrows(IllegalArgumentException.class, () -> matrix.add(0, 2, 1));
        assertThrows(IllegalStateException.class, () -> matrix.solve(new double[3], 1));
        for (int i = 0; i < 3; i++) {
            matrix.add(i, i, 1);
        }
        matrix.factor();
        assertThrows(IllegalStateException.class, matrix::factor);
        assertThrows(IllegalArgumentException.class, () -> matrix.solve(new double[4], 1));
    }
}
