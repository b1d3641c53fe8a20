package hafthold.report.chart;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One line of a {@link YearChart}.
 *
 * @param name words beside the line
 * @param daily a value a day from 1 January on, in the units of the picture
 * @param low lower end of the band by day, empty where none is drawn
 * @param high upper end likewise
 * @param start value at final sanding, drawn ahead of January where the picture has a place for it
 */
public record YearLine(String name, List<Double> daily, List<Double> low, List<Double> high, OptionalDouble start) {

    /** Keeps its own copies. */
    public YearLine {
        daily = List.copyOf(daily);
        low = List.copyOf(low);
        high = List.copyOf(high);
        boolean bandFits = low.size() == high.size() && (low.isEmpty() || low.size() == daily.size());
        if (daily.isEmpty() || !bandFits) {
            throw new IllegalArgumentException("line " + name + " needs days, and a band of as many days or none; got "
                    + daily.size() + " days, band of " + low.size() + " and " + high.size());
        }
    }

    /** A line without band and start. */
    public static YearLine of(String name, List<Double> daily) {
        return new YearLine(name, daily, List.of(), List.of(), OptionalDouble.empty());
    }
}
