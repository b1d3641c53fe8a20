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
 */
record DrawnCauses(
        ReturnEngine engine, Map<Cause, List<ReturnSample>> byCause, Map<Cause, Double> before, List<Cause> hidden) {
    /** Against each of the others, the weather. */
    private static final double WEATHER = 4;

    /** All events together, or those that are suspected. */
    private static final double EVENTS = 1;

    private static final double SUSPECTED = 3;

    /** Two at once, over one of them, if neither has to do with the other: each alone is one to the weather's four. */
    private static final double BOTH = 1 / WEATHER;

    /** A cause that moves no reading by that share of its error of measuring, root mean square, cannot be told by it. */
    private static final double SEEN = 0.25;

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
            if (isSeen(draws, usual, measured)) {
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
                if (isSeen(draws, usual, measured)) {
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
        return new DrawnCauses(engine, byCause, before, hidden);
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

    /** Whether a cause moves any reading so far that it could be told from the weather: draws of one number go together. */
    private static boolean isSeen(List<ReturnSample> draws, List<ReturnSample> weather, List<MeasuredStep> measured) {
        return IntStream.range(0, measured.size()).anyMatch(reading -> {
            double error = measured.get(reading).deviationMetres();
            double meanSquare = IntStream.range(0, draws.size())
                    .mapToDouble(
                            n -> draws.get(n).steps()[reading] - weather.get(n).steps()[reading])
                    .map(moved -> moved * moved / (error * error))
                    .average()
                    .orElseThrow();
            return meanSquare >= SEEN * SEEN;
        });
    }
}
