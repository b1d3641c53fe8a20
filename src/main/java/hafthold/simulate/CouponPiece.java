package hafthold.simulate;

import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.knife.CouponSide;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.simulate.CouponModel.Datum;
import hafthold.simulate.CouponModel.Told;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * One coupon: what it would have read under any doubt, and how far that lies from what it did read.
 *
 * @param number of the coupon
 * @param lie how its grain lies
 * @param moisture what its moisture is read from
 */
record CouponPiece(int number, Coupon coupon, GrainLie lie, CouponMoisture moisture) {

    static CouponPiece of(int number, Coupon coupon, Material material) {
        Cut cut = coupon.cut().orElse(material.usualCut());
        return new CouponPiece(number, coupon, new GrainLie(material, cut), new CouponMoisture(material, coupon));
    }

    /** What it would have read. */
    Told told(CouponUnknowns unknowns, double[] numbers) {
        Doubt doubt = unknowns.doubt(numbers, number);
        double[][] water = moisture.at(
                lie.material(),
                doubt,
                unknowns.passage(numbers, number),
                CouponUnknowns.hygrometer(numbers),
                unknowns.airs(numbers, number));
        List<CouponReading> readings = coupon.readings();
        PartMotion motion = motion(doubt, water[0][0]);
        double first = readings.get(0).temperature().celsius();
        Map<CouponSide, double[]> sizes = new EnumMap<>(CouponSide.class);
        for (CouponSide side : CouponSide.values()) {
            PartMotion.Rate rate = rate(motion, side);
            double[] grown = new double[readings.size()];
            for (int i = 0; i < grown.length; i++) {
                double change = Math.min(water[0][i], motion.stillAboveFraction()) - motion.finishFraction();
                grown[i] = 1 + rate.strain(change, readings.get(i).temperature().celsius() - first);
            }
            double scale = scale(side, grown);
            Arrays.setAll(grown, i -> grown[i] * scale);
            sizes.put(side, grown);
        }
        double[] weights = new double[readings.size()];
        Arrays.setAll(weights, i -> 1 + water[0][i]);
        double dry = dryWeight(weights);
        Arrays.setAll(weights, i -> weights[i] * dry);
        return new Told(water[0], water[1], sizes, weights, dry);
    }

    /** How it moves from a moisture content, kg/kg. */
    PartMotion motion(Doubt doubt, double from) {
        return PartMotion.of(lie, 1, from, new MoistureCourse(new double[] {from}, new double[] {0}), 0, doubt);
    }

    static PartMotion.Rate rate(PartMotion motion, CouponSide side) {
        return switch (side) {
            case WIDTH -> motion.width();
            case THICKNESS -> motion.thickness();
            case LENGTH -> motion.length();
        };
    }

    /** Size at the first reading that fits best; the size as told where a side was not measured. */
    private double scale(CouponSide side, double[] grown) {
        double product = 0;
        double square = 0;
        for (int i = 0; i < grown.length; i++) {
            Length size = coupon.readings().get(i).sizes().get(side);
            if (size != null) {
                product += size.metres() * grown[i];
                square += grown[i] * grown[i];
            }
        }
        return square > 0 ? product / square : coupon.size(side).metres();
    }

    /** Dry weight that fits best; 0 where it was not weighed. */
    private double dryWeight(double[] heavier) {
        double product = coupon.ovenDry().map(Mass::kilograms).orElse(0.0);
        double square = coupon.ovenDry().isPresent() ? 1 : 0;
        for (int i = 0; i < heavier.length; i++) {
            Optional<Mass> weight = coupon.readings().get(i).weight();
            if (weight.isPresent()) {
                product += weight.get().kilograms() * heavier[i];
                square += heavier[i] * heavier[i];
            }
        }
        return square > 0 ? product / square : 0;
    }

    /** What was read of it, in order. */
    List<Datum> data() {
        List<Datum> data = new ArrayList<>();
        List<CouponReading> readings = coupon.readings();
        for (int i = 0; i < readings.size(); i++) {
            for (CouponSide side : CouponSide.values()) {
                if (readings.get(i).sizes().containsKey(side)) {
                    data.add(new Datum(number, i, Optional.of(side)));
                }
            }
            if (readings.get(i).weight().isPresent()) {
                data.add(new Datum(number, i, Optional.empty()));
            }
        }
        if (coupon.ovenDry().isPresent()) {
            data.add(new Datum(number, readings.size(), Optional.empty()));
        }
        return data;
    }

    /** How many scales are fitted to what was read: one a measured side, one for weights. */
    int scales() {
        int scales = coupon.weights() > 0 ? 1 : 0;
        for (CouponSide side : CouponSide.values()) {
            scales += coupon.sizesOf(side) > 0 ? 1 : 0;
        }
        return scales;
    }

    /** What is left unexplained of one figure, over its standard error. */
    double left(Datum datum, Told told) {
        if (datum.reading() == coupon.readings().size()) {
            return (coupon.ovenDry().orElseThrow().kilograms() - told.dryKilograms())
                    / coupon.tools().weightDeviationKilograms();
        }
        CouponReading reading = coupon.readings().get(datum.reading());
        return datum.side()
                .map(side -> (reading.sizes().get(side).metres() - told.sizes().get(side)[datum.reading()])
                        / coupon.tools().sizeDeviationMetres())
                .orElseGet(() -> (reading.weight().orElseThrow().kilograms() - told.kilograms()[datum.reading()])
                        / coupon.tools().weightDeviationKilograms());
    }

    /** The first reading that has a weight and all three sizes. */
    OptionalInt fullReading() {
        return IntStream.range(0, coupon.readings().size())
                .filter(i -> coupon.readings().get(i).weight().isPresent()
                        && coupon.readings().get(i).sizes().size() == CouponSide.values().length)
                .findFirst();
    }
}
