package hafthold.simulate;

import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.knife.StockBlock;
import hafthold.material.Cut;
import hafthold.material.MoistureDiffusivity;
import hafthold.material.WaterUptake;
import hafthold.transport.StillAirFilm;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * A block on a grid: an eighth of it in cells, D of each at its own moisture, the vapour film at each face by the bent
 * isotherm, free water bound to wait for the wood about it. Steps of time as short as stability asks. It shares with
 * {@link BlockPiece} the figures drawn, and nothing of the sums: no modes, no product rule, no D of the whole.
 */
final class FineBlock {
    private static final HylandWexlerSaturationPressure SATURATION = new HylandWexlerSaturationPressure();
    private static final double STABLE = 0.3;
    private static final int ACTIVITIES = 400;
    private static final double MOST_ACTIVITY = 0.97;

    private final WaterUptake water;
    private final MoistureDiffusivity law;
    private final double speed;
    private final double sorption;
    private final double full;
    private final int cells;
    private final double[] size = new double[3];
    private final double[] ratio = new double[3];
    private final double[] resistance = new double[3];
    private final double[] moisture;
    private final double[] flux;
    private final double[] potential;
    private final Map<Double, double[]> activities = new HashMap<>();

    /**
     * A block of one moisture.
     *
     * @param wax resistance of a covered face, m2 s Pa/kg
     * @param fraction kg/kg
     * @param cells along each half edge
     */
    FineBlock(StockBlock block, StockInputs inputs, double wax, double fraction, int cells) {
        this.cells = cells;
        water = block.material().water().orElseThrow();
        law = water.diffusivity();
        speed = DryingSpeed.of(block.material()) * Doubt.diffusivityFactor(water, inputs.of(StockInput.DIFFUSIVITY));
        sorption =
                Doubt.at(inputs.of(StockInput.SORPTION), water.sorptionFactor().band());
        full = sorption * water.swelling().stillAboveFraction();
        double along =
                Doubt.at(inputs.of(StockInput.ALONG_RATIO), water.alongRatio().band());
        double across = water.acrossRatio().value();
        Cut cut = block.cut();
        double ends = block.sealed() == StockBlock.Sealed.NONE ? 0 : wax;
        double sides = block.sealed() == StockBlock.Sealed.ALL ? wax : 0;
        set(0, block.size().thickness().metres(), cut.thickness().mean(along, across, 1), sides);
        set(1, block.size().width().metres(), cut.width().mean(along, across, 1), sides);
        set(2, block.size().length().metres(), cut.length().mean(along, across, 1), ends);
        moisture = new double[cells * cells * cells];
        Arrays.fill(moisture, fraction);
        flux = new double[moisture.length];
        potential = new double[moisture.length];
    }

    private void set(int axis, double metres, double ratio, double wax) {
        size[axis] = metres / 2 / cells;
        this.ratio[axis] = ratio;
        resistance[axis] = StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM + wax;
    }

    /** Mean, kg/kg. */
    double mean() {
        return Arrays.stream(moisture).average().orElseThrow();
    }

    /** Of the innermost cell, kg/kg. */
    double core() {
        return moisture[0];
    }

    /** Moisture content at rest, kg/kg. */
    double balance(double humidity, double celsius) {
        return sorption * water.isotherm().moistureFraction(Math.min(MOST_ACTIVITY, Math.max(0, humidity)), celsius);
    }

    /** Lets it lie in air. */
    void lie(double humidity, double celsius, double seconds) {
        double[] activity = activities.computeIfAbsent(celsius, this::activities);
        double warm = speed * law.temperatureFactor(celsius);
        double left = seconds;
        while (left > 0) {
            double most = 0;
            for (double each : moisture) {
                most = Math.max(most, each);
            }
            double fastest = warm * diffusivity(most);
            double rate = 0;
            for (int axis = 0; axis < 3; axis++) {
                rate += fastest * ratio[axis] / (size[axis] * size[axis]);
            }
            double step = Math.min(left, STABLE / rate);
            step(activity, warm, Math.min(MOST_ACTIVITY, Math.max(0, humidity)), SATURATION.pascals(celsius), step);
            left -= step;
        }
    }

    private void step(double[] activity, double warm, double humidity, double saturation, double seconds) {
        Arrays.fill(flux, 0);
        for (int at = 0; at < moisture.length; at++) {
            potential[at] = warm * potential(moisture[at]);
        }
        int[] stride = {cells * cells, cells, 1};
        for (int axis = 0; axis < 3; axis++) {
            double inside = ratio[axis] / (size[axis] * size[axis]);
            for (int at = 0; at < moisture.length; at++) {
                int place = at / stride[axis] % cells;
                if (place + 1 < cells) {
                    double passes = inside * (potential[at + stride[axis]] - potential[at]);
                    flux[at] += passes;
                    flux[at + stride[axis]] -= passes;
                } else {
                    flux[at] -= outward(axis, activity, warm, moisture[at], humidity, saturation);
                }
            }
        }
        for (int at = 0; at < moisture.length; at++) {
            moisture[at] += seconds * flux[at];
        }
    }

    /** What leaves a cell at the face, kg/kg a second: through half of it and through the film. */
    private double outward(
            int axis, double[] activity, double warm, double fraction, double humidity, double saturation) {
        double place = Math.min(fraction, full) / full * ACTIVITIES;
        int low = (int) Math.min(ACTIVITIES - 1.0, Math.max(0, place));
        double slope = (activity[low + 1] - activity[low]) * ACTIVITIES / full;
        double here = activity[low] + (place - low) * (activity[low + 1] - activity[low]);
        double density = water.dryDensity().value();
        double half = saturation * slope * size[axis] / 2 / (density * ratio[axis] * warm * diffusivity(fraction));
        return saturation * (here - humidity) / (resistance[axis] + half) / (density * size[axis]);
    }

    private double diffusivity(double fraction) {
        return law.referenceSquareMetresPerSecond()
                * Math.exp(law.moistureExponent() * Math.min(fraction, full) / sorption);
    }

    /** Integral of D over moisture. */
    private double potential(double fraction) {
        double steep = law.moistureExponent();
        double bound = Math.min(fraction, full) / sorption;
        return sorption
                * law.referenceSquareMetresPerSecond()
                * (steep > 0 ? Math.expm1(steep * bound) / steep : bound);
    }

    private double[] activities(double celsius) {
        double[] activity = new double[ACTIVITIES + 1];
        for (int i = 0; i <= ACTIVITIES; i++) {
            activity[i] = Math.min(1, water.isotherm().waterActivity(full / sorption * i / ACTIVITIES, celsius));
        }
        return activity;
    }
}
