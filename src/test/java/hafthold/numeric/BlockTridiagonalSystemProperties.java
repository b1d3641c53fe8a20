package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

class BlockTridiagonalSystemProperties {
    private static final int BLOCK = 4;

    @Property(tries = 200)
    void solvesAsGeneralEliminationDoes(@ForAll @IntRange(min = 2, max = 30) int size, @ForAll long seed) {
        Random random = new Random(seed);
        double[] lower = blocks(size - 1, random);
        double[] diagonal = blocks(size, random);
        double[] upper = blocks(size - 1, random);
        RealMatrix full = new Array2DRowRealMatrix(2 * size, 2 * size);
        for (int i = 0; i < size; i++) {
            diagonal[BLOCK * i] += 7;
            diagonal[BLOCK * i + 3] += 7;
            put(full, diagonal, i, i, i);
            if (i + 1 < size) {
                put(full, lower, i, i + 1, i);
                put(full, upper, i, i, i + 1);
            }
        }
        double[] x = random.doubles(2L * size, -1, 1).toArray();
        double[] expected = new LUDecomposition(full)
                .getSolver()
                .solve(new ArrayRealVector(x))
                .toArray();
        BlockTridiagonalSystem system = new BlockTridiagonalSystem(size);
        system.factor(lower, diagonal, upper);
        system.solve(x);
        assertArrayEquals(expected, x, 1e-12);
    }

    private static double[] blocks(int count, Random random) {
        return random.doubles((long) BLOCK * count, -1, 1).toArray();
    }

    private static void put(RealMatrix full, double[] blocks, int block, int row, int column) {
        for (int j = 0; j < BLOCK; j++) {
            full.setEntry(2 * row + j / 2, 2 * column + j % 2, blocks[BLOCK * block + j]);
        }
    }
}
