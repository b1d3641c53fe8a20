package hafthold.numeric;

/**
 * How much of a smooth quantity each point of a grid answers for: the integrals of u times the hat function of a point
 * (one there, zero at the neighbours, straight between), from values at the point and its two neighbours.
 *
 * <p>The quantity is taken as the parabola through the three values:
 *
 * <pre>
 * integral = (l+r)/2 u + before (u_before - u) + after (u_after - u)
 * before = (l^2 + l r - r^2) / (12 l),   after = (r^2 + l r - l^2) / (12 r)
 * </pre>
 *
 * <p>with l and r the gaps on either side; on an even grid this is Numerov's 1/12, 10/12, 1/12. The first point is a
 * mirror, beyond which values repeat; at the last one the quantity is a straight line over its only gap.
 *
 * <p>Hat functions are right for diffusion because they integrate the divergence of a potential flux without error:
 * what a stretch gains is the difference of two slopes of straight lines. All error is then in these weights.
 */
public final class HatWeights {
    private final double[] before;
    private final double[] here;
    private final double[] after;

    private HatWeights(double[] before, double[] here, double[] after) {
        this.before = before;
        this.here = here;
        this.after = after;
    }

    /** Weights by local parabolas, fourth order on even grids. */
    public static HatWeights parabolic(GradedGrid grid) {
        double[] gap = grid.gaps();
        int last = gap.length;
        double[] before = new double[last + 1];
        double[] here = new double[last + 1];
        double[] after = new double[last + 1];
        after[0] = gap[0] / 12;
        for (int i = 1; i < last; i++) {
            double l = gap[i - 1];
            double r = gap[i];
            before[i] = (l * l + l * r - r * r) / (12 * l);
            after[i] = (r * r + l * r - l * l) / (12 * r);
        }
        before[last] = gap[last - 1] / 6;
        for (int i = 0; i <= last; i++) {
            double left = i == 0 ? 0 : gap[i - 1];
            double right = i == last ? 0 : gap[i];
            here[i] = 0.5 * (left + right) - before[i] - after[i];
        }
        return new HatWeights(before, here, after);
    }

    /** Weights without neighbours that give every point value the same share in the total as these do. */
    public HatWeights lumped() {
        return new HatWeights(new double[here.length], totals(null), new double[here.length]);
    }

    /** Weight of the point before in the integral about a point. */
    public double before(int point) {
        return before[point];
    }

    /** Weight of a point in the integral about it. */
    public double here(int point) {
        return here[point];
    }

    /** Weight of the point after in the integral about a point. */
    public double after(int point) {
        return after[point];
    }

    /** Share of each point value in the total of all integrals: column sums. */
    public double[] totals() {
        return totals(null);
    }

    /**
     * Share of each point value in the integral of the quantity times a function that is straight between points.
     *
     * @param function its value at each point
     */
    public double[] moments(double[] function) {
        return totals(function);
    }

    private double[] totals(double[] function) {
        double[] total = new double[here.length];
        for (int i = 0; i < here.length; i++) {
            double factor = function == null ? 1 : function[i];
            total[i] += factor * here[i];
            if (i > 0) {
                total[i - 1] += factor * before[i];
            }
            if (i < here.length - 1) {
                total[i + 1] += factor * after[i];
            }
        }
        return total;
    }

    /**
     * Writes the bands of the matrix that turns rates into integrals, each column times a factor.
     *
     * @param factor one a point
     * @param lower receives row i + 1, column i
     * @param diagonal receives row i, column i
     * @param upper receives row i, column i + 1
     */
    public void bands(double[] factor, double[] lower, double[] diagonal, double[] upper) {
        int last = here.length - 1;
        for (int i = 0; i < last; i++) {
            lower[i] = before[i + 1] * factor[i];
            diagonal[i] = here[i] * factor[i];
            upper[i] = after[i] * factor[i + 1];
        }
        diagonal[last] = here[last] * factor[last];
    }

    /** Adds the integrals of a quantity to {@code out}. */
    public void addTo(double[] quantity, double[] out) {
        int last = here.length - 1;
        out[0] += here[0] * quantity[0] + after[0] * quantity[1];
        for (int i = 1; i < last; i++) {
            out[i] += before[i] * quantity[i - 1] + here[i] * quantity[i] + after[i] * quantity[i + 1];
        }
        out[last] += before[last] * quantity[last - 1] + here[last] * quantity[last];
    }
}
