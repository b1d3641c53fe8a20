package hafthold.report;

import hafthold.knife.FitLimits;
import hafthold.quantity.Length;
import hafthold.report.chart.LimitMark;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Limits of classes of work as lines in a picture, millimetres. */
final class LimitLines {
    private LimitLines() {}

    /** The edge's limits: shy below or to the left, proud above or to the right. */
    static List<LimitMark> ofEdges(List<FitLimits> limits) {
        List<LimitMark> marks = new ArrayList<>();
        for (FitLimits limit : limits) {
            marks.add(mark(limit, limit.shy(), -1));
            marks.add(mark(limit, limit.proud(), 1));
        }
        return marks;
    }

    /** One limit of each class, on one side of zero. */
    static List<LimitMark> of(List<FitLimits> limits, Function<FitLimits, Length> which, int side) {
        return limits.stream()
                .map(limit -> mark(limit, which.apply(limit), side))
                .toList();
    }

    /** The classes from the one that the work asks for to the easiest. */
    static List<FitLimits> from(List<FitLimits> limits, String workClass) {
        int index = limits.stream().map(FitLimits::name).toList().indexOf(workClass);
        return limits.subList(Math.max(0, index), limits.size());
    }

    private static LimitMark mark(FitLimits limit, Length size, int side) {
        return new LimitMark(
                limit.name().replace('-', ' ') + " limit " + AnswerWords.plain(size.millimetres()),
                side * size.millimetres());
    }
}
