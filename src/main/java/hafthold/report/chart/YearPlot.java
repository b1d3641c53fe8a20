package hafthold.report.chart;

import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;

/** The ground that lines through a year are drawn on: months, limits and the line that values are counted from. */
final class YearPlot {
    private YearPlot() {}

    /**
     * A plot without lines.
     *
     * @param x from its first to its last day
     * @param y values
     * @param limits level lines
     * @param hasZero whether zero is drawn heavy
     */
    static XYChart ground(int width, int height, Span x, Span y, List<LimitMark> limits, boolean hasZero) {
        XYChart chart = HouseStyle.barePlot(width, height, x, y);
        List<double[]> grid = new ArrayList<>();
        y.ticks().forEach(tick -> grid.add(level(tick.doubleValue())));
        for (int month = 0; month <= YearDays.MONTHS; month++) {
            grid.add(new double[] {YearDays.monthStart(month), y.lowest(), YearDays.monthStart(month), y.highest()});
        }
        HouseStyle.strokes(chart, "grid", Ink.GRID, HouseStyle.solid(1), grid);
        HouseStyle.strokes(
                chart,
                "limits",
                Ink.LIMIT,
                HouseStyle.dashed(1.4, 5, 3),
                limits.stream().map(limit -> level(limit.value())).toList());
        if (hasZero) {
            HouseStyle.strokes(chart, "zero", Ink.STEEL, HouseStyle.solid(2.4), List.of(new double[][] {level(0)}));
        }
        return chart;
    }

    private static double[] level(double value) {
        return new double[] {0, value, YearDays.DAYS, value};
    }
}
