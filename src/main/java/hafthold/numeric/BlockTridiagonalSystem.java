package hafthold.numeric;

/**
 * A tridiagonal system whose entries are 2 x 2 blocks, factored once and solved for many right-hand sides without
 * allocation: block elimination from the first row to the last (Golub and Van Loan, Matrix Computations, section 4.5.1).
 *
 * <p>Blocks lie in flat arrays, four numbers each, row by row. Pivots are sought inside no block but the diagonal one,
 * which diffusion of two coupled quantities allows.
 */
public final class BlockTridiagonalSystem {
    private static final int BLOCK = 4;

    private final int size;
    private final double[] below;
    private final double[] inverse;
    private final double[] onwards;

    /** Room for {@code size} pairs of unknowns, 2 or more. */
    public BlockTridiagonalSystem(int size) {
        if (size < 2) {
            throw new IllegalArgumentException("a tridiagonal system has 2 rows of blocks or more, got " + size);
        }
        this.size = size;
        below = new double[BLOCK * (size - 1)];
        inverse = new double[BLOCK * size];
        onwards = new double[BLOCK * (size - 1)];
    }

    /**
     * Factors the matrix.
     *
     * @param lower block i is row i + 1, column i
     * @param diagonal one block a row
     * @param upper block i is row i, column i + 1
     * @throws ArithmeticException when a diagonal block turns out singular
     */
    public void factor(double[] lower, double[] diagonal, double[] upper) {
        System.arraycopy(lower, 0, below, 0, below.length);
        invert(0, diagonal[0], diagonal[1], diagonal[2], diagonal[3]);
        for (int b = 0; b < below.length; b += BLOCK) {
            for (int r = b; r < b + BLOCK; r += 2) {
                onwards[r] = inverse[r] * upper[b] + inverse[r + 1] * upper[b + 2];
                onwards[r + 1] = inverse[r] * upper[b + 1] + inverse[r + 1] * upper[b + 3];
            }
            int d = b + BLOCK;
            invert(
                    d,
                    diagonal[d] - lower[b] * onwards[b] - lower[b + 1] * onwards[b + 2],
                    diagonal[d + 1] - lower[b] * onwards[b + 1] - lower[b + 1] * onwards[b + 3],
                    diagonal[d + 2] - lower[b + 2] * onwards[b] - lower[b + 3] * onwards[b + 2],
                    diagonal[d + 3] - lower[b + 2] * onwards[b + 1] - lower[b + 3] * onwards[b + 3]);
        }
    }

    private void invert(int at, double a, double b, double c, double d) {
        double determinant = a * d - b * c;
        if (determinant == 0 || Double.isNaN(determinant)) {
            throw new ArithmeticException("block " + at / BLOCK + " of a tridiagonal system is singular");
        }
        inverse[at] = d / determinant;
        inverse[at + 1] = -b / determinant;
        inverse[at + 2] = -c / determinant;
        inverse[at + 3] = a / determinant;
    }

    /** Replaces a right-hand side, two numbers a row, by the solution. */
    public void solve(double[] x) {
        for (int i = 0; i < size; i++) {
            int b = BLOCK * (i - 1);
            double first = x[2 * i];
            double second = x[2 * i + 1];
            if (i > 0) {
                first -= below[b] * x[2 * i - 2] + below[b + 1] * x[2 * i - 1];
                second -= below[b + 2] * x[2 * i - 2] + below[b + 3] * x[2 * i - 1];
            }
            int d = BLOCK * i;
            x[2 * i] = inverse[d] * first + inverse[d + 1] * second;
            x[2 * i + 1] = inverse[d + 2] * first + inverse[d + 3] * second;
        }
        for (int i = size - 2; i >= 0; i--) {
            int b = BLOCK * i;
            x[2 * i] -= onwards[b] * x[2 * i + 2] + onwards[b + 1] * x[2 * i + 3];
            x[2 * i + 1] -= onwards[b + 2] * x[2 * i + 2] + onwards[b + 3] * x[2 * i + 3];
        }
    }
}
