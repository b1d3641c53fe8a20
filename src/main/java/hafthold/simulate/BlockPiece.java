package hafthold.simulate;

import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.knife.StockBlock;
import hafthold.knife.StockBlock.Sealed;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.WaterUptake;
import hafthold.source.PublishedModel;
import hafthold.transport.BlockMoisture;
import hafthold.transport.SheetModes;
import hafthold.transport.StillAirFilm;
import java.util.List;

/**
 * One block as it may be: its figures at one point of their ranges.
 *
 * <p>Water passes with the diffusivity that a change of air sees on the whole: between the surface, which is at rest with
 * the air, and the mean of the block D is taken 0.36 of the way from the surface. That is where the weighted means of D for
 * drying, weight (C0 - C)^0.85, and for wetting, weight C^(2/3), lie: 0.35 and 0.375 of the way.
 *
 * <p>Water that stands free above fibre saturation does not move by itself: it waits until the wood about it has dried, so
 * that D counts as none there, and the mean of D over the whole fall, with the same weights, is so much the less. Sap that
 * still flows would be faster: so this errs on the late side.
 */
@PublishedModel(
        source = "crank-1975",
        locator = "weighted means of a diffusivity that depends on concentration, as remembered",
        validity = "a change of air at once, D that rises up to some tenfold over it; checked against the slab solver")
final class BlockPiece {
    private static final double FROM_SURFACE = 0.36;
    /** One more than the exponent of the weights for drying. */
    private static final double DRYING_WEIGHT = 1.85;
    /** The core is never further from rest than that many times the mean, once the slowest mode is left: (pi/2)^3. */
    private static final double CORE_OVER_MEAN = 4;

    private static final double MOST_ACTIVITY = 0.97;
    private static final HylandWexlerSaturationPressure SATURATION = new HylandWexlerSaturationPressure();

    private final WaterUptake water;
    private final StockInputs inputs;
    private final double speed;
    private final double sorption;
    private final double saturated;
    private final SheetModes thickness;
    private final SheetModes width;
    private final SheetModes length;

    /**
     * A block.
     *
     * @param inputs where its figures lie in their ranges
     */
    BlockPiece(StockBlock block, StockStore store, StockInputs inputs) {
        this.inputs = inputs;
        water = block.material().water().orElseThrow();
        speed = DryingSpeed.of(block.material()) * Doubt.diffusivityFactor(water, inputs.of(StockInput.DIFFUSIVITY));
        sorption =
                Doubt.at(inputs.of(StockInput.SORPTION), water.sorptionFactor().band());
        saturated = water.swelling().stillAboveFraction();
        double along =
                Doubt.at(inputs.of(StockInput.ALONG_RATIO), water.alongRatio().band());
        double across = water.acrossRatio().value();
        double wax =
                Doubt.at(inputs.of(StockInput.SEAL), store.seal().resistance().band());
        Faces faces = new Faces(store, along, across);
        Cut cut = block.cut();
        boolean isDipped = block.sealed() == Sealed.ALL;
        double endWax = block.sealed() == Sealed.NONE ? 0 : wax;
        double sideWax = isDipped ? wax : 0;
        thickness = faces.open(block.size().thickness().metres(), cut.thickness(), sideWax);
        width = faces.open(block.size().width().metres(), cut.width(), sideWax);
        length = faces.open(block.size().length().metres(), cut.length(), endWax);
    }

    /** Pairs of faces, with film and wax, in the usual air of the storage. */
    private final class Faces {
        private final double diffusivity;
        private final double flux;
        private final double along;
        private final double across;

        Faces(StockStore store, double along, double across) {
            this.along = along;
            this.across = across;
            double celsius = store.air().meanCelsius();
            double moisture = balance(store.air().meanHumidityFraction(), celsius);
            diffusivity = diffusivity(moisture, celsius);
            flux = SATURATION.pascals(celsius)
                    * water.isotherm().waterActivitySlope(moisture / sorption, celsius)
                    / (sorption * water.dryDensity().value());
        }

        SheetModes open(double metres, Cut.Shares shares, double wax) {
            double ratio = shares.mean(along, across, 1);
            double resistance = StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM + wax;
            double half = metres / 2;
            return SheetModes.open(half, half * flux / (resistance * diffusivity * ratio), ratio);
        }
    }

    /** Where its figures lie. */
    StockInputs inputs() {
        return inputs;
    }

    /** Moisture content at rest, kg/kg. */
    double balance(double humidityFraction, double celsius) {
        return sorption
                * water.isotherm().moistureFraction(Math.min(MOST_ACTIVITY, Math.max(0, humidityFraction)), celsius);
    }

    /** Moisture content above which water stands free in it, kg/kg; infinite where it never does. */
    double saturatedFraction() {
        return saturated;
    }

    private double diffusivity(double moistureFraction, double celsius) {
        return speed
                * water.diffusivity().squareMetresPerSecond(Math.min(saturated, moistureFraction / sorption), celsius);
    }

    /** The block with the same moisture content everywhere, kg/kg. */
    BlockMoisture uniform(double fraction) {
        return new BlockMoisture(thickness, width, length, fraction);
    }

    /** Lets it lie in air. */
    void lie(BlockMoisture moisture, double humidityFraction, double celsius, double seconds) {
        moisture.meet(balance(humidityFraction, celsius));
        double full = saturated * sorption;
        double seen = seenFraction(moisture, full);
        moisture.pass(boundShare(moisture, full) * diffusivity(seen, celsius) * seconds);
    }

    /**
     * The moisture content whose diffusivity a change of air sees on the whole, kg/kg.
     *
     * @param full moisture content above which water is free and does not diffuse
     */
    static double seenFraction(BlockMoisture moisture, double full) {
        double rest = moisture.balanceFraction();
        return rest + FROM_SURFACE * (Math.min(full, moisture.meanFraction()) - rest);
    }

    /** Weight of the water that is bound, in the fall of moisture from the core to the surface. */
    private static double boundShare(BlockMoisture moisture, double full) {
        double rest = moisture.balanceFraction();
        boolean isBoundOnly = rest + CORE_OVER_MEAN * (moisture.meanFraction() - rest) <= full;
        double fall = isBoundOnly || rest >= full ? 0 : moisture.coreFraction() - rest;
        return fall <= full - rest ? 1 : 1 - Math.pow(1 - (full - rest) / fall, DRYING_WEIGHT);
    }

    /** Share of what is left that the slowest mode loses in a time, near rest in some air. */
    double lost(BlockMoisture moisture, double humidityFraction, double celsius, double seconds) {
        double d = diffusivity(balance(humidityFraction, celsius), celsius);
        return -Math.expm1(-moisture.slowestRate() * d * seconds);
    }

    /** Change of a size of the block between two moisture contents, strain of the first. */
    double strain(Cut.Shares shares, double from, double to) {
        return shares.mean(strain(Axis.ALONG, from, to), strain(Axis.ACROSS, from, to), strain(Axis.THROUGH, from, to));
    }

    private double strain(Axis axis, double from, double to) {
        double position = inputs.of(StockInput.SWELLING);
        return water.swelling().strain(axis, from, to)
                * Doubt.at(position, water.swelling().relativeBand(axis));
    }

    /** Dry mass of a volume that was measured at a moisture content, by the usual density of the wood, kg. */
    double usualDryKilograms(double cubicMetres, double moistureFraction) {
        double shrunk = 1;
        if (Double.isFinite(saturated)) {
            for (Axis axis : List.of(Axis.ALONG, Axis.ACROSS, Axis.THROUGH)) {
                shrunk *= 1 + strain(axis, saturated, moistureFraction);
            }
        }
        return water.dryDensity().value() * cubicMetres / shrunk;
    }
}
