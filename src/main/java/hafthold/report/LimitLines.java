package hafthold.report;

import hafthold.knife.FitLimits;
import hafthold.quantity.Length;
import hafthold.report.chart.LimitMark;
import hafthold.report.chart.ZeroLine;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Limits of classes of work as lines in a picture, in the unit of movements.
 *
 * @param style language and units
 */
record LimitLines(BenchStyle style) {

    /** What lies at and about zero where an edge is drawn. */
    static ZeroLine edge(BenchStyle style) {
        return new ZeroLine(style.say("zero.flush"), style.say("zero.shy"), style.say("zero.proud"));
    }

    /** The edge's limits: shy below or to the left, proud above or to the right. */
    List<LimitMark> ofEdges(List<FitLimits> limits) {
        List<LimitMark> marks = new ArrayList<>();
        for (FitLimits limit : limits) {
            marks.add(mark(limit, limit.shy(), -1));
            marks.add(mark(limit, limit.proud(), 1));
        }
        return marks;
    }

    /** One limit of each class, on one side of zero. */
    List<LimitMark> of(List<FitLimits> limits, Function<FitLimits, Length> which, int side) {
        return limits.stream()
                .map(limit -> mark(limit, which.apply(limit), side))
                .toList();
    }

    /** The classes from the one that the work asks for to the easiest. */
    static List<FitLimits> from(List<FitLimits> limits, String workClass) {
        int index = limits.stream().map(FitLimits::name).toList().indexOf(workClass);
        return limits.subList(Math.max(0, index), limits.size());
    }

    private LimitMark mark(FitLimits limit, Length size, int side) {
        return new LimitMark(
                style.say("limit-line", "work", style.work(limit), "limit", style.limit(size)),
                side * style.shown(size.metres()));
    }
}
