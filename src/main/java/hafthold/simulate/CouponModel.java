package hafthold.simulate;

import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.knife.CouponSide;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.transport.SettlingTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * What coupons of one material would have read, whatever its figures are, against what they did read.
 *
 * <p>Water at each reading, by isotherm and passage; sizes by free movement with it and with heat; weights as dry weight
 * times one plus water. How large and heavy a coupon is when dry is not known and does not matter: of each side, and of the
 * weight, the scale that fits best is taken, which for a flat prior leaves the same likelihood up to a factor that hardly
 * changes. Errors of reading are normal and independent.
 */
public final class CouponModel {
    private static final double DAY_SECONDS = 86_400;

    /** Drier or damper than this the slope of the isotherm says little of how long things take. */
    private static final double DRIEST = 0.05;

    private final Material material;
    private final CouponUnknowns unknowns;
    private final List<Piece> pieces;
    private final List<Datum> data;

    /** One coupon and what its moisture is read from. */
    private record Piece(int number, Coupon coupon, GrainLie lie, CouponMoisture moisture) {}

    /**
     * What one coupon would have read.
     *
     * @param moisture at each reading, kg/kg
     * @param atRest what it would hold at rest in the air of each reading, kg/kg
     * @param sizes at each reading, m
     * @param kilograms at each reading, all pieces; 0 where it was never weighed
     * @param dryKilograms dry, all pieces; likewise
     */
    public record Told(
            double[] moisture,
            double[] atRest,
            Map<CouponSide, double[]> sizes,
            double[] kilograms,
            double dryKilograms) {}

    /**
     * One figure that was read.
     *
     * @param coupon number of the coupon
     * @param reading number of the reading; as many as there are readings for the weight from the oven
     * @param side which size; empty for a weight
     */
    public record Datum(int coupon, int reading, Optional<CouponSide> side) {}

    /**
     * A model.
     *
     * @param material which takes up water
     * @param coupons of it, one or more; their cuts fit it
     */
    public CouponModel(Material material, List<Coupon> coupons) {
        this(material, new CouponUnknowns(material, coupons, true), pieces(material, coupons));
    }

    private CouponModel(Material material, CouponUnknowns unknowns, List<Piece> pieces) {
        this.material = material;
        this.unknowns = unknowns;
        this.pieces = pieces;
        this.data = read(pieces);
    }

    private static List<Piece> pieces(Material material, List<Coupon> coupons) {
        return IntStream.range(0, coupons.size())
                .mapToObj(number -> {
                    Coupon coupon = coupons.get(number);
                    Cut cut = coupon.cut().orElse(material.usualCut());
                    return new Piece(number, coupon, new GrainLie(material, cut), new CouponMoisture(material, coupon));
                })
                .toList();
    }

    /**
     * The same with each figure on its own, where they usually go together: it shows what the coupons tell of each by
     * themselves. Its independent numbers are the {@link #numbers} of this one.
     */
    public CouponModel eachOnItsOwn() {
        return new CouponModel(material, new CouponUnknowns(material, unknowns.coupons(), false), pieces);
    }

    /** The same coupons after something else was read of them: readings may be added at the end of each. */
    public CouponModel reading(List<Coupon> others) {
        return new CouponModel(material, others);
    }

    /** Independent numbers for a model with more readings that lie where these lie. */
    public double[] carriedTo(CouponModel more, double[] independent) {
        return more.unknowns.carried(unknowns, independent);
    }

    /** The coupons. */
    public List<Coupon> coupons() {
        return unknowns.coupons();
    }

    /** How many numbers are not known. */
    public int unknowns() {
        return unknowns.size();
    }

    /** The numbers behind the figures, which go together as these do. */
    public double[] numbers(double[] independent) {
        return unknowns.correlated(independent);
    }

    /** What is left unexplained, over its standard error, by independent standard normal numbers; as {@link #data()}. */
    public UnaryOperator<double[]> residuals() {
        return independent -> left(unknowns.correlated(independent));
    }

    /** What coupon number so and so would have read. */
    public Told told(int coupon, double[] independent) {
        return told(pieces.get(coupon), unknowns.correlated(independent));
    }

    /** The figures of the material. */
    public CouponFigures figures(double[] independent) {
        return new CouponFigures(material, unknowns.doubt(unknowns.correlated(independent)));
    }

    /** Where the hygrometer's error lies in its range: 1 is the upper end, the air being damper than read. */
    public double hygrometerPosition(double[] independent) {
        return CouponUnknowns.hygrometer(unknowns.correlated(independent));
    }

    /** Movement of the width of a coupon with water, per kg/kg, from {@link CouponFigures#FROM_FRACTION}. */
    public double widthPerMoisture(int coupon, double[] independent) {
        Doubt doubt = unknowns.doubt(unknowns.correlated(independent), coupon);
        return motion(pieces.get(coupon), doubt, CouponFigures.FROM_FRACTION)
                .width()
                .perMoisture();
    }

    /**
     * How much a width cut like a coupon grows between two airs of 20 C, as a share of it.
     *
     * @param fromHumidity fraction
     * @param toHumidity fraction
     */
    public double widthStrain(int coupon, double[] independent, double fromHumidity, double toHumidity) {
        Doubt doubt = unknowns.doubt(unknowns.correlated(independent), coupon);
        CouponFigures figures = new CouponFigures(material, doubt);
        PartMotion motion = motion(pieces.get(coupon), doubt, figures.atRest(fromHumidity));
        double to = Math.min(figures.atRest(toHumidity), motion.stillAboveFraction());
        return motion.width().strain(to - motion.finishFraction(), 0);
    }

    /** Days in which about two thirds of a change are done, in the middle of the airs of a coupon. */
    public double settlingDays(int coupon, double[] independent) {
        Piece piece = pieces.get(coupon);
        List<CouponReading> readings = piece.coupon.readings();
        double humidity = readings.stream()
                .mapToDouble(one -> one.humidity().fraction())
                .average()
                .orElseThrow();
        double celsius = readings.stream()
                .mapToDouble(one -> one.temperature().celsius())
                .average()
                .orElseThrow();
        double factor = unknowns.doubt(unknowns.correlated(independent)).diffusivityFactor(material);
        return SettlingTime.eFoldingSeconds(
                        PartSlab.quicker(piece.moisture.slab(), factor),
                        celsius,
                        Math.max(DRIEST, Math.min(1 - DRIEST, humidity)),
                        new HylandWexlerSaturationPressure())
                / DAY_SECONDS;
    }

    /**
     * Dry mass per volume of a coupon, as tables state it: of a wood over its green volume, of anything else over that at
     * its first full reading, kg/m3. Empty where no reading has a weight and all three sizes.
     */
    public OptionalDouble density(int coupon, double[] independent) {
        Piece piece = pieces.get(coupon);
        OptionalInt full = fullReading(piece.coupon);
        if (full.isEmpty()) {
            return OptionalDouble.empty();
        }
        double[] numbers = unknowns.correlated(independent);
        Told told = told(piece, numbers);
        double moisture = told.moisture[full.getAsInt()];
        PartMotion motion = motion(piece, unknowns.doubt(numbers, coupon), moisture);
        double green = Double.isInfinite(motion.stillAboveFraction())
                ? 0
                : Math.max(0, motion.stillAboveFraction() - moisture);
        double volume = piece.coupon.pieces();
        for (CouponSide side : CouponSide.values()) {
            volume *= told.sizes.get(side)[full.getAsInt()]
                    * (1 + rate(motion, side).strain(green, 0));
        }
        return OptionalDouble.of(told.dryKilograms / volume);
    }

    /** Relative standard error of the density from reading alone. */
    public double densityError(int coupon) {
        Coupon one = pieces.get(coupon).coupon;
        double square = 0;
        for (CouponSide side : CouponSide.values()) {
            square +=
                    Math.pow(one.tools().sizeDeviationMetres() / one.size(side).metres(), 2)
                            / Math.max(1, one.sizesOf(side));
        }
        double kilograms = one.readings()
                .get(fullReading(one).orElseThrow())
                .weight()
                .orElseThrow()
                .kilograms();
        return Math.sqrt(square + Math.pow(one.tools().weightDeviationKilograms() / kilograms, 2) / one.weights());
    }

    private static OptionalInt fullReading(Coupon coupon) {
        return IntStream.range(0, coupon.readings().size())
                .filter(i -> coupon.readings().get(i).weight().isPresent()
                        && coupon.readings().get(i).sizes().size() == CouponSide.values().length)
                .findFirst();
    }

    /** What was read, in the order of the residuals. */
    public List<Datum> data() {
        return data;
    }

    private static List<Datum> read(List<Piece> pieces) {
        List<Datum> data = new ArrayList<>();
        for (Piece piece : pieces) {
            List<CouponReading> readings = piece.coupon.readings();
            for (int i = 0; i < readings.size(); i++) {
                for (CouponSide side : CouponSide.values()) {
                    if (readings.get(i).sizes().containsKey(side)) {
                        data.add(new Datum(piece.number, i, Optional.of(side)));
                    }
                }
                if (readings.get(i).weight().isPresent()) {
                    data.add(new Datum(piece.number, i, Optional.empty()));
                }
            }
            if (piece.coupon.ovenDry().isPresent()) {
                data.add(new Datum(piece.number, readings.size(), Optional.empty()));
            }
        }
        return List.copyOf(data);
    }

    /** How many scales were fitted to the data besides the unknowns: one a measured side, one a weight. */
    public int scales() {
        int scales = 0;
        for (Piece piece : pieces) {
            for (CouponSide side : CouponSide.values()) {
                scales += piece.coupon.sizesOf(side) > 0 ? 1 : 0;
            }
            scales += piece.coupon.weights() > 0 ? 1 : 0;
        }
        return scales;
    }

    private Told told(Piece piece, double[] numbers) {
        Coupon coupon = piece.coupon;
        Doubt doubt = unknowns.doubt(numbers, piece.number);
        double[][] water = piece.moisture.at(
                material,
                doubt,
                CouponUnknowns.hygrometer(numbers),
                unknowns.airs(numbers, piece.number),
                doubt.position(Input.STOCK, material));
        List<CouponReading> readings = coupon.readings();
        PartMotion motion = motion(piece, doubt, water[0][0]);
        double first = readings.get(0).temperature().celsius();
        Map<CouponSide, double[]> sizes = new EnumMap<>(CouponSide.class);
        for (CouponSide side : CouponSide.values()) {
            PartMotion.Rate rate = rate(motion, side);
            double[] grown = new double[readings.size()];
            for (int i = 0; i < grown.length; i++) {
                double change = Math.min(water[0][i], motion.stillAboveFraction()) - motion.finishFraction();
                grown[i] = 1 + rate.strain(change, readings.get(i).temperature().celsius() - first);
            }
            double scale = scale(coupon, side, grown);
            Arrays.setAll(grown, i -> grown[i] * scale);
            sizes.put(side, grown);
        }
        double[] weights = new double[readings.size()];
        Arrays.setAll(weights, i -> 1 + water[0][i]);
        double dry = dryWeight(coupon, weights);
        Arrays.setAll(weights, i -> weights[i] * dry);
        return new Told(water[0], water[1], sizes, weights, dry);
    }

    private static PartMotion.Rate rate(PartMotion motion, CouponSide side) {
        return switch (side) {
            case WIDTH -> motion.width();
            case THICKNESS -> motion.thickness();
            case LENGTH -> motion.length();
        };
    }

    private static PartMotion motion(Piece piece, Doubt doubt, double from) {
        return PartMotion.of(piece.lie, 1, from, new MoistureCourse(new double[] {from}, new double[] {0}), 0, doubt);
    }

    /** Size at the first reading that fits best; the size as told where a side was not measured. */
    private static double scale(Coupon coupon, CouponSide side, double[] grown) {
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
    private static double dryWeight(Coupon coupon, double[] heavier) {
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

    private double[] left(double[] numbers) {
        List<Told> told = pieces.stream().map(piece -> told(piece, numbers)).toList();
        return data.stream()
                .mapToDouble(datum -> left(datum, told.get(datum.coupon)))
                .toArray();
    }

    private double left(Datum datum, Told told) {
        Coupon coupon = pieces.get(datum.coupon).coupon;
        if (datum.reading == coupon.readings().size()) {
            return (coupon.ovenDry().orElseThrow().kilograms() - told.dryKilograms)
                    / coupon.tools().weightDeviationKilograms();
        }
        CouponReading reading = coupon.readings().get(datum.reading);
        return datum.side
                .map(side -> (reading.sizes().get(side).metres() - told.sizes.get(side)[datum.reading])
                        / coupon.tools().sizeDeviationMetres())
                .orElseGet(() -> (reading.weight().orElseThrow().kilograms() - told.kilograms[datum.reading])
                        / coupon.tools().weightDeviationKilograms());
    }
}
