package hafthold.simulate;

import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.knife.CouponSide;
import hafthold.material.Material;
import hafthold.transport.SettlingTime;
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
    private final List<CouponPiece> pieces;
    private final List<Datum> data;

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

    private CouponModel(Material material, CouponUnknowns unknowns, List<CouponPiece> pieces) {
        this.material = material;
        this.unknowns = unknowns;
        this.pieces = pieces;
        this.data = pieces.stream().flatMap(piece -> piece.data().stream()).toList();
    }

    private static List<CouponPiece> pieces(Material material, List<Coupon> coupons) {
        return IntStream.range(0, coupons.size())
                .mapToObj(number -> CouponPiece.of(number, coupons.get(number), material))
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

    /** How many of the first numbers are figures of the material. */
    public static int figuresAsked() {
        return CouponUnknowns.OF_MATERIAL.size();
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
        return independent -> {
            double[] numbers = unknowns.correlated(independent);
            List<Told> told =
                    pieces.stream().map(piece -> piece.told(unknowns, numbers)).toList();
            return data.stream()
                    .mapToDouble(datum -> pieces.get(datum.coupon).left(datum, told.get(datum.coupon)))
                    .toArray();
        };
    }

    /** What coupon number so and so would have read. */
    public Told told(int coupon, double[] independent) {
        return pieces.get(coupon).told(unknowns, unknowns.correlated(independent));
    }

    /** The figures of the material. */
    public CouponFigures figures(double[] independent) {
        return new CouponFigures(material, unknowns.doubt(unknowns.correlated(independent)));
    }

    /** Where the hygrometer's error lies in its range: 1 is the upper end, the air being damper than read. */
    public double hygrometerPosition(double[] independent) {
        return CouponUnknowns.hygrometer(unknowns.correlated(independent));
    }

    /** How far the rings of a coupon are turned away from its cut, degrees, 0 or more. */
    public double ringTurnDegrees(int coupon, double[] independent) {
        CouponPiece piece = pieces.get(coupon);
        Doubt doubt = unknowns.doubt(unknowns.correlated(independent), coupon);
        return Math.abs(Math.toDegrees(
                doubt.ringTurnRadians(material, piece.coupon().cut().orElse(material.usualCut()))));
    }

    /** Movement of the width of a coupon with water, per kg/kg, from {@link CouponFigures#FROM_FRACTION}. */
    public double widthPerMoisture(int coupon, double[] independent) {
        Doubt doubt = unknowns.doubt(unknowns.correlated(independent), coupon);
        return pieces.get(coupon)
                .motion(doubt, CouponFigures.FROM_FRACTION)
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
        PartMotion motion = pieces.get(coupon).motion(doubt, figures.atRest(fromHumidity));
        double to = Math.min(figures.atRest(toHumidity), motion.stillAboveFraction());
        return motion.width().strain(to - motion.finishFraction(), 0);
    }

    /** Days in which about two thirds of a change are done, in the middle of the airs of a coupon. */
    public double settlingDays(int coupon, double[] independent) {
        CouponPiece piece = pieces.get(coupon);
        List<CouponReading> readings = piece.coupon().readings();
        double humidity = readings.stream()
                .mapToDouble(one -> one.humidity().fraction())
                .average()
                .orElseThrow();
        double celsius = readings.stream()
                .mapToDouble(one -> one.temperature().celsius())
                .average()
                .orElseThrow();
        double[] numbers = unknowns.correlated(independent);
        double factor = unknowns.doubt(numbers).diffusivityFactor(material) * unknowns.passage(numbers, coupon);
        return SettlingTime.eFoldingSeconds(
                        PartSlab.quicker(piece.moisture().slab(), factor),
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
        CouponPiece piece = pieces.get(coupon);
        OptionalInt full = piece.fullReading();
        if (full.isEmpty()) {
            return OptionalDouble.empty();
        }
        double[] numbers = unknowns.correlated(independent);
        Told told = piece.told(unknowns, numbers);
        double moisture = told.moisture[full.getAsInt()];
        PartMotion motion = piece.motion(unknowns.doubt(numbers, coupon), moisture);
        double green = Double.isInfinite(motion.stillAboveFraction())
                ? 0
                : Math.max(0, motion.stillAboveFraction() - moisture);
        double volume = piece.coupon().pieces();
        for (CouponSide side : CouponSide.values()) {
            volume *= told.sizes.get(side)[full.getAsInt()]
                    * (1 + CouponPiece.rate(motion, side).strain(green, 0));
        }
        return OptionalDouble.of(told.dryKilograms / volume);
    }

    /** Relative standard error of the density from reading alone. */
    public double densityError(int coupon) {
        CouponPiece piece = pieces.get(coupon);
        Coupon one = piece.coupon();
        double square = 0;
        for (CouponSide side : CouponSide.values()) {
            square +=
                    Math.pow(one.tools().sizeDeviationMetres() / one.size(side).metres(), 2)
                            / Math.max(1, one.sizesOf(side));
        }
        double kilograms = one.readings()
                .get(piece.fullReading().orElseThrow())
                .weight()
                .orElseThrow()
                .kilograms();
        return Math.sqrt(square + Math.pow(one.tools().weightDeviationKilograms() / kilograms, 2) / one.weights());
    }

    /** What was read, in the order of the residuals. */
    public List<Datum> data() {
        return data;
    }

    /** How many scales were fitted to the data besides the unknowns: one a measured side, one a weight. */
    public int scales() {
        return pieces.stream().mapToInt(CouponPiece::scales).sum();
    }
}
