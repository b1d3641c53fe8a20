package hafthold.decide;

import hafthold.air.Event;
import hafthold.knife.KnifeHistory;
import hafthold.knife.MeasuredStep;
import hafthold.simulate.Cause;
import hafthold.simulate.ReturnEngine;
import hafthold.simulate.ReturnSample;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Everything that may lie behind a return, drawn alike often: what the knife would then read on the days and at the points
 * that were measured, whatever was read there.
 *
 * <p>How likely the causes are before anything was measured is a judgement.
 *
 * @param engine the knife
 * @param byCause draws of every cause that the readings could show
 * @param before chance of each of these before anything was measured
 * @param hidden causes that they could not show
 * @param tooCoarse whether they are so coarse that they show neither stock nor home, where a caliper would show one
 */
record DrawnCauses(
        ReturnEngine engine,
        Map<Cause, List<ReturnSample>> byCause,
        Map<Cause, Double> before,
        List<Cause> hidden,
        boolean tooCoarse) {
    /** Against each of the others, the weather. */
    private static final double WEATHER = 4;

    /** All events together, or those that are suspected. */
    private static final double EVENTS = 1;

    private static final double SUSPECTED = 3;

    /** Two at once, over one of them, if neither has to do with the other: each alone is one to the weather's four. */
    private static final double BOTH = 1 / WEATHER;

    /** A cause that moves no reading by that share of its error of measuring, root mean square, cannot be told by it. */
    private static final double SEEN = 0.25;

    /** Readings that neither stock nor home moves by that share of its error tell nothing of them (a judgement). */
    private static final double TOLD = 0.5;

    /**
     * Deviation of a caliper, m: off by 0.05 mm either way at most (common practice, no source). A cause that one would show
     * keeps its chance though a coarser reading does not tell it from the weather.
     */
    private static final double CALIPER = 0.05e-3 / 1.645;

    private static final List<Cause> ALONE = List.of(Cause.FINISH, Cause.PLACE);
    private static final List<Cause> OFF = List.of(Cause.FINISH, Cause.PLACE, Cause.FINISH_AND_PLACE);

    /** Draws them all. */
    static DrawnCauses of(ReturnEngine engine, List<Event> events, KnifeHistory history) {
        List<MeasuredStep> measured = history.measured();
        List<ReturnSample> usual = engine.samples(Cause.WEATHER, Optional.empty());
        Map<Cause, List<ReturnSample>> byCause = new LinkedHashMap<>();
        byCause.put(Cause.WEATHER, usual);
        List<Cause> hidden = new ArrayList<>();
        for (Cause cause : OFF) {
            List<ReturnSample> draws = engine.samples(cause, Optional.empty());
            if (moves(draws, usual, measured, CALIPER) >= SEEN) {
                byCause.put(cause, draws);
            } else {
                hidden.add(cause);
            }
        }
        // Both at once are one of them where the readings cannot show the other.
        if (!byCause.keySet().containsAll(OFF)) {
            byCause.remove(Cause.FINISH_AND_PLACE);
            hidden.remove(Cause.FINISH_AND_PLACE);
        }
        Map<Cause, Double> before = new LinkedHashMap<>();
        byCause.keySet().forEach(cause -> before.put(cause, before(cause)));
        List<Cause> off = byCause.keySet().stream().filter(ALONE::contains).toList();
        double one = (history.suspected().isEmpty() ? EVENTS : SUSPECTED) / events.size();
        for (Event event : events) {
            List<Cause> shown = new ArrayList<>();
            for (Cause cause : times(event, history)) {
                List<ReturnSample> draws = engine.samples(cause, event, usual);
                if (moves(draws, usual, measured, CALIPER) >= SEEN) {
                    byCause.put(cause, draws);
                    shown.add(cause);
                } else {
                    hidden.add(cause);
                }
            }
            for (Cause cause : shown) {
                before.put(cause, one / shown.size());
                for (Cause other : off) {
                    Cause both = cause.besides(other);
                    byCause.put(both, engine.samples(both, event, byCause.get(other)));
                    before.put(both, BOTH * one / shown.size());
                }
            }
        }
        double sum = before.values().stream().mapToDouble(Double::doubleValue).sum();
        before.replaceAll((cause, weight) -> weight / sum);
        boolean isTold = off.stream()
                .anyMatch(cause -> moves(byCause.get(cause), usual, measured, Double.POSITIVE_INFINITY) >= TOLD);
        boolean wouldBeTold =
                off.stream().anyMatch(cause -> moves(byCause.get(cause), usual, measured, CALIPER) >= TOLD);
        return new DrawnCauses(engine, byCause, before, hidden, wouldBeTold && !isTold);
    }

    /** How many draws there are of each cause. */
    int samples() {
        return usual().size();
    }

    /** Draws with everything as usual. */
    List<ReturnSample> usual() {
        return byCause.get(Cause.WEATHER);
    }

    private static double before(Cause cause) {
        return switch (cause.kind()) {
            case WEATHER -> WEATHER;
            case FINISH_AND_PLACE -> BOTH;
            default -> 1;
        };
    }

    /** An event lately and, where the customer had the knife so long, longer ago: alike likely. */
    private static List<Cause> times(Event event, KnifeHistory history) {
        Cause lately = Cause.lately(event.id());
        return history.isLongInUse() ? List.of(lately, Cause.longAgo(event.id())) : List.of(lately);
    }

    /**
     * How far a cause moves the reading that shows it best against the weather, root mean square, in deviations of its error:
     * draws of one number go together.
     *
     * @param coarsest deviation of the coarsest reading that is thought of, m: coarser ones are taken to be as good
     */
    private static double moves(
            List<ReturnSample> draws, List<ReturnSample> weather, List<MeasuredStep> measured, double coarsest) {
        return IntStream.range(0, measured.size())
                .mapToDouble(reading -> {
                    double error = Math.min(coarsest, measured.get(reading).deviationMetres());
                    return Math.sqrt(IntStream.range(0, draws.size())
                            .mapToDouble(n -> draws.get(n).steps()[reading]
                                    - weather.get(n).steps()[reading])
                            .map(moved -> moved * moved / (error * error))
                            .average()
                            .orElseThrow());
                })
                .max()
                .orElse(0);
    }
}
