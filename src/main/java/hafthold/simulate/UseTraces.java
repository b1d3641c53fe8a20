package hafthold.simulate;

import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.knife.KnifeHistory;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What events leave of themselves in the steps that were measured, each followed once in the season of the first measuring
 * and, for those of longer ago, once in the season opposite.
 */
final class UseTraces {
    private static final int HALF_A_YEAR = CommonYear.DAYS / 2;

    /** Spreads the days of events evenly over the draws: steps of the golden section. */
    private static final double GOLDEN = 0.6180339887498949;

    private final BondedEngine.Setup setup;
    private final List<MeasuredStep> measured;
    private final LocalDate first;
    private final long since;
    private final long lately;
    private final long whole;
    private final Map<String, Seasons> traces = new ConcurrentHashMap<>();

    /** An event in the season of the first measuring, and half a year from it. */
    private record Seasons(UseTrace same, UseTrace opposite) {
        /** The one that is nearer to some days before the first measuring. */
        UseTrace before(long days) {
            long away = Math.floorMod(days - UseTrace.DAYS / 2, CommonYear.DAYS);
            return Math.min(away, CommonYear.DAYS - away) > HALF_A_YEAR / 2 ? opposite : same;
        }
    }

    UseTraces(BondedEngine.Setup setup, KnifeHistory history) {
        this.setup = setup;
        this.measured = history.measured();
        this.first = history.firstMeasured();
        this.since = ChronoUnit.DAYS.between(history.lastUse(), first);
        this.whole = Math.max(0, ChronoUnit.DAYS.between(history.delivered(), history.lastUse()));
        this.lately = Math.min(KnifeHistory.LATELY_DAYS, whole);
    }

    /** Follows an event, unless that was done. */
    void follow(Event event) {
        traces.computeIfAbsent(event.id(), id -> {
            List<MeasuringPoint> points =
                    measured.stream().map(MeasuredStep::point).distinct().toList();
            UseTrace same = new UseTrace(setup, event, first, points);
            return new Seasons(
                    same, whole > lately ? new UseTrace(setup, event, first.minusDays(HALF_A_YEAR), points) : same);
        });
    }

    /**
     * What is left of an event, m, one a measured step.
     *
     * @param number of the draw, which decides how long ago it was
     */
    double[] left(Cause cause, int number) {
        long ago = since + daysAgo(cause, number);
        UseTrace trace = traces.get(cause.event()).before(ago);
        return measured.stream()
                .mapToDouble(step -> trace.at(step.point(), ago + ChronoUnit.DAYS.between(first, step.on())))
                .toArray();
    }

    /** What an event takes off for good, m, one a measured step. */
    double[] set(Cause cause, int number) {
        double set =
                traces.get(cause.event()).before(since + daysAgo(cause, number)).set();
        return measured.stream()
                .mapToDouble(step -> UseTrace.showsWidth(step.point()) ? set : 0)
                .toArray();
    }

    /** Days from an event to the first measuring or the coming back. */
    private long daysAgo(Cause cause, int number) {
        double share = (number * GOLDEN) % 1;
        return cause.longAgo() ? lately + (long) ((whole - lately) * share) : (long) (lately * share);
    }
}
