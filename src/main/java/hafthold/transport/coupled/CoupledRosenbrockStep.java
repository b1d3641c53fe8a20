package hafthold.transport.coupled;

import hafthold.numeric.BlockTridiagonalSystem;
import hafthold.source.PublishedModel;
import java.util.Arrays;

/**
 * One step of heat and water together by RODAS3, as the isothermal slab takes it: linearly implicit, third order,
 * L-stable and stiffly accurate, four stages on one factorisation.
 *
 * <pre>
 * (I - tau/2 J) K_i = tau/2 [F(t + alpha_i tau, y + sum a_ij K_j) + g_i tau F_t] + 1/2 sum c_ij K_j
 * y(t + tau) = y + 2 K1 + K3 + K4,   error estimate K4
 * a: 2 K1 (stage 3), 2 K1 + K3 (stage 4)   c: 4 | 1 -1 | 1 -1 -8/3   alpha: 0 0 1 1   g: 1/2 3/2 0 0
 * </pre>
 *
 * <p>Unknown are changes u of water content and temperature, K = dy/du u. What comes in from outside is summed with the
 * same weights, so that content and income agree to rounding.
 */
@PublishedModel(
        source = "sandu-1997",
        locator = "method RODAS3; coefficients read in open implementations",
        validity = "any step; third order where surroundings are smooth over the step")
final class CoupledRosenbrockStep {
    private static final int WATER = 0;
    private static final int HEAT = 1;
    private static final int WITH_WATER = 2;

    private final CoupledEquations equations;
    private final BlockTridiagonalSystem system;
    private final int size;
    private final Gains start;
    private final Gains end;
    private final Gains drift;
    private final Gains now;
    private final Gains later;
    private final double[] water;
    private final double[] temperature;
    private final double[] right;
    private final double[] u;
    private final double[] carried;
    private final double[] change;
    private final double[] trial;
    private final double[][] k;
    private final double[][] income = new double[4][3];
    private final double[] carriedIncome = new double[3];
    private double half;

    CoupledRosenbrockStep(CoupledEquations equations) {
        this.equations = equations;
        int points = equations.points();
        system = new BlockTridiagonalSystem(points);
        size = 2 * points;
        start = new Gains(points);
        end = new Gains(points);
        drift = new Gains(points);
        now = new Gains(points);
        later = new Gains(points);
        water = new double[points];
        temperature = new double[points];
        right = new double[size];
        u = new double[size];
        carried = new double[size];
        change = new double[size];
        trial = new double[size];
        k = new double[4][size];
    }

    /** Takes the step from a state, which is left alone; the new state goes to {@code next}. */
    void take(double[] y, double seconds, double step, double[] next) {
        half = 0.5 * step;
        equations.read(y, water, temperature);
        equations.gains(y, seconds, start);
        equations.factor(half, start, system);
        equations.drift(seconds, step, now, later, drift);

        forgetStages();
        stage(0, start, 0.5);

        carry(2, 0, 0);
        stage(1, start, 1.5);

        for (int i = 0; i < size; i++) {
            change[i] = 2 * k[0][i];
        }
        gainsAfterChange(y, seconds + step);
        carry(0.5, -0.5, 0);
        stage(2, end, 0);

        for (int i = 0; i < size; i++) {
            change[i] += k[2][i];
        }
        gainsAfterChange(y, seconds + step);
        carry(0.5, -0.5, -4 / 3.0);
        stage(3, end, 0);

        for (int i = 0; i < size; i++) {
            next[i] = y[i] + (change[i] + k[3][i]);
        }
    }

    /** A refused step may have left numbers that are none. */
    private void forgetStages() {
        for (double[] stage : k) {
            Arrays.fill(stage, 0);
        }
        for (double[] in : income) {
            Arrays.fill(in, 0);
        }
        Arrays.fill(carried, 0);
        Arrays.fill(carriedIncome, 0);
    }

    private void gainsAfterChange(double[] y, double seconds) {
        for (int i = 0; i < size; i++) {
            trial[i] = y[i] + change[i];
        }
        equations.gains(trial, seconds, end);
    }

    private void carry(double first, double second, double third) {
        for (int i = 0; i < size; i++) {
            carried[i] = first * k[0][i] + second * k[1][i] + third * k[2][i];
        }
        for (int j = 0; j < carriedIncome.length; j++) {
            carriedIncome[j] = first * income[0][j] + second * income[1][j] + third * income[2][j];
        }
    }

    private void stage(int number, Gains gains, double driftShare) {
        for (int i = 0; i < size; i++) {
            right[i] = half * (gains.rate[i] + driftShare * drift.rate[i]) + carried[i];
        }
        System.arraycopy(right, 0, u, 0, size);
        system.solve(u);
        double[] out = k[number];
        equations.content(u, water, temperature, out);
        double byWater = 0;
        for (int i = 0; i < water.length; i++) {
            // What the matrix added to the water gained, at the temperature it was linearised at, and the change of
            // that.
            byWater += temperature[i] * (out[2 * i] - right[2 * i]) + half * start.rate[2 * i] * u[2 * i + 1];
        }
        double[] in = income[number];
        in[WATER] = half * (gains.waterIn + driftShare * drift.waterIn + equations.waterInSlope(u));
        in[HEAT] = half * (gains.heatIn + driftShare * drift.heatIn + equations.heatInSlope(u));
        in[WITH_WATER] =
                half * (gains.heatWithWater + driftShare * drift.heatWithWater) + equations.waterHeat() * byWater;
        for (int j = 0; j < in.length; j++) {
            in[j] += carriedIncome[j];
        }
    }

    /** Largest local error over the points, in units of what is allowed; above 1 the step is too long. */
    double error(Accuracy allowed) {
        double error = 0;
        for (int i = 0; i < size; i += 2) {
            error = Math.max(error, Math.abs(u[i]) / allowed.waterKilogramsPerCubicMetre());
            error = Math.max(error, Math.abs(u[i + 1]) / allowed.kelvin());
            if (Double.isNaN(u[i]) || Double.isNaN(u[i + 1])) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return error;
    }

    /** Water that came in during the step, kg/m2. */
    double waterIn() {
        return total(WATER);
    }

    /** Heat that came in through the faces and from sources, J/m2. */
    double heatIn() {
        return total(HEAT);
    }

    /** Heat that water brought by settling where it is warm, J/m2. */
    double heatWithWater() {
        return total(WITH_WATER);
    }

    private double total(int kind) {
        return 2 * income[0][kind] + income[2][kind] + income[3][kind];
    }
}
