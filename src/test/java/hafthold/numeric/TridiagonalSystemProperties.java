package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

class TridiagonalSystemProperties {

    /** Against the dense LU decomposition of Commons Math. */
    @Property
    void solvesEveryDominantSystemAsADenseSolverDoes(@ForAll @IntRange(min = 2, max = 30) int size, @ForAll long seed) {
        Random random = new Random(seed);
        double[] lower = random.doubles(size - 1, -1, 1).toArray();
        double[] upper = random.doubles(size - 1, -1, 1).toArray();
        double[] diagonal = random.doubles(size, 2.1, 5).toArray();
        double[] rhs = random.doubles(size, -1, 1).toArray();
        Array2DRowRealMatrix dense = new Array2DRowRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            dense.setEntry(i, i, diagonal[i]);
            if (i > 0) {
                dense.setEntry(i, i - 1, lower[i - 1]);
                dense.setEntry(i - 1, i, upper[i - 1]);
            }
        }
        double[] expected = new LUDecomposition(dense)
                .getSolver()
                .solve(new ArrayRealVector(rhs))
                .toArray();
        TridiagonalSystem system = new TridiagonalSystem(size);
        system.factor(lower, diagonal, upper);
        system.solve(rhs);
        assertArrayEquals(expected, rhs, 1e-12);
    }

    @Example
    void oneUnknownIsNoSystem() {
        assertThrows(IllegalArgumentException.class, () -> new TridiagonalSystem(1));
    }
}
