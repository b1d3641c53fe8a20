package hafthold.mechanics;

/**
 * A rectangular grid of quadratic elements over one quarter of a bonded handle: columns from the middle (x = 0) to the
 * free edge, rows from the tang's mid-plane (y = 0) to the outer face; both of these sides are planes of symmetry.
 *
 * <p>Half columns and half rows count nodes: even ones are element sides, odd ones mid-sides. Unknowns are numbered
 * along the rows first, because a handle section has fewer rows than it would have columns at the same fineness.
 */
final class SectionGrid {
    /** Mark of a displacement that symmetry holds at zero. */
    static final int HELD = -1;

    /** Grid lines closer than this are one, m: far below any part's thickness, far above rounding. */
    private static final double SAME_PLACE = 1e-10;

    private final double[] x;
    private final double[] y;
    private final int[] layerOfRow;
    private final int[] unknown;
    private final int unknowns;

    /**
     * A grid of given lines.
     *
     * @param x column sides, m, rising from 0
     * @param y row sides, m, rising from 0
     * @param layerOfRow index of the layer each row of elements belongs to
     */
    SectionGrid(double[] x, double[] y, int[] layerOfRow) {
        this.x = x.clone();
        this.y = y.clone();
        this.layerOfRow = layerOfRow.clone();
        int nodes = node(2 * columns(), 2 * rows()) + 1;
        this.unknown = new int[2 * nodes];
        int next = 0;
        for (int c = 0; c <= 2 * columns(); c++) {
            for (int r = 0; r <= 2 * rows(); r += 1 + c % 2) {
                int node = node(c, r);
                unknown[2 * node] = c == 0 ? HELD : next++;
                unknown[2 * node + 1] = r == 0 ? HELD : next++;
            }
        }
        this.unknowns = next;
    }

    int columns() {
        return x.length - 1;
    }

    int rows() {
        return y.length - 1;
    }

    int unknowns() {
        return unknowns;
    }

    int layerOfRow(int row) {
        return layerOfRow[row];
    }

    double columnSide(int column) {
        return x[column];
    }

    double rowSide(int row) {
        return y[row];
    }

    double width(int column) {
        return x[column + 1] - x[column];
    }

    double height(int row) {
        return y[row + 1] - y[row];
    }

    /** Node at a half column and half row; none exists where both are odd. */
    int node(int halfColumn, int halfRow) {
        int pair = 3 * rows() + 2;
        return halfColumn % 2 == 0
                ? halfColumn / 2 * pair + halfRow
                : halfColumn / 2 * pair + 2 * rows() + 1 + halfRow / 2;
    }

    /** Number of the unknown displacement of a node, direction 0 along x and 1 along y, or {@link #HELD}. */
    int unknown(int node, int direction) {
        return unknown[2 * node + direction];
    }

    /** First row of a layer. */
    int firstRow(int layer) {
        for (int row = 0; row < rows(); row++) {
            if (layerOfRow[row] == layer) {
                return row;
            }
        }
        throw new IllegalArgumentException("no row belongs to layer " + layer);
    }

    /** Column whose left side lies at this distance from the free edge. */
    int columnAtFromEdge(double distance) {
        return nearest(x, x[columns()] - distance);
    }

    /** Row whose lower side lies at this height; the number of rows for the outer face. */
    int rowAt(double height) {
        return nearest(y, height);
    }

    private static int nearest(double[] lines, double place) {
        for (int i = 0; i < lines.length; i++) {
            if (Math.abs(lines[i] - place) < SAME_PLACE) {
                return i;
            }
        }
        throw new IllegalArgumentException("no grid line lies at " + place + " m");
    }

    /** Largest distance between two unknowns of one element. */
    int halfBandwidth() {
        int widest = 0;
        for (int column = 0; column < Math.min(2, columns()); column++) {
            for (int row = 0; row < rows(); row++) {
                int low = Integer.MAX_VALUE;
                int high = 0;
                for (int a = 0; a < SerendipityRectangle.NODES; a++) {
                    int node = node(2 * column + SerendipityRectangle.COLUMN[a], 2 * row + SerendipityRectangle.ROW[a]);
                    for (int direction = 0; direction < 2; direction++) {
                        int number = unknown(node, direction);
                        if (number != HELD) {
                            low = Math.min(low, number);
                            high = Math.max(high, number);
                        }
                    }
                }
                widest = Math.max(widest, high - low);
            }
        }
        return widest;
    }
}
