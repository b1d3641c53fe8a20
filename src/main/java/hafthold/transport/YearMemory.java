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
 * steps of two or three days of the linearised slab, in which D and surface exchange are the means over the step.
 *
 * <p>A gap between end and start of a year then tells the distance from the state that repeats, (I - S)^-1 gap (Newton's
 * rule for the year as a whole); for a slab that needs decades to settle it is many times the gap.
 */
final class YearMemory implements SlabRun.Watch {
    private static final int LONG_STEPS = 146;

    private final SlabEquation equation;
    private final HatWeights storage;
    private final TridiagonalSystem system;
    private final int stride;
    private final double strideSeconds;
    private final double[] psi;
    private final double[] slope;
    private final double[] integral;
    private final double[][] change;
    private double diffusivity;
    private double exchange;

    YearMemory(SlabRun run) {
        equation = run.stepper().equation();
        storage = run.storage();
        stride = Math.max(1, run.track().size() / LONG_STEPS);
        strideSeconds = stride * run.track().stepSeconds();
        int points = run.moisture().length;
        system = new TridiagonalSystem(points);
        psi = new double[points];
        slope = new double[points];
        integral = new double[points];
        change = new double[points][points];
        for (int i = 0; i < points; i++) {
            change[i][i] = 1;
        }
    }

    @Override
    public void after(int sample, double[] moisture, AirInstant air) {
        diffusivity += air.diffusivity / stride;
        exchange += air.exchange / stride;
        if ((sample + 1) % stride != 0) {
            return;
        }
        equation.potentials(moisture, psi);
        equation.moistureByPotential(psi, slope);
        double lossSlope = equation.surfaceLossSlope(moisture[moisture.length - 1], air) * (exchange / air.exchange);
        equation.factor(storage, slope, diffusivity, lossSlope, strideSeconds, system);
        for (double[] response : change) {
            Arrays.fill(integral, 0);
            storage.addTo(response, integral);
            system.solve(integral);
            for (int i = 0; i < response.length; i++) {
                response[i] = slope[i] * integral[i];
            }
        }
        diffusivity = 0;
        exchange = 0;
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
