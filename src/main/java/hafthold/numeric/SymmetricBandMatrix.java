package hafthold.numeric;

/**
 * A symmetric matrix whose entries vanish further than a half bandwidth from the diagonal, and its Cholesky solution A =
 * L L^T (Golub and Van Loan, Matrix Computations, section 4.3.5: band Cholesky, here in the outer-product order).
 *
 * <p>Only the diagonal and the band below it are kept, column by column, so that the inner loops run along memory.
 * {@link #factor()} overwrites the matrix by L; {@link #solve} then takes any number of right-hand sides.
 */
public final class SymmetricBandMatrix {
    private final int size;
    private final int halfBandwidth;
    private final int stride;
    private final double[] band;
    /** How far below the diagonal each column of the factor goes. */
    private final int[] below;

    private boolean factored;

    /**
     * A matrix of zeros.
     *
     * @param size rows and columns, at least 1
     * @param halfBandwidth largest |i - j| of an entry that is not zero, 0 to {@code size - 1}
     */
    public SymmetricBandMatrix(int size, int halfBandwidth) {
        if (size < 1 || halfBandwidth < 0 || halfBandwidth >= size) {
            throw new IllegalArgumentException(
                    "a band matrix of size " + size + " cannot have a half bandwidth of " + halfBandwidth);
        }
        this.size = size;
        this.halfBandwidth = halfBandwidth;
        this.stride = halfBandwidth + 1;
        this.band = new double[size * stride];
        this.below = new int[size];
    }

    /** Number of rows. */
    public int size() {
        return size;
    }

    /**
     * Adds to the entry (row, column) and to its mirror image. Call once for each unordered pair.
     *
     * @throws IndexOutOfBoundsException outside the matrix
     * @throws IllegalArgumentException outside the band
     */
    public void add(int row, int column, double value) {
        int i = Math.max(row, column);
        int j = Math.min(row, column);
        if (i - j > halfBandwidth) {
            throw new IllegalArgumentException("entry (" + row + ", " + column + ") lies outside the band");
        }
        band[j * stride + i - j] += value;
    }

    /**
     * Replaces the matrix by its Cholesky factor.
     *
     * @return this
     * @throws ArithmeticException when the matrix is not positive definite: some part can move without resistance
     */
    public SymmetricBandMatrix factor() {
        if (factored) {
            throw new IllegalStateException("the matrix is factored already");
        }
        for (int k = 0; k < size; k++) {
            int top = k * stride;
            double pivot = band[top];
            if (!(pivot > 0)) {
                throw new ArithmeticException("not positive definite at row " + k + ": pivot " + pivot);
            }
            int reach = furthest(k);
            below[k] = reach;
            double root = Math.sqrt(pivot);
            double inverse = 1 / root;
            band[top] = root;
            for (int d = 1; d <= reach; d++) {
                band[top + d] *= inverse;
            }
            for (int d = 1; d <= reach; d++) {
                double multiplier = band[top + d];
                // Meshes leave holes in the band; skipping them is cheaper than multiplying by zero.
                if (multiplier != 0) {
                    subtract(band, top + d, (k + d) * stride, reach - d + 1, multiplier);
                }
            }
        }
        factored = true;
        return this;
    }

    /** Distance from the diagonal of the last entry of a column that is not zero: meshes seldom fill the band. */
    private int furthest(int column) {
        int top = column * stride;
        int distance = Math.min(halfBandwidth, size - 1 - column);
        while (distance > 0 && band[top + distance] == 0) {
            distance--;
        }
        return distance;
    }

    /**
     * Solves A X = B in place.
     *
     * @param rightHandSides B row by row, {@code size * columns} numbers; X on return
     * @param columns number of right-hand sides, at least 1
     * @throws IllegalStateException before {@link #factor()}
     */
    public void solve(double[] rightHandSides, int columns) {
        if (!factored) {
            throw new IllegalStateException("factor the matrix before solving");
        }
        if (columns < 1 || rightHandSides.length != size * columns) {
            throw new IllegalArgumentException(
                    "expected " + size + " x " + columns + " numbers, got " + rightHandSides.length);
        }
        for (int k = 0; k < size; k++) {
            int top = k * stride;
            scale(rightHandSides, k * columns, columns, 1 / band[top]);
            for (int d = 1; d <= below[k]; d++) {
                double multiplier = band[top + d];
                if (multiplier != 0) {
                    subtract(rightHandSides, k * columns, (k + d) * columns, columns, multiplier);
                }
            }
        }
        for (int k = size - 1; k >= 0; k--) {
            int top = k * stride;
            for (int d = 1; d <= below[k]; d++) {
                double multiplier = band[top + d];
                if (multiplier != 0) {
                    subtract(rightHandSides, (k + d) * columns, k * columns, columns, multiplier);
                }
            }
            scale(rightHandSides, k * columns, columns, 1 / band[top]);
        }
    }

    private static void scale(double[] a, int start, int count, double factor) {
        for (int i = start; i < start + count; i++) {
            a[i] *= factor;
        }
    }

    /** a[to + i] -= multiplier a[from + i]: the one loop where the time goes. */
    private static void subtract(double[] a, int from, int to, int count, double multiplier) {
        for (int i = 0; i < count; i++) {
            a[to + i] -= multiplier * a[from + i];
        }
    }
}
