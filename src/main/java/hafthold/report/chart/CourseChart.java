package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.knowm.xchart.XYChart;

/**
 * Lines with bands over days that lead from one date to another, a day between them that is today, and level lines.
 *
 * @param id id unique in the page
 * @param title title
 * @param description what the picture shows, for those who cannot see it
 * @param unit words over the upright axis
 * @param lines one or two lines over the same days
 * @param dates words below the axis, by the day they stand at
 * @param today the day up to which things were read
 * @param todayWords words at it
 * @param levels level lines with labels
 * @param marks days on which something was read
 * @param words language of numbers
 */
public record CourseChart(
        String id,
        String title,
        String description,
        String unit,
        List<Line> lines,
        List<DateMark> dates,
        double today,
        String todayWords,
        List<LimitMark> levels,
        List<Double> marks,
        ChartWords words) {
    private static final int TOP = 34;

    /** Keeps its own copies. */
    public CourseChart {
        lines = List.copyOf(lines);
        dates = List.copyOf(dates);
        levels = List.copyOf(levels);
        marks = List.copyOf(marks);
        if (lines.isEmpty() || lines.size() > HouseStyle.MOST_LINES) {
            throw new IllegalArgumentException(
                    "a course holds 1 to " + HouseStyle.MOST_LINES + " lines, got " + lines.size());
        }
    }

    /**
     * One line.
     *
     * @param name words beside it
     * @param days days from the left end, rising, two or more
     * @param value value on each
     * @param low lower end of its band
     * @param high upper end
     */
    public record Line(String name, List<Double> days, List<Double> value, List<Double> low, List<Double> high) {
        /** Keeps its own copies. */
        public Line {
            days = List.copyOf(days);
            value = List.copyOf(value);
            low = List.copyOf(low);
            high = List.copyOf(high);
            if (days.size() < 2
                    || value.size() != days.size()
                    || low.size() != days.size()
                    || high.size() != days.size()) {
                throw new IllegalArgumentException("line " + name + " needs two days or more and as many values");
            }
        }
    }

    /**
     * A date on the level axis.
     *
     * @param day where it stands
     * @param label its words
     */
    public record DateMark(double day, String label) {}

    /** The picture in one format, for a page. */
    public String svg(SheetFormat format) {
        return sheet(format).svg(title, description);
    }

    /** The wide picture for a file of its own, its title in sight. */
    public String fileSvg() {
        return sheet(SheetFormat.WIDE).fileSvg(title, description);
    }

    private SvgSheet sheet(SheetFormat format) {
        boolean isWide = format == SheetFormat.WIDE;
        int left = isWide ? 48 : 36;
        int width = isWide ? 510 : 292;
        int height = isWide ? 290 : 220;
        SvgSheet sheet = new SvgSheet(
                id,
                format,
                TOP + height + format.fontSize() + 16 + (isWide ? 0 : lines.size() * LineNames.row(format) + 6));
        Span y = span();
        double last = lines.get(0).days().get(lines.get(0).days().size() - 1);
        Span x = new Span(BigDecimal.ZERO, BigDecimal.valueOf(last), BigDecimal.ONE);
        sheet.plot(left, TOP, PlotTrace.of(plot(width, height, x, y)));
        Frame frame = new Frame(left, width, height, x, y);
        axisWords(sheet, format, frame);
        for (LimitMark level : levels) {
            sheet.text(
                    frame.x(last) - 4,
                    frame.y(level.value()) + format.fontSize() + 2.0,
                    Anchor.END,
                    Ink.LIMIT,
                    level.label());
        }
        names(sheet, format, frame);
        return sheet;
    }

    /** Where the plot lies on its sheet. */
    private record Frame(int left, int width, int height, Span days, Span values) {
        double x(double day) {
            return left + width * day / days.highest();
        }

        double y(double value) {
            return TOP + height * (values.highest() - value) / (values.highest() - values.lowest());
        }
    }

    private Span span() {
        double[] all = DoubleStream.concat(
                        lines.stream()
                                .flatMap(line -> Stream.of(line.low(), line.high()))
                                .flatMap(List::stream)
                                .mapToDouble(Double::doubleValue),
                        levels.stream().mapToDouble(LimitMark::value))
                .toArray();
        double least = DoubleStream.of(all).min().orElseThrow();
        double most = DoubleStream.of(all).max().orElseThrow();
        return Span.covering(Math.max(0, least - 0.5), most + 0.5, 6);
    }

    private XYChart plot(int width, int height, Span x, Span y) {
        XYChart chart = HouseStyle.barePlot(width, height, x, y);
        List<double[]> grid = new ArrayList<>();
        y.ticks().forEach(tick -> grid.add(new double[] {0, tick.doubleValue(), x.highest(), tick.doubleValue()}));
        dates.forEach(date -> grid.add(new double[] {date.day(), y.lowest(), date.day(), y.highest()}));
        HouseStyle.strokes(chart, "grid", Ink.GRID, HouseStyle.solid(1), grid);
        HouseStyle.strokes(
                chart,
                "levels",
                Ink.LIMIT,
                HouseStyle.dashed(1.4, 5, 3),
                levels.stream()
                        .map(level -> new double[] {0, level.value(), x.highest(), level.value()})
                        .toList());
        HouseStyle.strokes(chart, "today", Ink.STEEL, HouseStyle.solid(1.6), List.of(new double[][] {
            {today, y.lowest(), today, y.highest()}
        }));
        for (int order = 0; order < lines.size(); order++) {
            Line line = lines.get(order);
            double[] days = array(line.days());
            HouseStyle.area(chart, "band " + order, Ink.ofLine(order), days, array(line.low()), array(line.high()));
        }
        for (int order = 0; order < lines.size(); order++) {
            Line line = lines.get(order);
            HouseStyle.line(
                    chart,
                    "line " + order,
                    Ink.ofLine(order),
                    HouseStyle.ofLine(order),
                    array(line.days()),
                    array(line.value()));
        }
        HouseStyle.marks(
                chart,
                "marks",
                Ink.TEXT,
                HouseStyle.markerOf(3),
                marks.stream()
                        .map(day -> new double[] {day, at(lines.get(0), day)})
                        .toList());
        return chart;
    }

    private static double at(Line line, double day) {
        int i = 0;
        while (i < line.days().size() - 1 && line.days().get(i) < day) {
            i++;
        }
        return line.value().get(i);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private void axisWords(SvgSheet sheet, SheetFormat format, Frame frame) {
        for (BigDecimal tick : frame.values().ticks()) {
            sheet.text(
                    frame.left() - 6.0,
                    frame.y(tick.doubleValue()) + format.fontSize() * 0.35,
                    Anchor.END,
                    Ink.MUTED,
                    words.number(frame.values().label(tick)));
        }
        double base = TOP + frame.height() + format.fontSize() + 4.0;
        dates.forEach(date -> sheet.text(frame.x(date.day()), base, Anchor.MIDDLE, Ink.MUTED, date.label()));
        sheet.text(4, TOP - 12.0, Anchor.START, Ink.MUTED, unit);
        boolean isLate = frame.x(today) + format.widthOf(todayWords) > frame.left() + frame.width();
        sheet.text(
                frame.x(today) + (isLate ? -4 : 4),
                TOP + format.fontSize(),
                isLate ? Anchor.END : Anchor.START,
                Ink.STEEL,
                todayWords);
    }

    private void names(SvgSheet sheet, SheetFormat format, Frame frame) {
        LineNames names =
                new LineNames(sheet, format, lines.stream().map(Line::name).toList(), false);
        double bottom = TOP + frame.height();
        if (format == SheetFormat.WIDE) {
            names.beside(
                    frame.left() + frame.width(),
                    TOP,
                    bottom,
                    lines.stream()
                            .mapToDouble(line ->
                                    frame.y(line.value().get(line.value().size() - 1)))
                            .toArray());
        } else {
            names.below(bottom);
        }
    }
}
