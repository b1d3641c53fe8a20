package hafthold.simulate;

import hafthold.air.SeasonalWeather;
import hafthold.knife.WorkState;
import hafthold.knife.WorkState.MeasuredMoisture;
import hafthold.knife.WorkState.SettledAir;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.Swelling;
import hafthold.material.WaterUptake;
import hafthold.quantity.Band;
import hafthold.source.Figure;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/**
 * Where every input lies within its range: a point in a space in which 0 is the value of an input, -1 and +1 the low and
 * the high end of its range.
 *
 * <p>Between and beyond value and end a figure that is positive throughout is followed on a scale of ratios, so that none
 * turns negative; any other on a straight line. The ranges that no table states are given here with what they rest on.
 *
 * <p>A rack asks hundreds of thousands of times, mostly before anything is well compiled: no lambdas here that take something
 * with them, as making one is then a call out of the program.
 *
 * @param ofOrder position of each input of the order
 * @param ofMaterial position of each input of a material
 * @param ofSeason position of the seasons of a year, 0 the year that {@code ofOrder} is about, and of other years
 */
record Doubt(
        ToDoubleFunction<Input> ofOrder,
        ToDoubleBiFunction<Input, Material> ofMaterial,
        ToDoubleBiFunction<Input, Integer> ofSeason) {
    /** Everything at its value. */
    static final Doubt NONE = new Doubt(input -> 0, (input, material) -> 0);

    /** A cheap hygrometer is off by 5 points of relative humidity (common practice, no source). */
    private static final double HYGROMETER_FRACTION = 0.05;

    /** Weighing, drying and meters leave moisture content uncertain by one point (common practice, no source). */
    static final double METER_FRACTION = 0.01;

    /** Stock said to have settled is off by a twentieth of its moisture (assumed). */
    private static final double UNSETTLED_SHARE = 0.05;

    /** Boards sold as flat-, rift- or quarter-sawn stray from it by 20 degrees (assumed). */
    private static final double RING_TURN_RADIANS = Math.toRadians(20);

    /** Grain of straight stock runs out by 1 in 12 (assumed). */
    private static final double RUN_OUT_RADIANS = Math.atan(1 / 12.0);

    /** Of a normal distribution, the 95 % point over the standard deviation. */
    private static final double END_OVER_DEVIATION = 1.645;

    /**
     * Share of a stress that is left after weeks: half, a quarter to all of it (assumed; wood and glue creep more while
     * moisture changes).
     */
    private static final Band LASTING_SHARE = new Band(0.25, 0.5, 1);

    /** A doubt for which every year is the same. */
    Doubt(ToDoubleFunction<Input> ofOrder, ToDoubleBiFunction<Input, Material> ofMaterial) {
        this(ofOrder, ofMaterial, (input, year) -> ofOrder.applyAsDouble(input));
    }

    /** True of {@link #NONE}. */
    boolean isNone() {
        return ofOrder == NONE.ofOrder;
    }

    /**
     * One input away from its value, in every material.
     *
     * @param position its position
     */
    static Doubt alone(Input input, double position) {
        return new Doubt(asked -> asked == input ? position : 0, (asked, material) -> asked == input ? position : 0);
    }

    /**
     * The same about the air of the workshop: its hygrometer stands where the humidity of the customer's place stands, and
     * no household's habits nor seasons of the customer's are about it.
     */
    Doubt ofShop() {
        if (isNone()) {
            return NONE;
        }
        return new Doubt(
                input -> switch (input) {
                    case PLACE_HUMIDITY -> position(Input.HYGROMETER);
                    case HYGROMETER, HABITS, DRY_SEASON, DAMP_SEASON -> 0;
                    default -> position(input);
                },
                ofMaterial);
    }

    /** Position of an input of the order. */
    private double position(Input input) {
        return ofOrder.applyAsDouble(input);
    }

    /** Position of an input of a material. */
    double position(Input input, Material material) {
        return ofMaterial.applyAsDouble(input, material);
    }

    /** A figure at a position within and beyond its range. */
    static double at(double position, Band band) {
        if (position == 0) {
            return band.value();
        }
        double end = position < 0 ? band.low() : band.high();
        if (band.low() > 0) {
            return band.value() * Math.pow(end / band.value(), Math.abs(position));
        }
        double straight = band.value() + Math.abs(position) * (end - band.value());
        return band.low() == 0 ? Math.max(0, straight) : straight;
    }

    /** Factor on the diffusivity of a material that takes up water. */
    double diffusivityFactor(Material material) {
        return material.water().isPresent()
                ? diffusivityFactor(material.water().get(), position(Input.DIFFUSIVITY, material))
                : 1;
    }

    /** Factor on the diffusivity at a position. */
    static double diffusivityFactor(WaterUptake water, double position) {
        Band band = water.diffusivityReference().band();
        return at(position, band) / band.value();
    }

    /** Factor on the moisture contents of a material. */
    double sorptionFactor(Material material) {
        return material.water().isPresent()
                ? at(
                        position(Input.SORPTION, material),
                        material.water().get().sorptionFactor().band())
                : 1;
    }

    /** Strain per moisture content of a material along one axis. */
    double perMoisture(Material material, Axis axis, double fromMoistureFraction) {
        if (material.water().isEmpty()) {
            return 0;
        }
        Swelling swelling = material.water().get().swelling();
        return swelling.perMoisture(axis, fromMoistureFraction)
                * at(position(swelling(axis), material), swelling.relativeBand(axis));
    }

    private static Input swelling(Axis axis) {
        return switch (axis) {
            case ACROSS -> Input.SWELLING_ACROSS;
            case THROUGH -> Input.SWELLING_THROUGH;
            default -> Input.SWELLING_ALONG;
        };
    }

    /** Thermal expansion of a material along one axis, 1/K. */
    double perKelvin(Material material, Axis axis) {
        return at(
                position(Input.THERMAL_EXPANSION, material),
                material.thermalExpansionPerKelvin().get(axis).band());
    }

    /** Shift of the customer's relative humidity for a place that may be off by so much, fraction. */
    double airHumidityShift(double doubtFraction) {
        return position(Input.PLACE_HUMIDITY) * doubtFraction;
    }

    /** Shift of the relative humidity in the driest season of a year against the normal one, fraction. */
    double drySeasonShift() {
        return drySeasonShift(0);
    }

    /** Shift of the relative humidity in the dampest season of a year against the normal one, fraction. */
    double dampSeasonShift() {
        return dampSeasonShift(0);
    }

    /** The same of one of several years that have nothing to do with each other. */
    double drySeasonShift(int year) {
        return seasonShift(Input.DRY_SEASON, year);
    }

    /** The same of one of several years that have nothing to do with each other. */
    double dampSeasonShift(int year) {
        return seasonShift(Input.DAMP_SEASON, year);
    }

    private double seasonShift(Input season, int year) {
        return ofSeason.applyAsDouble(season, year) * END_OVER_DEVIATION * SeasonalWeather.humiditySpreadFraction();
    }

    /** Habits of the household, from dry at -1 to damp at +1. */
    double habits() {
        return position(Input.HABITS);
    }

    /** Relative humidity that the workshop's air really had when its hygrometer said this. */
    double madeHumidity(double readFraction) {
        return Math.min(1, Math.max(0, readFraction + position(Input.HYGROMETER) * HYGROMETER_FRACTION));
    }

    /** Factor on the moisture content of stock that is said to have settled. */
    double unsettledFactor(Material material) {
        return 1 + position(Input.STOCK, material) * UNSETTLED_SHARE;
    }

    /** Moisture content at a moment of the work, kg/kg; zero for what takes up no water. */
    double stockFraction(Material material, WorkState state) {
        if (material.water().isEmpty()) {
            return 0;
        }
        if (state instanceof MeasuredMoisture measured) {
            return measuredMoisture(measured.moisture().fraction());
        }
        SettledAir settled = (SettledAir) state;
        return sorptionFactor(material)
                * unsettledFactor(material)
                * material.water()
                        .orElseThrow()
                        .isotherm()
                        .moistureFraction(
                                madeHumidity(settled.humidity().fraction()),
                                settled.temperature().celsius());
    }

    /** Moisture content that stock really had when it was measured, kg/kg. */
    double measuredMoisture(double readFraction) {
        return Math.max(0, readFraction + position(Input.HYGROMETER) * METER_FRACTION);
    }

    /**
     * Moisture content that stock of a season really had when it was read, kg/kg: there the hygrometer is that of the
     * workshop, and the meter takes the place of how far the stock has settled.
     */
    double meteredMoisture(Material material, double readFraction) {
        return Math.max(0, readFraction + position(Input.STOCK, material) * METER_FRACTION);
    }

    /** Share of a stress that is left after weeks, at most 1. */
    double lastingShare() {
        return Math.min(1, at(position(Input.RELAXATION), LASTING_SHARE));
    }

    /** A stiffness of a material. */
    double stiffness(Material material, Figure figure) {
        return at(position(Input.STIFFNESS, material), figure.band());
    }

    /** A strength of a material. */
    double strength(Material material, Figure figure) {
        return at(position(Input.STRENGTH, material), figure.band());
    }

    /** A temperature up to which a material keeps its shape. */
    double softening(Material material, Figure figure) {
        return at(position(Input.SOFTENING, material), figure.band());
    }

    /** Factor on the stiffness of a material across its grain. */
    double stiffnessFactor(Material material) {
        Optional<Figure> stated = material.sheet().figure(Property.YOUNGS_MODULUS, Axis.ACROSS);
        return stated.isPresent()
                ? stiffness(material, stated.get()) / stated.get().value()
                : 1;
    }

    /** Factor on the strength of a material in tension across its grain. */
    double strengthFactor(Material material) {
        Optional<Figure> stated = material.sheet().figure(Property.TENSION_STRENGTH, Axis.ACROSS);
        return stated.isPresent()
                ? strength(material, stated.get()) / stated.get().value()
                : 1;
    }

    /** Factor on the use of strength beside a pin, by stiffness, strength and relaxation together. */
    double crackFactor(Material material) {
        return stiffnessFactor(material) / strengthFactor(material) * lastingShare() / LASTING_SHARE.value();
    }

    /** Angle by which the rings are turned away from the stated cut, radians; what has no rings has none. */
    double ringTurnRadians(Material material, Cut cut) {
        return Input.CUT.matters(material, cut) && cut != Cut.BURL
                ? position(Input.CUT, material) * RING_TURN_RADIANS
                : 0;
    }

    /** How the grain of a burl holds itself back: -1 for most, 0 for the value, 1 for least, nothing beyond. */
    double grainLean(Material material) {
        return Math.max(-1, Math.min(1, position(Input.CUT, material)));
    }

    /**
     * Share of the grain's own movement that runs into each direction across it: half the squared sine of the angle at
     * which the grain leaves the handle's axes, as it may dive through the face or the edge.
     */
    double runOutShare(Material material, Cut cut) {
        double sine = Input.RUN_OUT.matters(material, cut)
                ? Math.sin(position(Input.RUN_OUT, material) * RUN_OUT_RADIANS)
                : 0;
        return sine * sine / 2;
    }
}
