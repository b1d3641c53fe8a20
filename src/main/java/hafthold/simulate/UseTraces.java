package hafthold.simulate;

import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.knife.KnifeHistory;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import hafthold.material.Material;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;

/**
 * What events leave of themselves in the steps that were measured, each followed in the season of the first measuring and,
 * for those of longer ago, in the season opposite: at the value of the speed of water in the scale and at both ends of its
 * range, and read on straight lines between these.
 */
final class UseTraces {
    private static final int HALF_A_YEAR = CommonYear.DAYS / 2;

    /** Spreads the days of events evenly over the draws: steps of the golden section. */
    private static final double GOLDEN = 0.6180339887498949;

    /** Slow, as usual, quick. */
    private static final List<Doubt> SPEEDS =
            List.of(Doubt.alone(Input.DIFFUSIVITY, -1), Doubt.NONE, Doubt.alone(Input.DIFFUSIVITY, 1));

    private final BondedEngine.Setup setup;
    private final Material leading;
    private final List<MeasuredStep> measured;
    private final LocalDate first;
    private final long since;
    private final long lately;
    private final long whole;
    private final Map<String, Seasons> traces = new ConcurrentHashMap<>();

    /** An event in wood that lets water through slowly, as usual and quickly: alike where none takes up water. */
    private record Speeds(UseTrace slow, UseTrace usual, UseTrace quick) {
        /** What is left where the speed lies at a position of its range; beyond its ends as at them. */
        double at(double position, ToDoubleFunction<UseTrace> left) {
            double share = Math.min(1, Math.abs(position));
            return (1 - share) * left.applyAsDouble(usual) + share * left.applyAsDouble(position < 0 ? slow : quick);
        }
    }

    /** An event in the season of the first measuring, and half a year from it. */
    private record Seasons(Speeds same, Speeds opposite) {
        /** The one that is nearer to some days before the first measuring. */
        Speeds before(long days) {
            long away = Math.floorMod(days - UseTrace.DAYS / 2, CommonYear.DAYS);
            return Math.min(away, CommonYear.DAYS - away) > HALF_A_YEAR / 2 ? opposite : same;
        }
    }

    UseTraces(BondedEngine.Setup setup, KnifeHistory history) {
        this.setup = setup;
        this.leading = HandleEngine.partsOf(
                        setup.knife().scale(), setup.knife().sides().get(0))
                .get(0)
                .material();
        this.measured = history.measured();
        this.first = history.firstMeasured();
        this.since = ChronoUnit.DAYS.between(history.lastUse(), first);
        this.whole = Math.max(0, ChronoUnit.DAYS.between(history.delivered(), history.lastUse()));
        this.lately = Math.min(KnifeHistory.LATELY_DAYS, whole);
    }

    /** Follows an event, unless that was done. */
    void follow(Event event) {
        traces.computeIfAbsent(event.id(), id -> {
            Speeds same = speeds(event, first);
            return new Seasons(same, whole > lately ? speeds(event, first.minusDays(HALF_A_YEAR)) : same);
        });
    }

    private Speeds speeds(Event event, LocalDate before) {
        List<MeasuringPoint> points =
                measured.stream().map(MeasuredStep::point).distinct().toList();
        if (leading.water().isEmpty()) {
            UseTrace any = new UseTrace(setup, event, before, points, Doubt.NONE);
            return new Speeds(any, any, any);
        }
        List<UseTrace> followed = SPEEDS.parallelStream()
                .map(speed -> new UseTrace(setup, event, before, points, speed))
                .toList();
        return new Speeds(followed.get(0), followed.get(1), followed.get(2));
    }

    /**
     * What is left of an event, m, one a measured step.
     *
     * @param number of the draw, which decides how long ago it was
     * @param doubt the draw, which decides how fast the wood takes up and gives off water
     */
    double[] left(Cause cause, int number, Doubt doubt) {
        long ago = since + daysAgo(cause, number);
        Speeds speeds = traces.get(cause.event()).before(ago);
        return measured.stream()
                .mapToDouble(step -> speeds.at(
                        position(doubt),
                        trace -> trace.at(step.point(), ago + ChronoUnit.DAYS.between(first, step.on()))))
                .toArray();
    }

    /** What an event takes off for good, m, one a measured step. */
    double[] set(Cause cause, int number, Doubt doubt) {
        double set =
                traces.get(cause.event()).before(since + daysAgo(cause, number)).at(position(doubt), UseTrace::set);
        return measured.stream()
                .mapToDouble(step -> UseTrace.showsWidth(step.point()) ? set : 0)
                .toArray();
    }

    private double position(Doubt doubt) {
        return doubt.position(Input.DIFFUSIVITY, leading);
    }

    /** Days from an event to the first measuring or the coming back. */
    private long daysAgo(Cause cause, int number) {
        double share = (number * GOLDEN) % 1;
        return cause.longAgo() ? lately + (long) ((whole - lately) * share) : (long) (lately * share);
    }
}
