package hafthold.transport.coupled;

import hafthold.numeric.BlockTridiagonalSystem;
import hafthold.numeric.GradedGrid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The slab cut into stretches about its grid points: what each holds and gains.
 *
 * <p>The state y alternates water and heat of the stretches: y_w = V w, y_h = (V C(w) + C_m) T with T counted from 0 C.
 * Gains are sums of flows, each taken from one stretch and given to the next, so that nothing is lost on the way. Heat
 * gains include c_w T dw/dt: water that settles takes the temperature it meets, which turns d(C T)/dt into C dT/dt.
 */
final class CoupledEquations {
    /** Part of a step over which surroundings are differenced: small against the step, large against rounding. */
    private static final double DRIFT_SHARE = 1e-4;

    private final double[] place;
    private final double[] volume;
    private final double[] metal;
    private final HeatCapacity capacity;
    private final Sources sources;
    private final FaceFlow back;
    private final FaceFlow front;
    private final Mechanism[] mechanisms;
    private final double[] w;
    private final double[] t;
    private final double[] lower;
    private final double[] diagonal;
    private final double[] upper;

    CoupledEquations(CoupledSlab slab, GradedGrid grid) {
        place = grid.positions();
        int points = place.length;
        double[] gap = grid.gaps();
        double[] inverseGap = new double[gap.length];
        volume = new double[points];
        for (int i = 0; i < gap.length; i++) {
            inverseGap[i] = 1 / gap[i];
            volume[i] += 0.5 * gap[i];
            volume[i + 1] += 0.5 * gap[i];
        }
        capacity = slab.material().capacity();
        sources = slab.sources();
        back = faceFlow(slab.back(), slab);
        front = faceFlow(slab.front(), slab);
        metal = new double[points];
        metal[0] = back.heatCapacity();
        metal[points - 1] = front.heatCapacity();
        mechanisms = mechanisms(slab, inverseGap);
        w = new double[points];
        t = new double[points];
        lower = new double[4 * (points - 1)];
        diagonal = new double[4 * points];
        upper = new double[4 * (points - 1)];
    }

    private static FaceFlow faceFlow(Face face, CoupledSlab slab) {
        return new FaceFlow(face, slab.material().storage(), slab.saturation(), slab.latentHeatJoulesPerKilogram());
    }

    private static Mechanism[] mechanisms(CoupledSlab slab, double[] inverseGap) {
        PorousMaterial material = slab.material();
        MoistureStorage storage = material.storage();
        List<Mechanism> all = new ArrayList<>();
        all.add(new Mechanism(material.conductivity()::wattsPerMetreKelvin, (w, t) -> t, 0, 1, inverseGap));
        if (material.vapour() != VapourPermeability.NONE) {
            all.add(new Mechanism(
                    material.vapour()::kilogramsPerMetreSecondPascal,
                    (w, t) -> storage.relativeHumidityFraction(w, t)
                            * slab.saturation().pascals(t),
                    1,
                    slab.latentHeatJoulesPerKilogram(),
                    inverseGap));
        }
        if (material.liquid() != LiquidConductivity.NONE) {
            all.add(new Mechanism(
                    material.liquid()::seconds, (w, t) -> -storage.suctionPascals(w, t), 1, 0, inverseGap));
        }
        if (material.diffusivity() != WaterDiffusivity.NONE) {
            all.add(new Mechanism(material.diffusivity()::squareMetresPerSecond, (w, t) -> w, 1, 0, inverseGap));
        }
        return all.toArray(new Mechanism[0]);
    }

    int points() {
        return place.length;
    }

    /** The state y of a water content and temperature at each point. */
    void store(double[] water, double[] temperature, double[] y) {
        for (int i = 0; i < volume.length; i++) {
            y[2 * i] = volume[i] * water[i];
            y[2 * i + 1] = heatCapacity(i, water[i]) * temperature[i];
        }
    }

    /** Water content and temperature at each point of a state. */
    void read(double[] y, double[] water, double[] temperature) {
        for (int i = 0; i < volume.length; i++) {
            water[i] = y[2 * i] / volume[i];
            temperature[i] = y[2 * i + 1] / heatCapacity(i, water[i]);
        }
    }

    private double heatCapacity(int point, double water) {
        return volume[point] * capacity.joulesPerCubicMetreKelvin(water) + metal[point];
    }

    /** Gains of every stretch in state y at a time, and what the outside gives. */
    void gains(double[] y, double seconds, Gains out) {
        read(y, w, t);
        Arrays.fill(out.rate, 0);
        for (Mechanism mechanism : mechanisms) {
            mechanism.addGains(w, t, out.rate);
        }
        outside(seconds, out);
        out.heatWithWater = 0;
        for (int i = 0; i < w.length; i++) {
            double carried = capacity.waterJoulesPerKilogramKelvin() * t[i] * out.rate[2 * i];
            out.rate[2 * i + 1] += carried;
            out.heatWithWater += carried;
        }
    }

    /** Change of all gains with time while the state of the last {@link #gains} stands still, times the step. */
    void drift(double seconds, double step, Gains now, Gains later, Gains out) {
        Arrays.fill(now.rate, 0);
        Arrays.fill(later.rate, 0);
        outside(seconds, now);
        outside(seconds + DRIFT_SHARE * step, later);
        for (int i = 0; i < out.rate.length; i++) {
            out.rate[i] = (later.rate[i] - now.rate[i]) / DRIFT_SHARE;
        }
        out.waterIn = (later.waterIn - now.waterIn) / DRIFT_SHARE;
        out.heatIn = (later.heatIn - now.heatIn) / DRIFT_SHARE;
        out.heatWithWater = 0;
        for (int i = 0; i < w.length; i++) {
            double carried = capacity.waterJoulesPerKilogramKelvin() * t[i] * out.rate[2 * i];
            out.rate[2 * i + 1] += carried;
            out.heatWithWater += carried;
        }
    }

    private void outside(double seconds, Gains out) {
        int last = w.length - 1;
        back.evaluate(w[0], t[0], seconds);
        front.evaluate(w[last], t[last], seconds);
        out.rate[0] -= back.water;
        out.rate[1] -= back.heat;
        out.rate[2 * last] -= front.water;
        out.rate[2 * last + 1] -= front.heat;
        out.waterIn = -back.water - front.water;
        out.heatIn = -back.heat - front.heat;
        if (sources != Sources.NONE) {
            for (int i = 0; i <= last; i++) {
                double water = volume[i] * sources.waterKilogramsPerCubicMetreSecond(place[i], seconds);
                double heat = volume[i] * sources.heatWattsPerCubicMetre(place[i], seconds);
                out.rate[2 * i] += water;
                out.rate[2 * i + 1] += heat;
                out.waterIn += water;
                out.heatIn += heat;
            }
        }
    }

    /**
     * Factors (dy/du - s dF/du) for changes u of water content and temperature, at the state of the last gains.
     *
     * @param at those gains
     */
    void factor(double s, Gains at, BlockTridiagonalSystem system) {
        int last = w.length - 1;
        Arrays.fill(lower, 0);
        Arrays.fill(diagonal, 0);
        Arrays.fill(upper, 0);
        for (Mechanism mechanism : mechanisms) {
            mechanism.takeSlopes(w, t, s, lower, diagonal, upper);
        }
        back.evaluateSlopes(w[0], t[0]);
        front.evaluateSlopes(w[last], t[last]);
        addFace(back, 0, s);
        addFace(front, 4 * last, s);
        double c = capacity.waterJoulesPerKilogramKelvin();
        for (int i = 0; i <= last; i++) {
            diagonal[4 * i] += volume[i];
            diagonal[4 * i + 3] += heatCapacity(i, w[i]) - s * c * at.rate[2 * i];
            addWaterRow(diagonal, 4 * i, c * t[i]);
            if (i < last) {
                addWaterRow(upper, 4 * i, c * t[i]);
                addWaterRow(lower, 4 * i, c * t[i + 1]);
            }
        }
        system.factor(lower, diagonal, upper);
    }

    /** Heat that comes with water: its row is the water row times c T, storage included. */
    private static void addWaterRow(double[] blocks, int at, double factor) {
        blocks[at + 2] += factor * blocks[at];
        blocks[at + 3] += factor * blocks[at + 1];
    }

    private void addFace(FaceFlow flow, int at, double s) {
        diagonal[at] += s * flow.waterByWater;
        diagonal[at + 1] += s * flow.waterByTemperature;
        diagonal[at + 2] += s * flow.heatByWater;
        diagonal[at + 3] += s * flow.heatByTemperature;
    }

    /** Change of y that belongs to a small change u at the state of the factored matrix. */
    void content(double[] u, double[] stateWater, double[] stateTemperature, double[] y) {
        double c = capacity.waterJoulesPerKilogramKelvin();
        for (int i = 0; i < volume.length; i++) {
            y[2 * i] = volume[i] * u[2 * i];
            y[2 * i + 1] =
                    volume[i] * c * stateTemperature[i] * u[2 * i] + heatCapacity(i, stateWater[i]) * u[2 * i + 1];
        }
    }

    /** Slope of the water coming in with a small change u: both faces. */
    double waterInSlope(double[] u) {
        int last = u.length - 2;
        return -back.waterByWater * u[0]
                - back.waterByTemperature * u[1]
                - front.waterByWater * u[last]
                - front.waterByTemperature * u[last + 1];
    }

    /** Slope of the heat coming in by the faces with a small change u. */
    double heatInSlope(double[] u) {
        int last = u.length - 2;
        return -back.heatByWater * u[0]
                - back.heatByTemperature * u[1]
                - front.heatByWater * u[last]
                - front.heatByTemperature * u[last + 1];
    }

    /** c_w, J/(kg K). */
    double waterHeat() {
        return capacity.waterJoulesPerKilogramKelvin();
    }

    double nextBendSeconds(double seconds) {
        return Math.min(back.nextBendSeconds(seconds), front.nextBendSeconds(seconds));
    }
}
