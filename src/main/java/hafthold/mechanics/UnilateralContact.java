package hafthold.mechanics;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Contact of a round pin with its hole: pressure is never negative, the pin never sinks into the wall, and where there
 * is pressure there is no gap.
 *
 * <p>Solved at evenly spaced angles of a quarter circle by a primal-dual active set: a place touches in the next turn
 * when its pressure plus a multiple of its overlap is positive.
 */
final class UnilateralContact {
    private static final int TURNS = 100;

    private final RealMatrix harmonicResponse;
    private final RealMatrix toAngles;

    /** Takes the radial displacement (rows) from pressure (columns), both as harmonics cos 2m theta. */
    UnilateralContact(RealMatrix harmonicResponse) {
        this.harmonicResponse = harmonicResponse;
        int count = harmonicResponse.getRowDimension();
        toAngles = new Array2DRowRealMatrix(count, count);
        double[] cosine = new double[2 * (count - 1)]; // all there are: m j counts round the circle
        for (int i = 0; i < cosine.length; i++) {
            cosine[i] = Math.cos(Math.PI * i / (count - 1));
        }
        for (int j = 0; j < count; j++) {
            for (int m = 0; m < count; m++) {
                toAngles.setEntry(j, m, cosine[m * j % cosine.length]);
            }
        }
    }

    /**
     * Pressure for a squeeze where the pin touches all round, as harmonics, Pa; empty where it does not.
     *
     * @param even overlap of pin and unstressed hole over the radius, its mean
     * @param oval its harmonic cos 2 theta
     */
    Optional<double[]> allRound(double even, double oval) {
        double[] pressure = solve(harmonicResponse, squeeze(even, oval));
        return Arrays.stream(toAngles.operate(pressure)).allMatch(here -> here >= 0)
                ? Optional.of(pressure)
                : Optional.empty();
    }

    /**
     * Pressure for a squeeze where the pin does not touch all round, as harmonics, Pa.
     *
     * @param even overlap of pin and unstressed hole over the radius, its mean
     * @param oval its harmonic cos 2 theta
     */
    double[] partial(double even, double oval) {
        RealMatrix toHarmonics = new LUDecomposition(toAngles).getSolver().getInverse();
        RealMatrix response = toAngles.multiply(harmonicResponse).multiply(toHarmonics);
        return toHarmonics.operate(partial(response, toAngles.operate(squeeze(even, oval))));
    }

    private double[] squeeze(double even, double oval) {
        double[] squeeze = new double[toAngles.getRowDimension()];
        squeeze[0] = even;
        squeeze[1] = oval;
        return squeeze;
    }

    private static double[] partial(RealMatrix response, double[] wanted) {
        int count = wanted.length;
        double stiffness = count / response.getTrace();
        boolean[] touching = new boolean[count];
        for (int j = 0; j < count; j++) {
            touching[j] = wanted[j] > 0;
        }
        for (int turn = 0; turn < TURNS; turn++) {
            double[] pressure = pressure(response, wanted, touching);
            double[] moved = response.operate(pressure);
            boolean[] next = new boolean[count];
            for (int j = 0; j < count; j++) {
                next[j] = pressure[j] + stiffness * (wanted[j] - moved[j]) > 0;
            }
            if (Arrays.equals(next, touching)) {
                return pressure;
            }
            touching = next;
        }
        throw new ArithmeticException("contact of pin and hole did not settle in " + TURNS + " turns");
    }

    private static double[] pressure(RealMatrix response, double[] wanted, boolean[] touching) {
        RealMatrix system = new Array2DRowRealMatrix(wanted.length, wanted.length);
        double[] right = new double[wanted.length];
        for (int j = 0; j < wanted.length; j++) {
            if (touching[j]) {
                system.setRow(j, response.getRow(j));
                right[j] = wanted[j];
            } else {
                system.setEntry(j, j, response.getEntry(j, j));
            }
        }
        return solve(system, right);
    }

    private static double[] solve(RealMatrix matrix, double[] right) {
        // Compliances are near 1e-10 per pascal: the usual threshold would call the matrix singular.
        return new LUDecomposition(matrix, 0)
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }
}
