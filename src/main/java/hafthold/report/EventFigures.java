package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.EventAnswer;
import hafthold.simulate.EventYear;
import hafthold.simulate.SofteningMargin;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The figures of events and a scale under the keys that scripts read, shared by JSON, CSV and markdown. */
final class EventFigures {
    private static final double PERCENT = 100;
    private static final double MILLI = 1000;

    /**
     * One figure.
     *
     * @param <T> what it is a figure of
     * @param name key without unit, such as edge_shy
     * @param unit unit at the end of the key, or empty
     * @param isBand whether it has a band of its own
     * @param of how to get it, in that unit; empty where there is none
     */
    record Key<T>(String name, String unit, boolean isBand, Function<T, Optional<Band>> of) {
        String key() {
            return unit.isEmpty() ? name : name + "_" + unit;
        }

        /** Key of one end in a flat table, such as edge_shy_low_mm. */
        String key(String end) {
            return unit.isEmpty() ? name + "_" + end : name + "_" + end + "_" + unit;
        }
    }

    /** Of one event. */
    static final List<Key<EventAnswer>> ALL = List.of(
            number("mc_face_max", "percent", answer -> PERCENT * answer.faceWettest()),
            number("mc_face_min", "percent", answer -> PERCENT * answer.faceDriest()),
            band("mc_mean_gain", "points", PERCENT, EventAnswer::meanGain),
            band("mc_mean_loss", "points", PERCENT, EventAnswer::meanLoss),
            band("edge_shy", "mm", MILLI, EventAnswer::edgeShy),
            band("edge_proud", "mm", MILLI, EventAnswer::edgeProud),
            new Key<>("pin_crack_use", "", true, EventAnswer::pinCrackUse),
            band("hottest", "c", 1, EventAnswer::hottestCelsius),
            number("coldest", "c", EventAnswer::coldestCelsius),
            new Key<>(
                    "back_within",
                    "h",
                    false,
                    answer -> answer.isBack() ? Optional.of(Band.exact(answer.backHours())) : Optional.empty()),
            number("mc_left_before_second", "points", answer -> PERCENT * answer.leftBeforeSecond()),
            number("mc_left_before_last", "points", answer -> PERCENT * answer.leftBeforeLast()),
            band("end_grain_depth", "mm", MILLI, EventAnswer::endGrainMetres));

    /** Of all events of a year together. */
    static final List<Key<EventYear>> OF_YEAR = List.of(
            new Key<>(
                    "event_softening_margin",
                    "k",
                    true,
                    year -> year.softening().map(SofteningMargin::kelvin)),
            number("event_mc_left_at_end", "points", year -> PERCENT * year.leftAtEnd()),
            number("event_mc_above_year", "points", year -> PERCENT * year.meanAbove()));

    private EventFigures() {}

    private static <T> Key<T> number(String name, String unit, ToDoubleFunction<T> of) {
        return new Key<>(name, unit, false, answer -> Optional.of(Band.exact(of.applyAsDouble(answer))));
    }

    private static <T> Key<T> band(String name, String unit, double factor, Function<T, Band> of) {
        return new Key<>(
                name, unit, true, answer -> Optional.of(of.apply(answer).times(factor)));
    }
}
