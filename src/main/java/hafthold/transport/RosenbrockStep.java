package hafthold.transport;

import hafthold.source.PublishedModel;
import java.util.Arrays;

/**
 * One step of a bundle of slabs in time by RODAS3: linearly implicit, third order, L-stable and stiffly accurate, four
 * stages on one factorisation, with air needed only at the two ends of the step.
 *
 * <pre>
 * (B - tau/2 J) K_i = tau/2 [F(t + alpha_i tau, M + sum a_ij K_j) + g_i tau F_t] + 1/2 B sum c_ij K_j
 * M(t + tau) = M + 2 K1 + K3 + K4,   error estimate K4
 * a: 2 K1 (stage 3), 2 K1 + K3 (stage 4)   c: 4 | 1 -1 | 1 -1 -8/3   alpha: 0 0 1 1   g: 1/2 3/2 0 0
 * </pre>
 *
 * <p>F_t is the exact slope in time of the surface exchange and of D with temperature; the drift of the isotherm with
 * temperature is left out of it, which moves the mean by some 1e-5 kg/kg. Between stages psi goes by its series in a
 * times the change, and the activity at the surface is evaluated once, at stage 3, and goes by its slopes from there.
 *
 * <p>The loss through the surface is summed with the same weights, so that content and loss agree to rounding. Each lane
 * is worked out alike whatever its neighbours are.
 */
@PublishedModel(
        source = "sandu-1997",
        locator = "method RODAS3; coefficients read in open implementations",
        validity = "any step; third order where air is straight over the step")
final class RosenbrockStep {
    private final int last;
    private final double[][] k1Twice;
    private final double[][] k2;
    private final double[][] k3;
    private final double[][] k4;
    private final double[][] flow;
    private final double[] still;
    private final double[][] carried;
    private final double[][] stagePotential;
    private final StepMatrix matrix;
    private final StepAir air;
    private final SurfaceActivity stageActivity;
    private final double[] lossSlope;
    private final double[] startLoss;
    private final double[] lossDrift;
    private final double[] gainLoss;
    private final double[] out;
    private final double[] loss;
    private final double[] error;
    private final double[] largestChange;

    RosenbrockStep(int points, int width) {
        last = points - 1;
        k1Twice = new double[points][width];
        k2 = new double[points][width];
        k3 = new double[points][width];
        k4 = new double[points][width];
        flow = new double[last][width];
        still = new double[width];
        carried = new double[points][width];
        stagePotential = new double[points][width];
        matrix = new StepMatrix(points, width);
        air = new StepAir(width);
        stageActivity = new SurfaceActivity(width);
        lossSlope = new double[width];
        startLoss = new double[width];
        lossDrift = new double[width];
        gainLoss = new double[width];
        out = new double[width];
        loss = new double[width];
        error = new double[width];
        largestChange = new double[width];
    }

    /** Takes the step from a state, which is left alone; the new state goes to {@code next}. */
    void take(
            SlabBundle bundle,
            BundleState state,
            int lanes,
            AirInstant from,
            AirInstant to,
            double seconds,
            BundleState next) {
        air.over(bundle, lanes, from, to, 0.5 * seconds);
        startLosses(state, lanes, from, to);
        matrix.factor(bundle, air.startSpeed, state.potential, lossSlope, lanes);

        flows(matrix.conductance(), state.potential, lanes);
        gains(k1Twice, air.earlyTwice, lanes);
        firstLosses(lanes);
        matrix.solve(k1Twice, lanes);
        for (int s = 0; s < lanes; s++) {
            loss[s] = gainLoss[s] + lossSlope[s] * k1Twice[last][s];
        }

        gains(k2, air.late, lanes);
        addStored(bundle, k1Twice, k2, lanes);
        secondLosses(lanes);
        matrix.solve(k2, lanes);
        for (int s = 0; s < lanes; s++) {
            double secondLoss = gainLoss[s] + lossSlope[s] * k2[last][s] + loss[s];
            out[s] = 0.25 * loss[s] - 0.5 * secondLoss;
        }
        for (int i = 0; i <= last; i++) {
            Lanes.combine(0.25, k1Twice[i], -0.5, k2[i], carried[i], lanes);
        }

        thirdStage(bundle, state, to, lanes);
        fourthStage(bundle, state, to, lanes);
        finish(bundle, state, to, lanes, next);
    }

    private void startLosses(BundleState state, int lanes, AirInstant from, AirInstant to) {
        double growth = StepAir.growth(from.saturationPascals, to.saturationPascals);
        double drier = from.humidity - to.humidity;
        for (int s = 0; s < lanes; s++) {
            double exchange = air.startExchange[s];
            startLoss[s] = exchange * (state.activity.value[s] - from.humidity);
            lossSlope[s] = exchange * state.activity.slope[s];
            lossDrift[s] = growth * startLoss[s] + exchange * drier;
        }
    }

    private void firstLosses(int lanes) {
        for (int s = 0; s < lanes; s++) {
            gainLoss[s] = 2 * startLoss[s] + lossDrift[s];
            k1Twice[last][s] -= gainLoss[s];
        }
    }

    private void secondLosses(int lanes) {
        for (int s = 0; s < lanes; s++) {
            gainLoss[s] = startLoss[s] + 1.5 * lossDrift[s];
            k2[last][s] -= gainLoss[s];
        }
    }

    private void thirdStage(SlabBundle bundle, BundleState state, AirInstant to, int lanes) {
        for (int i = 0; i <= last; i++) {
            Lanes.potentialAfter(state.potential[i], bundle.exponent, k1Twice[i], stagePotential[i], lanes);
        }
        for (int s = 0; s < lanes; s++) {
            double change = k1Twice[last][s];
            double moisture = state.moisture[last][s] + change;
            double guess = state.activity.value[s] + change * state.activity.slope[s];
            bundle.evaluateActivity(s, moisture, to.temperatureCelsius, guess, stageActivity);
        }
        endStage(bundle, k3, stageActivity, to, lanes);
        for (int s = 0; s < lanes; s++) {
            double thirdLoss = gainLoss[s] + lossSlope[s] * k3[last][s] + out[s];
            loss[s] += thirdLoss;
            out[s] -= 4 / 3.0 * thirdLoss;
        }
        for (int i = 0; i <= last; i++) {
            Lanes.addMultiple(-4 / 3.0, k3[i], carried[i], lanes);
        }
    }

    private void fourthStage(SlabBundle bundle, BundleState state, AirInstant to, int lanes) {
        for (int i = 0; i <= last; i++) {
            Lanes.potentialAfter(stagePotential[i], bundle.exponent, k3[i], stagePotential[i], lanes);
        }
        for (int s = 0; s < lanes; s++) {
            double change = k3[last][s];
            double moisture = state.moisture[last][s] + k1Twice[last][s] + change;
            bundle.extendActivity(s, stageActivity, change, moisture, to.temperatureCelsius, stageActivity);
        }
        endStage(bundle, k4, stageActivity, to, lanes);
        for (int s = 0; s < lanes; s++) {
            loss[s] += gainLoss[s] + lossSlope[s] * k4[last][s] + out[s];
        }
    }

    /** A stage whose gains are those at the end of the step. */
    private void endStage(SlabBundle bundle, double[][] k, SurfaceActivity activity, AirInstant to, int lanes) {
        for (int i = 0; i < last; i++) {
            Lanes.flow(bundle.conductance[i], air.endSpeed, stagePotential[i], stagePotential[i + 1], flow[i], lanes);
        }
        for (int i = 0; i <= last; i++) {
            Lanes.gainAndWeighted(
                    i == 0 ? still : flow[i - 1],
                    i == last ? still : flow[i],
                    bundle.before[i],
                    carried[Math.max(0, i - 1)],
                    bundle.here[i],
                    carried[i],
                    bundle.after[i],
                    carried[Math.min(last, i + 1)],
                    k[i],
                    lanes);
        }
        for (int s = 0; s < lanes; s++) {
            gainLoss[s] = air.endExchange[s] * (activity.value[s] - to.humidity);
            k[last][s] -= gainLoss[s];
        }
        matrix.solve(k, lanes);
    }

    private void finish(SlabBundle bundle, BundleState state, AirInstant to, int lanes, BundleState next) {
        Arrays.fill(error, 0, lanes, 0);
        Arrays.fill(largestChange, 0, lanes, 0);
        Arrays.fill(next.low, 0, lanes, Double.POSITIVE_INFINITY);
        Arrays.fill(next.high, 0, lanes, Double.NEGATIVE_INFINITY);
        for (int i = 0; i <= last; i++) {
            Lanes.potentialAfter(stagePotential[i], bundle.exponent, k4[i], next.potential[i], lanes);
            Lanes.change(state.moisture[i], k1Twice[i], k3[i], k4[i], largestChange, next.moisture[i], lanes);
            Lanes.largest(k4[i], error, lanes);
            Lanes.range(next.moisture[i], next.low, next.high, lanes);
        }
        for (int s = 0; s < lanes; s++) {
            double surface = next.moisture[last][s];
            bundle.extendActivity(s, stageActivity, k4[last][s], surface, to.temperatureCelsius, next.activity);
        }
    }

    private void flows(double[][] conductance, double[][] potential, int lanes) {
        for (int i = 0; i < last; i++) {
            Lanes.flow(conductance[i], potential[i], potential[i + 1], flow[i], lanes);
        }
    }

    /** What each stretch gains from its neighbours, times a factor. */
    private void gains(double[][] gain, double[] factor, int lanes) {
        Lanes.product(-1, factor, flow[0], gain[0], lanes);
        for (int i = 1; i < last; i++) {
            Lanes.difference(factor, flow[i - 1], flow[i], gain[i], lanes);
        }
        Lanes.product(1, factor, flow[last - 1], gain[last], lanes);
    }

    /** Adds B times a quantity. */
    private void addStored(SlabBundle bundle, double[][] quantity, double[][] sum, int lanes) {
        for (int i = 0; i <= last; i++) {
            Lanes.addWeighted(
                    bundle.before[i],
                    quantity[Math.max(0, i - 1)],
                    bundle.here[i],
                    quantity[i],
                    bundle.after[i],
                    quantity[Math.min(last, i + 1)],
                    sum[i],
                    lanes);
        }
    }

    /** What passed the surface of a lane outwards in the step, moisture content times metres. */
    double loss(int lane) {
        return loss[lane];
    }

    /** Largest local error over the points of a lane, moisture content. */
    double error(int lane) {
        return error[lane];
    }

    /** Largest change over the points of a lane, moisture content. */
    double largestChange(int lane) {
        return largestChange[lane];
    }
}
