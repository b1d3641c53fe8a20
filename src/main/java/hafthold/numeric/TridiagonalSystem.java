package hafthold.numeric;

/**
 * A tridiagonal system, factored once and solved for many right-hand sides without allocation.
 *
 * <p>Rows are eliminated from both ends towards the middle and filled in again outwards, so that the processor works on
 * two short chains side by side instead of one long one. There is no pivoting: the matrix must be diagonally dominant,
 * as diffusion matrices are.
 */
public final class TridiagonalSystem {
    private final int size;
    private final int middle;
    private final double[] pivot;
    private final double[] inverse;
    private final double[] inwards;
    private final double[] outwards;

    /** Room for a system of {@code size} unknowns, 2 or more. */
    public TridiagonalSystem(int size) {
        if (size < 2) {
            throw new IllegalArgumentException("a tridiagonal system has 2 unknowns or more, got " + size);
        }
        this.size = size;
        middle = size / 2;
        pivot = new double[size];
        inverse = new double[size];
        inwards = new double[size];
        outwards = new double[size];
    }

    /**
     * Factors the matrix.
     *
     * @param lower entry i is row i + 1, column i
     * @param diagonal one entry a row
     * @param upper entry i is row i, column i + 1
     */
    public void factor(double[] lower, double[] diagonal, double[] upper) {
        System.arraycopy(diagonal, 0, pivot, 0, size);
        for (int i = 0; i < middle; i++) {
            double inv = 1 / pivot[i];
            inverse[i] = inv;
            inwards[i] = lower[i] * inv;
            outwards[i] = upper[i] * inv;
            pivot[i + 1] -= inwards[i] * upper[i];
        }
        for (int i = size - 1; i > middle; i--) {
            double inv = 1 / pivot[i];
            inverse[i] = inv;
            inwards[i] = upper[i - 1] * inv;
            outwards[i] = lower[i - 1] * inv;
            pivot[i - 1] -= inwards[i] * lower[i - 1];
        }
        inverse[middle] = 1 / pivot[middle];
    }

    /** Replaces a right-hand side by the solution. */
    public void solve(double[] x) {
        double fromStart = 0;
        for (int i = 0; i < middle; i++) {
            double value = x[i] - fromStart;
            fromStart = inwards[i] * value;
            x[i] = value * inverse[i];
        }
        double fromEnd = 0;
        for (int i = size - 1; i > middle; i--) {
            double value = x[i] - fromEnd;
            fromEnd = inwards[i] * value;
            x[i] = value * inverse[i];
        }
        double centre = (x[middle] - fromStart - fromEnd) * inverse[middle];
        x[middle] = centre;
        double neighbour = centre;
        for (int i = middle - 1; i >= 0; i--) {
            neighbour = x[i] - outwards[i] * neighbour;
            x[i] = neighbour;
        }
        neighbour = centre;
        for (int i = middle + 1; i < size; i++) {
            neighbour = x[i] - outwards[i] * neighbour;
            x[i] = neighbour;
        }
    }
}
