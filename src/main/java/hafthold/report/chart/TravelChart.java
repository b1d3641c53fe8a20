package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.awt.BasicStroke;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.knowm.xchart.XYChart;

/**
 * Rows of travel about a zero line: shy to the left, proud to the right, a bar as far as it goes and a bracket for how
 * far that may be off.
 *
 * @param id id unique in the page
 * @param title title
 * @param description what the picture shows, for those who cannot see it
 * @param unit words under the axis
 * @param zero what zero means and either side of it
 * @param diamond what a diamond in a row marks
 * @param rows rows from top to bottom, at least one
 * @param limits limits, negative to the left
 * @param words language of what it writes by itself
 */
public record TravelChart(
        String id,
        String title,
        String description,
        String unit,
        ZeroLine zero,
        String diamond,
        List<TravelRow> rows,
        List<LimitMark> limits,
        ChartWords words) {
    private static final double NEAREST_END = 0.05;

    /** Keeps its own copies. */
    public TravelChart {
        rows = List.copyOf(rows);
        limits = List.copyOf(limits);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a travel chart needs at least one row");
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

    private SvgSheet sheet(SheetFormat format) {
        TravelLayout layout = TravelLayout.of(format, rows.size());
        Span x = span(format == SheetFormat.WIDE ? 8 : 6);
        SvgSheet sheet = new SvgSheet(id, format, layout.height());
        sheet.plot(layout.left(), layout.top(), PlotTrace.of(plot(layout, x)));
        axisWords(sheet, layout, x);
        limitWords(sheet, layout, x);
        rowWords(sheet, layout);
        key(sheet, layout);
        return sheet;
    }

    private List<LimitMark> drawnLimits() {
        return LimitMark.worthDrawing(limits, -leftReach(), rightReach());
    }

    private double leftReach() {
        return rows.stream().mapToDouble(TravelRow::leftmost).max().orElseThrow();
    }

    private double rightReach() {
        return rows.stream().mapToDouble(TravelRow::rightmost).max().orElseThrow();
    }

    private Span span(int steps) {
        double left = Math.max(leftReach(), NEAREST_END);
        double right = Math.max(rightReach(), NEAREST_END);
        for (LimitMark limit : drawnLimits()) {
            left = Math.max(left, -limit.value());
            right = Math.max(right, limit.value());
        }
        return Span.covering(-left, right, steps);
    }

    private XYChart plot(TravelLayout layout, Span x) {
        Span y = new Span(BigDecimal.valueOf(-rows.size()), BigDecimal.ZERO, BigDecimal.ONE);
        XYChart chart = HouseStyle.barePlot(layout.plotWidth(), layout.plotHeight(), x, y);
        HouseStyle.strokes(
                chart,
                "grid",
                Ink.GRID,
                HouseStyle.solid(1),
                x.ticks().stream()
                        .flatMap(tick -> layout.uprights(tick.doubleValue()).stream())
                        .toList());
        HouseStyle.strokes(
                chart,
                "limits",
                Ink.LIMIT,
                HouseStyle.dashed(1.4, 5, 3),
                drawnLimits().stream()
                        .flatMap(limit -> layout.uprights(limit.value()).stream())
                        .toList());
        BasicStroke bar = HouseStyle.solid(layout.barHeight());
        HouseStyle.strokes(
                chart, "shy", Ink.SHY, bar, bars(layout, row -> -row.left().value()));
        HouseStyle.strokes(
                chart, "proud", Ink.PROUD, bar, bars(layout, row -> row.right().value()));
        ranges(chart, layout, true);
        ranges(chart, layout, false);
        HouseStyle.marks(chart, "free", Ink.MUTED, EndMark.openDiamond(), freePoints(layout));
        HouseStyle.strokes(chart, "zero", Ink.STEEL, HouseStyle.solid(2.4), layout.uprights(0));
        return chart;
    }

    private List<double[]> bars(TravelLayout layout, Function<TravelRow, Double> end) {
        List<double[]> bars = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            double reach = end.apply(rows.get(i));
            if (rows.get(i).isKnown() && reach != 0) {
                bars.add(new double[] {0, layout.rowCentre(i), reach, layout.rowCentre(i)});
            }
        }
        return bars;
    }

    private void ranges(XYChart chart, TravelLayout layout, boolean known) {
        List<double[]> ranges = new ArrayList<>();
        List<double[]> ends = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            TravelRow row = rows.get(i);
            double y = layout.rowCentre(i);
            for (double[] range : List.of(
                    new double[] {-row.left().low(), -row.left().high()},
                    new double[] {row.right().low(), row.right().high()})) {
                if (row.isKnown() == known && range[0] != range[1]) {
                    ranges.add(new double[] {range[0], y, range[1], y});
                    ends.add(new double[] {range[0], y});
                    ends.add(new double[] {range[1], y});
                }
            }
        }
        String name = known ? "range" : "guess";
        HouseStyle.strokes(
                chart, name, Ink.TEXT, known ? HouseStyle.solid(1.4) : HouseStyle.dashed(1.4, 2, 2.5f), ranges);
        HouseStyle.marks(chart, name + " ends", Ink.TEXT, EndMark.upright(), ends);
    }

    private List<double[]> freePoints(TravelLayout layout) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            TravelRow row = rows.get(i);
            double y = layout.rowCentre(i);
            if (row.isKnown()) {
                row.freeLeft().ifPresent(free -> points.add(new double[] {-free, y}));
                row.freeRight().ifPresent(free -> points.add(new double[] {free, y}));
            }
        }
        return points;
    }

    private void axisWords(SvgSheet sheet, TravelLayout layout, Span x) {
        double lineHeight = layout.format().fontSize() + 5.0;
        double base = layout.top() + layout.plotHeight() + lineHeight;
        for (BigDecimal tick : x.ticks()) {
            boolean isZero = tick.signum() == 0;
            String label = isZero ? zero.at() : words.number(x.label(tick.abs()));
            double width = layout.format().widthOf(label);
            double start = layout.held(layout.x(x, tick.doubleValue()) - width / 2, width);
            sheet.text(start + width / 2, base, Anchor.MIDDLE, isZero ? Ink.TEXT : Ink.MUTED, label);
        }
        double middle = layout.x(x, 0);
        double top = layout.format().fontSize() + 2.0;
        sheet.strongText(middle - 10, top, Anchor.END, Ink.SHY, "\u25c2 " + zero.below());
        sheet.strongText(middle + 10, top, Anchor.START, Ink.PROUD, zero.above() + " \u25b8");
        sheet.text(layout.left() + layout.plotWidth() / 2.0, base + lineHeight, Anchor.MIDDLE, Ink.MUTED, unit);
    }

    private void limitWords(SvgSheet sheet, TravelLayout layout, Span x) {
        List<LimitMark> drawn = drawnLimits();
        for (boolean isLeft : new boolean[] {true, false}) {
            double base = layout.top() - 6;
            for (LimitMark limit :
                    drawn.stream().filter(mark -> mark.value() < 0 == isLeft).toList()) {
                double width = layout.format().widthOf(limit.label());
                double at = layout.x(x, limit.value());
                double start = isLeft ? at + 5 - width : at - 5;
                sheet.text(layout.held(start, width), base, Anchor.START, Ink.LIMIT, limit.label());
                base -= layout.format().fontSize() + 3;
            }
        }
    }

    private void rowWords(SvgSheet sheet, TravelLayout layout) {
        for (int i = 0; i < rows.size(); i++) {
            double base = layout.labelBase(i);
            if (rows.get(i).rank() > 0) {
                String rank = Integer.toString(rows.get(i).rank());
                sheet.text(layout.nameX() - 8, base, Anchor.END, Ink.MUTED, rank);
            }
            List<String> lines = LineBreak.lines(rows.get(i).label(), layout.nameCharacters());
            double lineHeight = layout.format().fontSize() - 0.5;
            double lineBase = base - (lines.size() - 1) * lineHeight / 2;
            for (String line : lines) {
                sheet.text(layout.nameX(), lineBase, Anchor.START, Ink.TEXT, line);
                lineBase += lineHeight;
            }
            sheet.strongText(
                    layout.format().width() - 4.0,
                    base,
                    Anchor.END,
                    Ink.TEXT,
                    rows.get(i).note());
        }
    }

    private void key(SvgSheet sheet, TravelLayout layout) {
        boolean isWide = layout.format() == SheetFormat.WIDE;
        String reach = words.say(isWide ? "key.reach" : "key.reach.short");
        String doubt = words.say(isWide ? "key.doubt" : "key.doubt.short");
        double base = layout.height() - 6.0;
        double middle = base - layout.format().fontSize() * 0.35;
        boolean anyFree = rows.stream()
                .flatMap(row -> Stream.of(row.freeLeft(), row.freeRight()))
                .anyMatch(free -> free.isPresent());
        double length = 2 * (26 + 12)
                + layout.format().widthOf(reach + doubt)
                + (anyFree ? 16 + layout.format().widthOf(diamond) : 0);
        double x =
                Math.max(2, Math.min(isWide ? layout.left() : 8, layout.format().width() - length - 16));
        sheet.rule(x, middle, x + 10, middle, Ink.SHY, HouseStyle.solid(layout.barHeight()));
        sheet.rule(x + 10, middle, x + 20, middle, Ink.PROUD, HouseStyle.solid(layout.barHeight()));
        sheet.text(x + 26, base, Anchor.START, Ink.MUTED, reach);
        x += 26 + layout.format().widthOf(reach) + 12;
        sheet.rule(x, middle, x + 20, middle, Ink.TEXT, HouseStyle.solid(1.4));
        sheet.rule(x, middle - 4, x, middle + 4, Ink.TEXT, HouseStyle.solid(1.4));
        sheet.rule(x + 20, middle - 4, x + 20, middle + 4, Ink.TEXT, HouseStyle.solid(1.4));
        sheet.text(x + 26, base, Anchor.START, Ink.MUTED, doubt);
        x += 26 + layout.format().widthOf(doubt) + 12;
        if (anyFree) {
            sheet.strongText(x + 6, base, Anchor.MIDDLE, Ink.MUTED, "\u25c7");
            sheet.text(x + 16, base, Anchor.START, Ink.MUTED, diamond);
        }
    }
}
