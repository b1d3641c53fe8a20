package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
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

    /** Places for words on a line, as shares from left to right, the most welcome first. */
    private static final double[] PLACES = {1, 0, 0.5, 0.25, 0.75};

    /** Room between words and an upright line, drawing units. */
    private static final double CLEAR = 6;

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
        return sheet(format, OptionalDouble.empty());
    }

    /**
     * Likewise, with room for an upright line.
     *
     * @param upright day that no words may stand across, 0 to 365
     */
    SvgSheet sheet(SheetFormat format, OptionalDouble upright) {
        YearLayout layout = layout(format);
        Span y = span();
        SvgSheet sheet = new SvgSheet(id, format, layout.height());
        sheet.plot(layout.left(), layout.top(), PlotTrace.of(plot(layout, y)));
        axisWords(sheet, layout, y);
        List<Taken> taken = new ArrayList<>();
        zeroWords(sheet, layout, upright, taken);
        limitWords(sheet, layout, y, upright, taken);
        if (format == SheetFormat.WIDE) {
            namesBeside(sheet, layout, y);
        } else {
            namesBelow(sheet, layout);
        }
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

    /** What lies above and below zero, at the right end of the plot, or left of a line that stands there. */
    private void zeroWords(SvgSheet sheet, YearLayout layout, OptionalDouble upright, List<Taken> taken) {
        zero.ifPresent(line -> {
            double width = Math.max(
                    layout.format().widthOf(line.above()), layout.format().widthOf(line.below()));
            double end = layout.left() + layout.plotWidth() - 4.0;
            boolean isCrossed = upright.isPresent() && layout.x(upright.getAsDouble()) > end - width - CLEAR;
            double right = isCrossed ? layout.x(upright.getAsDouble()) - CLEAR : end;
            double top = layout.top() + 14.0;
            double foot = layout.top() + layout.plotHeight() - 6.0;
            sheet.strongText(right, top, Anchor.END, Ink.PROUD, line.above());
            sheet.strongText(right, foot, Anchor.END, Ink.SHY, line.below());
            taken.add(new Taken(right - width, width, top));
            taken.add(new Taken(right - width, width, foot));
        });
    }

    /**
     * Words that stand already.
     *
     * @param left where they begin, drawing units
     * @param width how wide they are
     * @param base their base line
     */
    private record Taken(double left, double width, double base) {

        boolean isHit(Taken other, double lineHeight) {
            return Math.abs(base - other.base) < lineHeight
                    && left < other.left + other.width
                    && other.left < left + width;
        }
    }

    /**
     * Sets the words of each limit where the lines leave most room, on its outer side while that is on the plot; not
     * over the words of another.
     */
    private void limitWords(SvgSheet sheet, YearLayout layout, Span y, OptionalDouble upright, List<Taken> taken) {
        double lineHeight = layout.format().fontSize() + 1.0;
        for (LimitMark limit : drawnLimits()) {
            double width = layout.format().widthOf(limit.label());
            double days = width
                    / layout.plotWidth()
                    * (layout.x().highest() - layout.x().lowest());
            double line = layout.y(y, limit.value());
            boolean isBelow =
                    zero.isPresent() && limit.value() < 0 && line + lineHeight < layout.top() + layout.plotHeight();
            double base = isBelow || line - lineHeight < layout.top() ? line + lineHeight : line - 4;
            double best = 0;
            double bestRoom = -1;
            for (double start : starts(days, upright, layout)) {
                Taken here = new Taken(layout.x(start), width, base);
                boolean isTaken = taken.stream().anyMatch(words -> words.isHit(here, lineHeight));
                double room = isTaken ? 0 : room(limit.value(), start, start + days);
                if (room > bestRoom + 1e-9) {
                    best = start;
                    bestRoom = room;
                }
            }
            taken.add(new Taken(layout.x(best), width, base));
            sheet.text(layout.x(best), base, Anchor.START, Ink.LIMIT, limit.label());
        }
    }

    /** Days that words of some days' width may begin on, the most welcome first; none of them across the upright line. */
    private static List<Double> starts(double days, OptionalDouble upright, YearLayout layout) {
        double latest = YearDays.DAYS - days - 4;
        double clear = CLEAR / layout.plotWidth() * YearDays.DAYS;
        DoubleStream beside = upright.stream().flatMap(day -> DoubleStream.of(day + clear, day - clear - days));
        return DoubleStream.concat(Arrays.stream(PLACES).map(share -> 4 + share * (latest - 4)), beside)
                .filter(start -> start >= 4 && start <= latest)
                .filter(start -> upright.isEmpty()
                        || start + days + clear <= upright.getAsDouble() + 1e-9
                        || start - clear >= upright.getAsDouble() - 1e-9)
                .boxed()
                .toList();
    }

    private double room(double value, double firstDay, double lastDay) {
        return lines.stream()
                .mapToDouble(line -> IntStream.rangeClosed((int) firstDay, (int) lastDay)
                        .mapToDouble(day -> Math.abs(YearDays.valueAt(line.daily(), day) - value))
                        .min()
                        .orElse(0))
                .min()
                .orElse(0);
    }

    private int together(YearLayout layout) {
        return layout.isWide() ? daysTogether : Math.max(daysTogether, NARROW_DAYS_TOGETHER);
    }

    private void namesBeside(SvgSheet sheet, YearLayout layout, Span y) {
        double lineHeight = layout.format().fontSize() + 3.0;
        List<List<String>> names = lines.stream()
                .map(line -> LineBreak.lines(line.name(), layout.nameCharacters()))
                .toList();
        double[] heights =
                names.stream().mapToDouble(name -> name.size() * lineHeight + 5).toArray();
        double[] wanted = lines.stream()
                .mapToDouble(line -> layout.y(y, line.daily().get(line.daily().size() - 1)))
                .toArray();
        double[] centres =
                LabelSpread.apart(wanted, heights, layout.top() - 4.0, layout.top() + layout.plotHeight() + 8.0);
        double right = layout.left() + layout.plotWidth();
        for (int order = 0; order < lines.size(); order++) {
            Ink ink = Ink.ofLine(order);
            sheet.rule(right + 2, wanted[order], right + 16, centres[order], ink, HouseStyle.solid(1));
            sheet.rule(right + 16, centres[order], right + 40, centres[order], ink, HouseStyle.ofLine(order));
            sheet.paths(PlotTrace.of(HouseStyle.markerOf(order), ink, right + 28, centres[order]));
            double base = centres[order] - (names.get(order).size() - 1) * lineHeight / 2 + 4.5;
            for (String words : names.get(order)) {
                sheet.text(right + 46, base, Anchor.START, Ink.TEXT, words);
                base += lineHeight;
            }
        }
    }

    private void namesBelow(SvgSheet sheet, YearLayout layout) {
        double base = layout.top() + layout.plotHeight() + 2.0 * layout.format().fontSize() + 18;
        for (int order = 0; order < lines.size(); order++) {
            sheet.rule(8, base - 4, 40, base - 4, Ink.ofLine(order), HouseStyle.ofLine(order));
            sheet.paths(PlotTrace.of(HouseStyle.markerOf(order), Ink.ofLine(order), 24, base - 4));
            sheet.text(48, base, Anchor.START, Ink.TEXT, lines.get(order).name());
            base += layout.keyRow();
        }
    }

    private String monthWord(int month, SheetFormat format) {
        String name = words.shortMonth(month + 1);
        return format == SheetFormat.WIDE ? name : name.substring(0, name.offsetByCodePoints(0, 1));
    }
}
