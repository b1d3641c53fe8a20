package hafthold.transport;

import hafthold.numeric.HatWeights;
import hafthold.numeric.TridiagonalSystem;
import java.util.Arrays;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How a small change at the start of the year shows at its end: the matrix S, carried along the year by implicit Euler
 * steps of some days of the linearised slab, in which D and surface exchange are the means over the step.
 *
 * <p>A gap between end and start of a year then tells the distance from the state that repeats, (I - S)^-1 gap (Newton's
 * rule for the year as a whole); for a slab that needs decades to settle it is many times the gap.
 */
final class YearMemory {
    private final SlabEquation equation;
    private final HatWeights storage;
    private final TridiagonalSystem system;
    private final double[] psi;
    private final double[] slope;
    private final double[] integral;
    private final double[][] change;

    YearMemory(SlabLayout layout) {
        equation = new SlabEquation(layout.slab(), layout.grid());
        storage = layout.storage();
        int points = layout.points();
        system = new TridiagonalSystem(points);
        psi = new double[points];
        slope = new double[points];
        integral = new double[points];
        change = new double[points][points];
        for (int i = 0; i < points; i++) {
            change[i][i] = 1;
        }
    }

    /**
     * Carries the memory through a stretch of the year.
     *
     * @param moisture profile at its end
     * @param air the air there, with the stretch's mean exchange and diffusivity
     * @param seconds its length
     */
    void pass(double[] moisture, SlabAir air, double seconds) {
        equation.potentials(moisture, psi);
        equation.moistureByPotential(psi, slope);
        double lossSlope = equation.surfaceLossSlope(moisture[moisture.length - 1], air);
        equation.factor(storage, slope, air.diffusivity(), lossSlope, seconds, system);
        for (double[] response : change) {
            Arrays.fill(integral, 0);
            storage.addTo(response, integral);
            system.solve(integral);
            for (int i = 0; i < response.length; i++) {
                response[i] = slope[i] * integral[i];
            }
        }
    }

    /** (I - S)^-1 gap. */
    double[] distance(double[] gap) {
        RealMatrix s = MatrixUtils.createRealMatrix(change).transpose();
        RealMatrix lasting = MatrixUtils.createRealIdentityMatrix(gap.length).subtract(s);
        return new LUDecomposition(lasting)
                .getSolver()
                .solve(new ArrayRealVector(gap, false))
                .toArray();
    }
}
