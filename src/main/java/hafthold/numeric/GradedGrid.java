package hafthold.numeric;

/**
 * Points across a layer from 0 to its thickness, finest at the far end: the distance of point i of n from the far end is
 * L sinh(alpha s)/sinh(alpha) with s = 1 - i/n, so that spacing changes smoothly and second order is kept.
 */
public final class GradedGrid {
    private static final double STEEPEST = 40;
    private static final int BISECTIONS = 60;
    /** Gauss-Legendre rule of two points, exact for cubics. */
    private static final double GAUSS_POINT = 1 / Math.sqrt(3);

    private final double[] position;
    private final double[] gap;

    private GradedGrid(double[] position) {
        int gaps = position.length - 1;
        this.position = position;
        this.gap = new double[gaps];
        for (int i = 0; i < gaps; i++) {
            gap[i] = position[i + 1] - position[i];
        }
    }

    /**
     * Lays out a grid.
     *
     * @param thickness L in metres, positive
     * @param gaps number of gaps, 3 or more
     * @param finestGap width of the last gap in metres, positive; a width of L/gaps or more gives an even grid
     */
    public static GradedGrid of(double thickness, int gaps, double finestGap) {
        if (!(thickness > 0) || gaps < 3 || !(finestGap > 0)) {
            throw new IllegalArgumentException(
                    "a grid needs a positive thickness and finest gap and at least 3 gaps, got " + thickness + ", "
                            + finestGap + ", " + gaps);
        }
        double alpha = steepness(finestGap / thickness, gaps);
        double[] position = new double[gaps + 1];
        for (int i = 1; i < gaps; i++) {
            position[i] = thickness * (1 - fromEnd(alpha, 1 - (double) i / gaps));
        }
        position[gaps] = thickness;
        return new GradedGrid(position);
    }

    private static double fromEnd(double alpha, double s) {
        return alpha == 0 ? s : Math.sinh(alpha * s) / Math.sinh(alpha);
    }

    private static double steepness(double finestShare, int gaps) {
        if (finestShare * gaps >= 1) {
            return 0;
        }
        double low = 0;
        double high = STEEPEST;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (low + high);
            if (fromEnd(middle, 1.0 / gaps) > finestShare) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Number of points. */
    public int size() {
        return position.length;
    }

    /** Distance from the first point to the last, metres. */
    public double thickness() {
        return position[position.length - 1];
    }

    /** Largest ratio of one gap to the next. */
    public double steepestRatio() {
        double steepest = 1;
        for (int i = 1; i < gap.length; i++) {
            steepest = Math.max(steepest, gap[i - 1] / gap[i]);
        }
        return steepest;
    }

    /** Place of a point in metres from the start. */
    public double position(int point) {
        return position[point];
    }

    /** All places, a copy. */
    public double[] positions() {
        return position.clone();
    }

    /** Distances between neighbours, a copy, one fewer than points. */
    public double[] gaps() {
        return gap.clone();
    }

    /**
     * Weights that turn point values into the mean between two places, by the cubic through the four points about each
     * gap; values are mirrored at the start, as at a sealed face.
     *
     * @param from lower place in metres
     * @param to upper place in metres, above {@code from}, both inside the grid
     * @return one weight a point; they add up to 1
     */
    public double[] meanWeights(double from, double to) {
        double[] weight = new double[size()];
        for (int i = 0; i < gap.length; i++) {
            double a = Math.max(from, position[i]);
            double b = Math.min(to, position[i + 1]);
            if (b > a) {
                double share = 0.5 * (b - a) / (to - from);
                double middle = 0.5 * (a + b);
                double offset = 0.5 * (b - a) * GAUSS_POINT;
                addCubic(weight, i, middle - offset, share);
                addCubic(weight, i, middle + offset, share);
            }
        }
        return weight;
    }

    /** Adds a share of Lagrange's weights for the value at a place in gap i. */
    private void addCubic(double[] weight, int i, double place, double share) {
        int first = Math.min(i - 1, size() - 4);
        for (int j = first; j < first + 4; j++) {
            double lagrange = share;
            for (int k = first; k < first + 4; k++) {
                if (k != j) {
                    lagrange *= (place - mirrored(k)) / (mirrored(j) - mirrored(k));
                }
            }
            weight[Math.abs(j)] += lagrange;
        }
    }

    private double mirrored(int point) {
        return point < 0 ? -position[-point] : position[point];
    }
}
