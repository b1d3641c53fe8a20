package hafthold.numeric;

/**
 * Many tridiagonal systems of one size, each in a lane of its own: entry (row, lane). What is done to a row is done to
 * all lanes in one short loop, which the compiler turns into vector instructions.
 *
 * <p>There is no pivoting: each matrix must be diagonally dominant by rows or by columns, as diffusion matrices are.
 */
public final class TridiagonalLanes {
    private final int size;
    private final double[][] lower;
    private final double[][] inverse;
    private final double[][] outwards;

    /**
     * Room for systems.
     *
     * @param size unknowns of each, 2 or more
     * @param width most lanes
     */
    public TridiagonalLanes(int size, int width) {
        if (size < 2) {
            throw new IllegalArgumentException("a tridiagonal system has 2 unknowns or more, got " + size);
        }
        this.size = size;
        lower = new double[size][];
        inverse = new double[size][width];
        outwards = new double[size][width];
    }

    /**
     * Factors the matrices.
     *
     * @param lowerRows entry i is row i + 1, column i; kept, so it must be left alone while systems are solved
     * @param diagonal one row of lanes a row
     * @param upper entry i is row i, column i + 1
     * @param lanes how many lanes are in use
     */
    public void factor(double[][] lowerRows, double[][] diagonal, double[][] upper, int lanes) {
        System.arraycopy(lowerRows, 0, lower, 0, size - 1);
        invert(diagonal[0], inverse[0], lanes);
        for (int i = 1; i < size; i++) {
            multiply(upper[i - 1], inverse[i - 1], outwards[i - 1], lanes);
            invertRest(diagonal[i], lower[i - 1], outwards[i - 1], inverse[i], lanes);
        }
    }

    /** Replaces right-hand sides by the solutions. */
    public void solve(double[][] x, int lanes) {
        multiply(x[0], inverse[0], x[0], lanes);
        for (int i = 1; i < size; i++) {
            eliminate(x[i], lower[i - 1], x[i - 1], inverse[i], lanes);
        }
        for (int i = size - 2; i >= 0; i--) {
            substitute(x[i], outwards[i], x[i + 1], lanes);
        }
    }

    private static void invert(double[] value, double[] inverse, int lanes) {
        for (int s = 0; s < lanes; s++) {
            inverse[s] = 1 / value[s];
        }
    }

    private static void invertRest(double[] value, double[] factor, double[] less, double[] inverse, int lanes) {
        for (int s = 0; s < lanes; s++) {
            inverse[s] = 1 / (value[s] - factor[s] * less[s]);
        }
    }

    private static void multiply(double[] value, double[] factor, double[] product, int lanes) {
        for (int s = 0; s < lanes; s++) {
            product[s] = value[s] * factor[s];
        }
    }

    private static void eliminate(double[] x, double[] lower, double[] before, double[] inverse, int lanes) {
        for (int s = 0; s < lanes; s++) {
            x[s] = (x[s] - lower[s] * before[s]) * inverse[s];
        }
    }

    private static void substitute(double[] x, double[] outwards, double[] after, int lanes) {
        for (int s = 0; s < lanes; s++) {
            x[s] -= outwards[s] * after[s];
        }
    }
}
