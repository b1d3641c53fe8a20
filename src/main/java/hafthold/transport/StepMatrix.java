package hafthold.transport;

import hafthold.numeric.TridiagonalLanes;

/**
 * B - tau/2 J for each slab of a bundle, J the slope of all gains with moisture content at the start of a step: column i
 * of what flows carries dpsi/dM = 1 + a psi of its point.
 */
final class StepMatrix {
    private final int last;
    private final TridiagonalLanes system;
    private final double[][] conductance;
    private final double[][] stretch;
    private final double[][] lower;
    private final double[][] diagonal;
    private final double[][] upper;

    StepMatrix(int points, int width) {
        last = points - 1;
        system = new TridiagonalLanes(points, width);
        conductance = new double[last][width];
        stretch = new double[points][width];
        lower = new double[last][width];
        diagonal = new double[points][width];
        upper = new double[last][width];
    }

    /**
     * Sets up and factors the matrices.
     *
     * @param speed tau/2 D_T/D0
     * @param lossSlope tau/2 dG/dM
     */
    void factor(SlabBundle bundle, double[] speed, double[][] potential, double[] lossSlope, int lanes) {
        for (int i = 0; i <= last; i++) {
            stretch(bundle.exponent, potential[i], stretch[i], lanes);
        }
        for (int i = 0; i < last; i++) {
            Lanes.product(1, bundle.conductance[i], speed, conductance[i], lanes);
            couple(bundle.before[i + 1], conductance[i], stretch[i], lower[i], lanes);
            couple(bundle.after[i], conductance[i], stretch[i + 1], upper[i], lanes);
        }
        centre(bundle.here[0], conductance[0], stretch[0], diagonal[0], lanes);
        for (int i = 1; i < last; i++) {
            centre(bundle.here[i], conductance[i - 1], conductance[i], stretch[i], diagonal[i], lanes);
        }
        centre(bundle.here[last], conductance[last - 1], stretch[last], diagonal[last], lanes);
        Lanes.addMultiple(1, lossSlope, diagonal[last], lanes);
        system.factor(lower, diagonal, upper, lanes);
    }

    void solve(double[][] x, int lanes) {
        system.solve(x, lanes);
    }

    /** tau/2 D_T over the gap after each point, m. */
    double[][] conductance() {
        return conductance;
    }

    private static void stretch(double[] exponent, double[] potential, double[] stretch, int lanes) {
        for (int s = 0; s < lanes; s++) {
            stretch[s] = 1 + exponent[s] * potential[s];
        }
    }

    private static void couple(double[] weight, double[] conductance, double[] stretch, double[] entry, int lanes) {
        for (int s = 0; s < lanes; s++) {
            entry[s] = weight[s] - conductance[s] * stretch[s];
        }
    }

    private static void centre(double[] weight, double[] conductance, double[] stretch, double[] entry, int lanes) {
        for (int s = 0; s < lanes; s++) {
            entry[s] = weight[s] + conductance[s] * stretch[s];
        }
    }

    private static void centre(
            double[] weight, double[] left, double[] right, double[] stretch, double[] entry, int lanes) {
        for (int s = 0; s < lanes; s++) {
            entry[s] = weight[s] + (left[s] + right[s]) * stretch[s];
        }
    }
}
