package hafthold.transport;

import hafthold.source.PublishedModel;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * How a plane sheet that is open on both faces forgets a change of its air, in modes: of a change of 1 there is still to
 * come, at time t,
 *
 * <pre>
 * mean    sum of 2 L^2 / (b^2 (b^2 + L^2 + L)) exp(-b^2 D t / l^2)
 * centre  sum of 2 L / ((b^2 + L^2 + L) cos b) exp(-b^2 D t / l^2)      over the roots b of b tan(b) = L
 * </pre>
 *
 * <p>with l half the thickness and L = l k / D, how much the film and what covers it count. The series is cut after a few
 * modes; the last one takes what is left of the sums, so that nothing has happened at the start.
 */
@PublishedModel(
        source = "crank-1975",
        locator = "section 4.3.6, equations 4.50 and 4.53",
        validity = "constant D and straight isotherm over the change")
public final class SheetModes {
    private static final int MODES = 6;
    private static final double ROOT_TOLERANCE = 1e-13;
    private static final int ROUNDS = 200;

    private final double[] rate;
    private final double[] mean;
    private final double[] centre;

    private SheetModes(double[] rate, double[] mean, double[] centre) {
        this.rate = rate;
        this.mean = mean;
        this.centre = centre;
    }

    /** A direction in which nothing passes. */
    public static SheetModes closed() {
        return new SheetModes(new double[] {0}, new double[] {1}, new double[] {1});
    }

    /**
     * An open sheet.
     *
     * @param halfMetres l, from the middle to a face, positive
     * @param biot L, positive
     * @param ratio D in this direction over the D that time is counted with, positive
     */
    public static SheetModes open(double halfMetres, double biot, double ratio) {
        if (!(halfMetres > 0) || !(biot > 0) || !(ratio > 0)) {
            throw new IllegalArgumentException(
                    "a sheet needs positive size, L and ratio, got " + halfMetres + " m, " + biot + ", " + ratio);
        }
        double[] rate = new double[MODES];
        double[] mean = new double[MODES];
        double[] centre = new double[MODES];
        double meanLeft = 1;
        double centreLeft = 1;
        for (int n = 0; n < MODES; n++) {
            double b = root(n, biot);
            double common = b * b + biot * biot + biot;
            rate[n] = ratio * b * b / (halfMetres * halfMetres);
            boolean isLast = n == MODES - 1;
            mean[n] = isLast ? meanLeft : 2 * biot * biot / (b * b * common);
            centre[n] = isLast ? centreLeft : 2 * biot / (common * Math.cos(b));
            meanLeft -= mean[n];
            centreLeft -= centre[n];
        }
        return new SheetModes(rate, mean, centre);
    }

    /** Root number n, from 0, of b tan(b) = L, between n pi and n pi + pi/2. */
    private static double root(int n, double biot) {
        double from = n * Math.PI;
        return new BrentSolver(ROOT_TOLERANCE)
                .solve(ROUNDS, b -> b * Math.sin(b) - biot * Math.cos(b), from, from + Math.PI / 2);
    }

    int size() {
        return rate.length;
    }

    /** How fast a mode fades, per D t in 1/m2. */
    double rate(int mode) {
        return rate[mode];
    }

    /** Part of a change that a mode has in the mean. */
    double mean(int mode) {
        return mean[mode];
    }

    /** Part of a change that a mode has in the middle. */
    double centre(int mode) {
        return centre[mode];
    }
}
