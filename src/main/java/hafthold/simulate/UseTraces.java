package hafthold.simulate;

import hafthold.air.Event;
import hafthold.knife.KnifeHistory;
import hafthold.knife.MeasuredStep;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What events leave of themselves in the steps that were measured, each followed once. */
final class UseTraces {
    /**
     * An event that is suspected is taken to have happened within so many days before the first measuring or, where that was
     * at the bench, before the knife came back, and not before the customer had it (assumed).
     */
    private static final int LATEST_DAYS = 28;

    /** Spreads the days of events evenly over the draws: steps of the golden section. */
    private static final double GOLDEN = 0.6180339887498949;

    private final BondedEngine.Setup setup;
    private final List<MeasuredStep> measured;
    private final LocalDate first;
    private final long since;
    private final long span;
    private final Map<String, UseTrace> traces = new ConcurrentHashMap<>();

    UseTraces(BondedEngine.Setup setup, KnifeHistory history) {
        this.setup = setup;
        this.measured = history.measured();
        this.first = history.firstMeasured();
        LocalDate gone = history.bench()
                .map(KnifeHistory.BenchRest::since)
                .filter(first::isAfter)
                .orElse(first);
        this.since = ChronoUnit.DAYS.between(gone, first);
        this.span = Math.max(0, Math.min(LATEST_DAYS, ChronoUnit.DAYS.between(history.delivered(), gone)));
    }

    /** Follows an event, unless that was done. */
    void follow(Event event) {
        traces.computeIfAbsent(
                event.id(),
                id -> new UseTrace(
                        setup,
                        event,
                        first,
                        measured.stream().map(MeasuredStep::point).distinct().toList()));
    }

    /**
     * What is left of an event, m, one a measured step.
     *
     * @param number of the draw, which decides how long ago it was
     */
    double[] left(String event, int number) {
        long daysAfter = since + (long) (span * ((number * GOLDEN) % 1));
        UseTrace trace = traces.get(event);
        return measured.stream()
                .mapToDouble(step -> trace.at(step.point(), daysAfter + ChronoUnit.DAYS.between(first, step.on())))
                .toArray();
    }

    /** What an event takes off for good, m, one a measured step. */
    double[] set(String event) {
        double set = traces.get(event).set();
        return measured.stream()
                .mapToDouble(step -> UseTrace.showsWidth(step.point()) ? set : 0)
                .toArray();
    }
}
