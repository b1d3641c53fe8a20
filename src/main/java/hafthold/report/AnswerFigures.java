package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The figures of one answer under the keys that scripts read, shared by JSON and CSV so that both carry the same. */
final class AnswerFigures {
    private static final double DECIMALS = 1e9;

    /**
     * A plain number.
     *
     * @param key key with its unit
     * @param of how to get it, in that unit
     */
    record NumberKey(String key, ToDoubleFunction<HandleYear> of) {}

    /**
     * A number with its band.
     *
     * @param name key without unit, such as edge_shy
     * @param unit unit at the end of the key, or empty
     * @param of how to get it, in that unit
     */
    record BandKey(String name, String unit, Function<HandleYear, Band> of) {

        /** Key of the object that holds low, value and high. */
        String key() {
            return unit.isEmpty() ? name : name + "_" + unit;
        }

        /** Key of one end in a flat table, such as edge_shy_low_mm. */
        String key(String end) {
            return unit.isEmpty() ? name + "_" + end : name + "_" + end + "_" + unit;
        }
    }

    /** Moisture contents, percent of dry mass. */
    static final List<NumberKey> MOISTURE = List.of(
            new NumberKey("mc_finish_percent", year -> 100 * year.moistureFinish()),
            new NumberKey("mc_min_percent", year -> 100 * year.moistureLowest()),
            new NumberKey("mc_max_percent", year -> 100 * year.moistureHighest()));

    /** The year's worst movements. */
    static final List<BandKey> MOVEMENTS = List.of(
            millimetres("edge_shy", HandleYear::edgeShy),
            millimetres("edge_proud", HandleYear::edgeProud),
            millimetres("free_shy", HandleYear::freeShy),
            millimetres("free_proud", HandleYear::freeProud),
            millimetres("tang_line_shy", HandleYear::tangLineShy),
            millimetres("tang_line_proud", HandleYear::tangLineProud),
            millimetres("length_mismatch", HandleYear::lengthMismatch),
            millimetres("pin_gap", HandleYear::pinGap),
            millimetres("pin_squeeze", HandleYear::pinSqueeze),
            millimetres("pin_head_proud", HandleYear::pinHeadProud),
            millimetres("pin_head_sunk", HandleYear::pinHeadSunk),
            millimetres("end_short", HandleYear::endShort),
            millimetres("end_long", HandleYear::endLong),
            new BandKey("pin_crack_use", "", HandleYear::pinCrackUse));

    private AnswerFigures() {}

    /** A number on a grid of 1e-9, without a negative zero, so that equal runs give equal bytes. */
    static double stable(double number) {
        return Math.rint(number * DECIMALS) / DECIMALS + 0.0;
    }

    private static BandKey millimetres(String name, Function<HandleYear, Band> of) {
        return new BandKey(name, "mm", year -> of.apply(year).times(1000));
    }
}
