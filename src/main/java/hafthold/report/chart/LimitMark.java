package hafthold.report.chart;

import java.util.Comparator;
import java.util.List;

/**
 * A limit drawn as a labelled line.
 *
 * @param label words beside the line
 * @param value where it lies, in the units of the picture
 */
public record LimitMark(String label, double value) {
    private static final double NEAREST_SHOWN_FROM = 0.25;
    private static final double FURTHER_SHOWN_FROM = 0.6;

    /**
     * The limits worth drawing, from the nearest to zero outwards: the nearest one on a side once the data come a
     * quarter of the way to it, a further one once they come more than half of the way. A limit far beyond all data
     * would only squeeze them.
     *
     * @param limits limits about zero
     * @param lowest lowest value of the data
     * @param highest highest value of the data
     */
    static List<LimitMark> worthDrawing(List<LimitMark> limits, double lowest, double highest) {
        return worthDrawing(limits, lowest, highest, 0);
    }

    /**
     * Likewise; of limits on one side that lie nearer to each other than a share of the data's range only the furthest
     * is kept, for their words would cover each other.
     */
    static List<LimitMark> worthDrawing(List<LimitMark> limits, double lowest, double highest, double apart) {
        List<LimitMark> drawn = worth(limits, lowest, highest);
        double room = apart * (Math.max(0, highest) - Math.min(0, lowest));
        return drawn.stream()
                .filter(limit -> drawn.stream()
                        .noneMatch(other -> other.value() * limit.value() > 0
                                && Math.abs(other.value()) > Math.abs(limit.value())
                                && Math.abs(other.value() - limit.value()) < room))
                .toList();
    }

    private static List<LimitMark> worth(List<LimitMark> limits, double lowest, double highest) {
        return limits.stream()
                .filter(limit -> {
                    double reach = limit.value() < 0 ? -lowest : highest;
                    boolean isNearest = limits.stream()
                            .noneMatch(other -> other.value() * limit.value() > 0
                                    && Math.abs(other.value()) < Math.abs(limit.value()));
                    double from = isNearest ? NEAREST_SHOWN_FROM : FURTHER_SHOWN_FROM;
                    return reach >= from * Math.abs(limit.value());
                })
                .sorted(Comparator.comparingDouble(limit -> Math.abs(limit.value())))
                .toList();
    }
}
