package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.awt.BasicStroke;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Bands of the book and own bands, one pair a row: a pale bar, on it a dark line with ends and a dot at its middle, and a
 * diamond where something was measured.
 *
 * @param id id unique in the page
 * @param title title
 * @param description what the picture shows, for those who cannot see it
 * @param unit under the axis
 * @param rows one or more
 * @param level value that is marked by an upright rule; within sight always
 * @param words what it writes by itself
 */
public record BookOwnChart(
        String id, String title, String description, String unit, List<BookOwnRow> rows, double level, Words words) {
    private static final int SIDE = 12;
    private static final int ROW = 44;
    private static final int FOOT = 62;
    private static final double BAR = 11;
    private static final double BAR_AT = 31;

    /**
     * Words.
     *
     * @param book key of the pale bar
     * @param own key of the dark line
     * @param measured key of the diamond; empty where the picture has none
     * @param chart numbers in the language
     */
    public record Words(String book, String own, String measured, ChartWords chart) {}

    /** Keeps its own copy. */
    public BookOwnChart {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a picture of bands needs a row");
        }
    }

    /** The picture for a page. */
    public String svg(SheetFormat format) {
        return sheet(format).svg(title, description);
    }

    /** The picture as a file of its own. */
    public String fileSvg() {
        return sheet(SheetFormat.WIDE).fileSvg(title, description);
    }

    private SvgSheet sheet(SheetFormat format) {
        int width = format.width() - 2 * SIDE;
        int height = ROW * rows.size();
        Span x = span(format == SheetFormat.WIDE ? 8 : 4);
        SvgSheet sheet = new SvgSheet(id, format, height + FOOT);
        sheet.plot(SIDE, 0, PlotTrace.of(plot(x, width, height)));
        for (int i = 0; i < rows.size(); i++) {
            double base = i * (double) ROW + format.fontSize() + 3;
            sheet.text(SIDE, base, Anchor.START, Ink.TEXT, label(rows.get(i), format));
            sheet.strongText(format.width() - (double) SIDE, base, Anchor.END, Ink.TEXT, note(rows.get(i), format));
        }
        axis(sheet, format, x, width, height);
        key(sheet, format, height + FOOT - 8.0);
        return sheet;
    }

    /** A phone has room for the label alone; the numbers stand below the picture. */
    private static String note(BookOwnRow row, SheetFormat format) {
        return format == SheetFormat.WIDE ? row.note() : "";
    }

    /** As much of a label as there is room for. */
    private static String label(BookOwnRow row, SheetFormat format) {
        double room = format.width() - 3.0 * SIDE - format.widthOf(note(row, format));
        int characters = (int) (room / format.widthOf("x"));
        return row.label().length() <= characters
                ? row.label()
                : LineBreak.lines(row.label(), Math.max(1, characters - 1)).get(0) + "…";
    }

    private Span span(int steps) {
        double[] all = DoubleStream.concat(rows.stream().flatMapToDouble(BookOwnRow::values), DoubleStream.of(level))
                .toArray();
        return Span.covering(
                DoubleStream.of(all).min().orElseThrow(),
                DoubleStream.of(all).max().orElseThrow(),
                steps);
    }

    private XYChart plot(Span x, int width, int height) {
        Span y = new Span(BigDecimal.valueOf(-height), BigDecimal.ZERO, BigDecimal.ONE);
        XYChart chart = HouseStyle.barePlot(width, height, x, y);
        List<double[]> grid = new ArrayList<>();
        List<double[]> levels = new ArrayList<>();
        List<double[]> book = new ArrayList<>();
        List<double[]> own = new ArrayList<>();
        List<double[]> ends = new ArrayList<>();
        List<double[]> middles = new ArrayList<>();
        List<double[]> measured = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            BookOwnRow row = rows.get(i);
            double at = -(i * (double) ROW + BAR_AT);
            for (BigDecimal tick : x.ticks()) {
                grid.add(new double[] {tick.doubleValue(), at + BAR, tick.doubleValue(), at - BAR});
            }
            levels.add(new double[] {level, at + BAR, level, at - BAR}); // in pieces, so that it crosses no label
            book.add(new double[] {row.book().low(), at, row.book().high(), at});
            row.own().ifPresent(band -> {
                own.add(new double[] {band.low(), at, band.high(), at});
                ends.add(new double[] {band.low(), at});
                ends.add(new double[] {band.high(), at});
                middles.add(new double[] {band.value(), at});
            });
            row.measured().ifPresent(value -> measured.add(new double[] {value, at}));
        }
        BasicStroke fine = HouseStyle.solid(1);
        HouseStyle.strokes(chart, "grid", Ink.GRID, fine, grid);
        HouseStyle.strokes(chart, "book", Ink.SCALE, HouseStyle.solid(BAR), book);
        HouseStyle.strokes(chart, "level", Ink.STEEL, HouseStyle.solid(1.4), levels);
        HouseStyle.strokes(chart, "own", Ink.FIRST, HouseStyle.solid(2.4), own);
        HouseStyle.marks(chart, "ends", Ink.FIRST, EndMark.upright(), ends);
        if (words.measured().isEmpty()) {
            HouseStyle.marks(chart, "middles", Ink.FIRST, SeriesMarkers.CIRCLE, middles);
        }
        HouseStyle.marks(chart, "measured", Ink.SHY, SeriesMarkers.DIAMOND, measured);
        return chart;
    }

    private void axis(SvgSheet sheet, SheetFormat format, Span x, int width, int height) {
        double base = height + format.fontSize() + 3.0;
        for (BigDecimal tick : x.ticks()) {
            double at = SIDE + width * (tick.doubleValue() - x.lowest()) / (x.highest() - x.lowest());
            String label = words.chart().number(x.label(tick));
            double half = format.widthOf(label) / 2;
            sheet.text(Math.max(half, Math.min(format.width() - half, at)), base, Anchor.MIDDLE, Ink.MUTED, label);
        }
        sheet.text(SIDE + width / 2.0, base + format.fontSize() + 4, Anchor.MIDDLE, Ink.MUTED, unit);
    }

    private void key(SvgSheet sheet, SheetFormat format, double base) {
        double middle = base - format.fontSize() * 0.35;
        double x = SIDE;
        sheet.rule(x, middle, x + 20, middle, Ink.SCALE, HouseStyle.solid(BAR));
        sheet.text(x + 26, base, Anchor.START, Ink.MUTED, words.book());
        x += 26 + format.widthOf(words.book()) + 10;
        sheet.rule(x, middle, x + 20, middle, Ink.FIRST, HouseStyle.solid(2.4));
        sheet.rule(x, middle - 4, x, middle + 4, Ink.FIRST, HouseStyle.solid(1.4));
        sheet.rule(x + 20, middle - 4, x + 20, middle + 4, Ink.FIRST, HouseStyle.solid(1.4));
        sheet.text(x + 26, base, Anchor.START, Ink.MUTED, words.own());
        x += 26 + format.widthOf(words.own()) + 10;
        if (!words.measured().isEmpty()) {
            sheet.paths(PlotTrace.of(SeriesMarkers.DIAMOND, Ink.SHY, x + 6, middle));
            sheet.text(x + 16, base, Anchor.START, Ink.MUTED, words.measured());
        }
    }
}
