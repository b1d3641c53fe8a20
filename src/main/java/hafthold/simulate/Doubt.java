package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Band;
import hafthold.source.Figure;
import java.util.List;
import java.util.Locale;

/**
 * One input taken to one end of its range, all others held at their values: the steps from which the band of an answer
 * is built.
 *
 * @param input what is in doubt
 * @param side -1 for the low end, 0 for the value, 1 for the high end
 */
record Doubt(Input input, int side) {

    /** Inputs an answer rests on. */
    enum Input {
        NOTHING,
        SWELLING,
        SORPTION,
        DIFFUSIVITY,
        THERMAL_EXPANSION,
        PLACE_HUMIDITY,
        HYGROMETER,
        CUT,
        STIFFNESS,
        RELAXATION,
        STRENGTH;

        /** The word used in answers. */
        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A cheap hygrometer is off by 5 points of relative humidity (common practice, no source). */
    private static final double HYGROMETER_FRACTION = 0.05;

    /** Boards sold as flat-, rift- or quarter-sawn stray from it by 20 degrees (assumed). */
    private static final double RING_TURN_RADIANS = Math.toRadians(20);

    /** Everything at its value. */
    static final Doubt NONE = new Doubt(Input.NOTHING, 0);

    /** The inputs varied one at a time, both ways. */
    static final List<Doubt> ONE_AT_A_TIME = List.of(
            new Doubt(Input.SWELLING, -1),
            new Doubt(Input.SWELLING, 1),
            new Doubt(Input.SORPTION, -1),
            new Doubt(Input.SORPTION, 1),
            new Doubt(Input.DIFFUSIVITY, -1),
            new Doubt(Input.DIFFUSIVITY, 1),
            new Doubt(Input.THERMAL_EXPANSION, -1),
            new Doubt(Input.THERMAL_EXPANSION, 1),
            new Doubt(Input.PLACE_HUMIDITY, -1),
            new Doubt(Input.PLACE_HUMIDITY, 1),
            new Doubt(Input.HYGROMETER, -1),
            new Doubt(Input.HYGROMETER, 1),
            new Doubt(Input.CUT, -1),
            new Doubt(Input.CUT, 1));

    /** The inputs that only what is glued and pinned depends on, both ways. */
    static final List<Doubt> OF_A_BOND = List.of(
            new Doubt(Input.STIFFNESS, -1),
            new Doubt(Input.STIFFNESS, 1),
            new Doubt(Input.RELAXATION, -1),
            new Doubt(Input.RELAXATION, 1),
            new Doubt(Input.STRENGTH, -1),
            new Doubt(Input.STRENGTH, 1));

    /** Weighing, drying and meters leave moisture content uncertain by one point (common practice, no source). */
    private static final double METER_FRACTION = 0.01;

    /**
     * Share of a stress that is left after weeks: half, a quarter to all of it (assumed; wood and glue creep more while
     * moisture changes).
     */
    private static final Band LASTING_SHARE = new Band(0.25, 0.5, 1);

    /** False where the input plays no part for a material in a cut. */
    boolean matters(Material material, Cut cut) {
        return switch (input) {
            case NOTHING, THERMAL_EXPANSION, STIFFNESS, RELAXATION, STRENGTH -> true;
            case SWELLING, SORPTION, DIFFUSIVITY, PLACE_HUMIDITY, HYGROMETER ->
                material.water().isPresent();
            case CUT -> cut != Cut.NONE;
        };
    }

    /** Factor on the diffusivity of a material that takes up water. */
    double diffusivityFactor(Material material) {
        return material.water()
                .map(water ->
                        endOf(Input.DIFFUSIVITY, water.diffusivityReference().band())
                                / water.diffusivityReference().value())
                .orElse(1.0);
    }

    /** Factor on the moisture contents of a material. */
    double sorptionFactor(Material material) {
        return material.water()
                .map(water -> endOf(Input.SORPTION, water.sorptionFactor().band()))
                .orElse(1.0);
    }

    /** Strain per moisture content of a material along one axis. */
    double perMoisture(Material material, Axis axis, double fromMoistureFraction) {
        return material.water()
                .map(water -> water.swelling().perMoisture(axis, fromMoistureFraction)
                        * endOf(Input.SWELLING, water.swelling().relativeBand(axis)))
                .orElse(0.0);
    }

    /** Thermal expansion of a material along one axis, 1/K. */
    double perKelvin(Material material, Axis axis) {
        return endOf(
                Input.THERMAL_EXPANSION,
                material.thermalExpansionPerKelvin().get(axis).band());
    }

    /** Shift of the customer's relative humidity for a place that may be off by so much. */
    double airHumidityShift(double doubtFraction) {
        return input == Input.PLACE_HUMIDITY ? side * doubtFraction : 0;
    }

    /** Relative humidity the scale had really settled to at final sanding. */
    double madeHumidity(double readFraction) {
        return input == Input.HYGROMETER
                ? Math.min(1, Math.max(0, readFraction + side * HYGROMETER_FRACTION))
                : readFraction;
    }

    /** Moisture content that stock really had when it was measured, kg/kg. */
    double measuredMoisture(double readFraction) {
        return input == Input.HYGROMETER ? Math.max(0, readFraction + side * METER_FRACTION) : readFraction;
    }

    /** Share of a stress that is left after weeks. */
    double lastingShare() {
        return endOf(Input.RELAXATION, LASTING_SHARE);
    }

    /** A stiffness of the scale. */
    double stiffness(Figure figure) {
        return endOf(Input.STIFFNESS, figure.band());
    }

    /** A strength. */
    double strength(Figure figure) {
        return endOf(Input.STRENGTH, figure.band());
    }

    /** True where the stiffness of the scale is not at its value. */
    boolean isOfStiffness() {
        return input == Input.STIFFNESS;
    }

    /** Angle by which the rings are turned away from the stated cut, radians; sheet and cast goods have none. */
    double ringTurnRadians(Cut cut) {
        return input == Input.CUT && cut != Cut.NONE ? side * RING_TURN_RADIANS : 0;
    }

    /** How the grain of a burl holds itself back: -1 for most, 0 for the value, 1 for least. */
    double grainLean() {
        return input == Input.CUT ? side : 0;
    }

    private double endOf(Input asked, Band band) {
        if (input != asked || side == 0) {
            return band.value();
        }
        return side < 0 ? band.low() : band.high();
    }
}
