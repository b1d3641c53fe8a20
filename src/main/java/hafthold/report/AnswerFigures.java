package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.util.List;
import java.util.Optional;
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
     * @param of how to get it, in that unit; empty where it is not known
     */
    record BandKey(String name, String unit, Function<HandleYear, Optional<Band>> of) {

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
            new NumberKey("mc_finish_percent", year -> 100 * year.moisture().finish()),
            new NumberKey("mc_min_percent", year -> 100 * year.moisture().lowest()),
            new NumberKey("mc_max_percent", year -> 100 * year.moisture().highest()));

    /** The year's worst movements. */
    static final List<BandKey> MOVEMENTS = List.of(
            millimetres("edge_shy", year -> year.edge().bonded().shy()),
            millimetres("edge_proud", year -> year.edge().bonded().proud()),
            millimetres("free_shy", year -> year.edge().free().shy()),
            millimetres("free_proud", year -> year.edge().free().proud()),
            millimetres("tang_line_shy", year -> year.edge().tangLine().shy()),
            millimetres("tang_line_proud", year -> year.edge().tangLine().proud()),
            millimetres("length_mismatch", year -> year.ends().lengthMismatch()),
            millimetres("pin_gap", year -> year.pins().gap()),
            millimetres("pin_squeeze", year -> year.pins().squeeze()),
            millimetres("pin_head_proud", year -> year.pins().headProud()),
            millimetres("pin_head_sunk", year -> year.pins().headSunk()),
            millimetres("end_short", year -> year.ends().shortBy()),
            millimetres("end_long", year -> year.ends().longBy()),
            new BandKey("pin_crack_use", "", year -> year.pins().crackUse()));

    private AnswerFigures() {}

    /** A number on a grid of 1e-9, without a negative zero, so that equal runs give equal bytes. */
    static double stable(double number) {
        return Math.rint(number * DECIMALS) / DECIMALS + 0.0;
    }

    private static BandKey millimetres(String name, Function<HandleYear, Band> of) {
        return new BandKey(name, "mm", year -> Optional.of(of.apply(year).times(1000)));
    }
}
