package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.knowm.xchart.XYChart;

/**
 * Lines through the days of one year, told apart by colour, dash and marker.
 *
 * @param id id unique in the page
 * @param title title
 * @param description what the picture shows, for those who cannot see it
 * @param unit words over the upright axis
 * @param lines one to five lines
 * @param inSight values that the upright axis holds whatever the data, so that charts of two places compare
 * @param limits level lines with labels
 * @param zero what zero means where it is drawn heavy, empty where it is a value like others
 * @param daysTogether so many days are drawn as their mean
 * @param words language of what it writes by itself
 */
public record YearChart(
        String id,
        String title,
        String description,
        String unit,
        List<YearLine> lines,
        List<Double> inSight,
        List<LimitMark> limits,
        Optional<ZeroLine> zero,
        int daysTogether,
        ChartWords words) {
    private static final int NARROW_DAYS_TOGETHER = 3;

    /** Share of the data's range that leaves room for the words of a limit. */
    private static final double LIMITS_APART = 0.065;

    /** Keeps its own copies. */
    public YearChart {
        lines = List.copyOf(lines);
        inSight = List.copyOf(inSight);
        limits = List.copyOf(limits);
        if (lines.isEmpty() || lines.size() > HouseStyle.MOST_LINES) {
            throw new IllegalArgumentException(
                    "a year chart holds 1 to " + HouseStyle.MOST_LINES + " lines, got " + lines.size());
        }
    }

    /** The picture in one format, for a page. */
    public String svg(SheetFormat format) {
        return sheet(format).svg(title, description);
    }

    /** The wide picture for a file of its own, its title in sight. */
    public String fileSvg() {
        return sheet(SheetFormat.WIDE).fileSvg(title, description);
    }

    /** Where things lie. */
    YearLayout layout(SheetFormat format) {
        return new YearLayout(format, lines.size(), hasStart());
    }

    /** The picture before it is written out. */
    SvgSheet sheet(SheetFormat format) {
        return sheet(format, OptionalDouble.empty(), words -> {});
    }

    /**
     * Likewise, with room for an upright line.
     *
     * @param upright day that no words may stand across, 0 to 365
     */
    SvgSheet sheet(SheetFormat format, OptionalDouble upright) {
        return sheet(format, upright, words -> {});
    }

    /** Likewise, with words of marks that come before those of the limits. */
    SvgSheet sheet(SheetFormat format, Consumer<PlotWords> marks) {
        return sheet(format, OptionalDouble.empty(), marks);
    }

    private SvgSheet sheet(SheetFormat format, OptionalDouble upright, Consumer<PlotWords> marks) {
        YearLayout layout = layout(format);
        Span y = span();
        SvgSheet sheet = new SvgSheet(id, format, layout.height());
        sheet.plot(layout.left(), layout.top(), PlotTrace.of(plot(layout, y)));
        axisWords(sheet, layout, y);
        PlotWords plotWords = new PlotWords(sheet, layout, y, lines, upright);
        zero.ifPresent(plotWords::zero);
        marks.accept(plotWords);
        for (LimitMark limit : drawnLimits()) {
            plotWords.limit(limit, zero.isPresent() && limit.value() < 0);
        }
        names(sheet, layout, y);
        return sheet;
    }

    private boolean hasStart() {
        return lines.stream().anyMatch(line -> line.start().isPresent());
    }

    private List<LimitMark> drawnLimits() {
        return zero.isPresent()
                ? LimitMark.worthDrawing(
                        limits, data().min().orElseThrow(), data().max().orElseThrow(), LIMITS_APART)
                : limits;
    }

    private DoubleStream data() {
        return lines.stream()
                .flatMap(line -> Stream.of(line.daily(), line.low(), line.high()))
                .flatMap(List::stream)
                .mapToDouble(Double::doubleValue);
    }

    /** The upright axis. */
    Span span() {
        double[] all = Stream.of(
                        data(),
                        lines.stream().flatMapToDouble(line -> line.start().stream()),
                        drawnLimits().stream().mapToDouble(LimitMark::value),
                        inSight.stream().mapToDouble(Double::doubleValue))
                .flatMapToDouble(values -> values)
                .toArray();
        return Span.covering(
                DoubleStream.of(all).min().orElseThrow(),
                DoubleStream.of(all).max().orElseThrow(),
                6);
    }

    private XYChart plot(YearLayout layout, Span y) {
        XYChart chart = YearPlot.ground(
                layout.plotWidth(), layout.plotHeight(), layout.x(), y, drawnLimits(), zero.isPresent());
        for (int order = 0; order < lines.size(); order++) {
            band(chart, order, together(layout));
        }
        for (int order = lines.size() - 1; order >= 0; order--) {
            line(chart, layout, order);
        }
        return chart;
    }

    private void band(XYChart chart, int order, int together) {
        YearLine line = lines.get(order);
        if (!line.low().isEmpty()) {
            double[] low = YearDays.means(line.low(), together);
            HouseStyle.area(
                    chart,
                    "band " + order,
                    Ink.ofLine(order),
                    YearDays.days(low.length, line.daily().size(), together),
                    low,
                    YearDays.means(line.high(), together));
        }
    }

    private void line(XYChart chart, YearLayout layout, int order) {
        YearLine line = lines.get(order);
        double[] values = YearDays.means(line.daily(), together(layout));
        double[] days = YearDays.days(values.length, line.daily().size(), together(layout));
        HouseStyle.line(chart, "line " + order, Ink.ofLine(order), HouseStyle.ofLine(order), days, values);
        List<double[]> points = new ArrayList<>();
        line.start().ifPresent(start -> points.add(new double[] {layout.startDay(), start}));
        for (int month = 0; month < YearDays.MONTHS; month += 2) {
            double day = YearDays.monthStart(month) + 6 + 10 * order;
            points.add(new double[] {day, YearDays.between(days, values, day)});
        }
        HouseStyle.marks(chart, "marks " + order, Ink.ofLine(order), HouseStyle.markerOf(order), points);
    }

    private void axisWords(SvgSheet sheet, YearLayout layout, Span y) {
        for (BigDecimal tick : y.ticks()) {
            String label = zero.map(line -> tick.signum() == 0 ? line.at() : words.number(y.label(tick.abs())))
                    .orElseGet(() -> words.number(y.label(tick)));
            double base = layout.y(y, tick.doubleValue()) + layout.format().fontSize() * 0.35;
            sheet.text(layout.left() - 6.0, base, Anchor.END, Ink.MUTED, label);
        }
        double monthBase = layout.top() + layout.plotHeight() + layout.format().fontSize() + 4.0;
        for (int month = 0; month < YearDays.MONTHS; month++) {
            double middle = (YearDays.monthStart(month) + YearDays.monthStart(month + 1)) / 2;
            sheet.text(layout.x(middle), monthBase, Anchor.MIDDLE, Ink.MUTED, monthWord(month, layout.format()));
        }
        if (hasStart()) {
            sheet.text(layout.x(layout.startDay()), monthBase, Anchor.MIDDLE, Ink.MUTED, words.say("key.made"));
        }
        sheet.text(4, layout.top() - 12.0, Anchor.START, Ink.MUTED, unit);
    }

    private int together(YearLayout layout) {
        return layout.isWide() ? daysTogether : Math.max(daysTogether, NARROW_DAYS_TOGETHER);
    }

    private void names(SvgSheet sheet, YearLayout layout, Span y) {
        LineNames names = new LineNames(
                sheet, layout.format(), lines.stream().map(YearLine::name).toList(), true);
        double bottom = layout.top() + layout.plotHeight();
        if (layout.isWide()) {
            names.beside(
                    layout.left() + layout.plotWidth(),
                    layout.top(),
                    bottom,
                    lines.stream()
                            .mapToDouble(line ->
                                    layout.y(y, line.daily().get(line.daily().size() - 1)))
                            .toArray());
        } else {
            names.below(bottom);
        }
    }

    private String monthWord(int month, SheetFormat format) {
        String name = words.shortMonth(month + 1);
        return format == SheetFormat.WIDE ? name : name.substring(0, name.offsetByCodePoints(0, 1));
    }
}
