package hafthold.simulate;

import hafthold.knife.StockBlock;
import hafthold.knife.StockCoupon;
import hafthold.knife.StockReading;
import hafthold.material.Cut;
import hafthold.numeric.CommonLevel;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What was read on a block, held against a course of its moisture.
 *
 * <p>Weighings go by the logarithm of the dry mass, which volume and the usual density of the wood tell beforehand; sizes by
 * that of the size when first measured. Both unknowns are taken out by sums, not drawn. The deviations are judged: a balance
 * is off by half its step, a caliper by 0.02 mm, air that was not recorded day by day leaves the moisture open by 0.15
 * points, the sums by 4 % of a change and 15 % of the water that stood free in it, a meter is right within two points, an oven-dried
 * slice within half a point of its block; all standard deviations.
 */
final class StockReadings {
    /** Standard deviation of the density of one wood: 10 % (Wood Handbook, chapter 5, from memory). */
    private static final double DENSITY_DEVIATION = 0.10;

    private static final double END_OVER_DEVIATION = 1.645;
    private static final double STEP_SHARE = 0.5;
    private static final double UNRECORDED_AIR = 0.0015;
    /** What the sums may be off, of a change: see how the block follows the slab solver. */
    private static final double MODEL_SHARE = 0.04;

    private static final double FREE_WATER_SHARE = 0.15;
    private static final double CALIPER_METRES = 0.02e-3;
    private static final double UNRECORDED_STRAIN = 2e-4;
    private static final double SIZE_BEFORE = 0.03;
    private static final double METER = 0.02;
    private static final double SLICE = 0.005;

    private final StockBlock block;
    private final StockPast past;
    private final double balanceKilograms;
    private final double densityDeviation;

    StockReadings(StockBlock block, StockPast past, Mass balance) {
        this.block = block;
        this.past = past;
        balanceKilograms = balance.kilograms();
        var density = block.material().water().orElseThrow().dryDensity().band();
        double ofTable = density.low() > 0
                ? Math.log(density.high() / density.low()) / (2 * END_OVER_DEVIATION)
                : DENSITY_DEVIATION;
        densityDeviation = Math.max(DENSITY_DEVIATION, ofTable);
    }

    /** How many figures were read; what the wood usually weighs counts as one where it was weighed. */
    int count() {
        int sizes = 0;
        for (StockReading reading : block.readings()) {
            sizes += (reading.weight().isPresent() ? 1 : 0)
                    + (reading.width().isPresent() ? 1 : 0)
                    + (reading.thickness().isPresent() ? 1 : 0)
                    + (reading.meter().isPresent() ? 1 : 0);
        }
        return sizes + (block.coupon().isPresent() ? 1 : 0) + (block.weighings() > 0 ? 1 : 0);
    }

    /** What the readings say under a course. */
    record Told(double dryKilograms, double logLikelihood, double misfit, StockFurthest furthest) {}

    /**
     * Holds them against a course.
     *
     * @param mean moisture at the places of {@link StockPast#at}
     */
    Told under(BlockPiece piece, List<Double> mean) {
        List<StockReading> weighed = with(StockReading::weight);
        List<StockReading> wide = with(StockReading::width);
        List<StockReading> thick = with(StockReading::thickness);
        CommonLevel weights = weights(weighed, piece, mean);
        Cut cut = block.cut();
        Map<CommonLevel, List<StockReading>> all = new LinkedHashMap<>();
        all.put(weights, weighed);
        all.put(sizes(wide, piece, mean, cut.width(), StockReading::width), wide);
        all.put(sizes(thick, piece, mean, cut.thickness(), StockReading::thickness), thick);
        double log = 0;
        double misfit = weights.offBefore() * weights.offBefore();
        StockFurthest furthest = new StockFurthest(Math.abs(weights.offBefore()), Optional.empty());
        for (Map.Entry<CommonLevel, List<StockReading>> read : all.entrySet()) {
            CommonLevel level = read.getKey();
            log += level.logLikelihood();
            misfit += level.misfit();
            if (level.furthestOff() > furthest.deviations()) {
                furthest = new StockFurthest(
                        level.furthestOff(),
                        Optional.of(read.getValue().get(level.furthest()).on()));
            }
        }
        for (StockFurthest direct : direct(mean)) {
            double off = direct.deviations();
            log -= off * off / 2;
            misfit += off * off;
            furthest = furthest.orFurther(direct);
        }
        return new Told(Math.exp(weights.level()), log, misfit, furthest);
    }

    private <T> List<StockReading> with(Function<StockReading, Optional<T>> which) {
        return block.readings().stream()
                .filter(reading -> which.apply(reading).isPresent())
                .toList();
    }

    private CommonLevel weights(List<StockReading> weighed, BlockPiece piece, List<Double> mean) {
        double[] seen = new double[weighed.size()];
        double[] deviation = new double[seen.length];
        for (int i = 0; i < seen.length; i++) {
            double kilograms = weighed.get(i).weight().orElseThrow().kilograms();
            double moisture = mean.get(past.at(weighed.get(i).on()));
            seen[i] = Math.log(kilograms / (1 + moisture));
            double sums = Math.hypot(
                    MODEL_SHARE * Math.abs(moisture - mean.get(0)),
                    FREE_WATER_SHARE * Math.max(0, mean.get(0) - piece.saturatedFraction()));
            deviation[i] = Math.hypot(
                    STEP_SHARE * balanceKilograms / kilograms, Math.hypot(UNRECORDED_AIR, sums) / (1 + moisture));
        }
        double before = Math.log(piece.usualDryKilograms(block.size().cubicMetres(), mean.get(0)));
        return new CommonLevel(before, densityDeviation, seen, deviation);
    }

    private CommonLevel sizes(
            List<StockReading> measured,
            BlockPiece piece,
            List<Double> mean,
            Cut.Shares shares,
            Function<StockReading, Optional<Length>> which) {
        double[] seen = new double[measured.size()];
        double[] deviation = new double[seen.length];
        for (int i = 0; i < seen.length; i++) {
            double metres = which.apply(measured.get(i)).orElseThrow().metres();
            double moisture = mean.get(past.at(measured.get(i).on()));
            seen[i] = Math.log(metres / (1 + piece.strain(shares, mean.get(0), moisture)));
            deviation[i] = Math.hypot(CALIPER_METRES / metres, UNRECORDED_STRAIN);
        }
        double before = seen.length == 0 ? 0 : seen[0];
        return new CommonLevel(before, SIZE_BEFORE, seen, deviation);
    }

    /** What tells moisture by itself, in its deviations. */
    private List<StockFurthest> direct(List<Double> mean) {
        List<StockFurthest> off = new ArrayList<>();
        for (StockReading reading : block.readings()) {
            reading.meter()
                    .ifPresent(meter -> off.add(new StockFurthest(
                            Math.abs(meter.fraction() - mean.get(past.at(reading.on()))) / METER,
                            Optional.of(reading.on()))));
        }
        block.coupon()
                .ifPresent(slice -> off.add(new StockFurthest(Math.abs(offOf(slice, mean)), Optional.of(slice.on()))));
        return off;
    }

    private double offOf(StockCoupon slice, List<Double> mean) {
        double weighing =
                STEP_SHARE * balanceKilograms / slice.dry().kilograms() * Math.hypot(1, 1 + slice.moistureFraction());
        return (slice.moistureFraction() - mean.get(past.at(slice.on()))) / Math.hypot(SLICE, weighing);
    }
}
