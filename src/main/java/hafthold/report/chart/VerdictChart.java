package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.XYChart;

/**
 * Shares of the verdicts, a bar a row from stays to refuse: told apart by lightness, by order and by the figure in the
 * bar.
 *
 * @param id short name, also of its file
 * @param title title
 * @param rows from top to bottom
 * @param words what the verdicts are called, from stays to unknown
 */
public record VerdictChart(String id, String title, List<VerdictBar> rows, List<String> words) {
    private static final List<Ink> GROUNDS = List.of(Ink.STAYS, Ink.CARE, Ink.CHANGE, Ink.REFUSE, Ink.PAPER);
    private static final int REFUSE = 3;
    private static final int UNKNOWN = 4;
    private static final double BAR_HEIGHT = 18;
    private static final int TOP = 26;
    private static final int BOTTOM = 8;

    /** Keeps its own copy. */
    public VerdictChart {
        rows = List.copyOf(rows);
        words = List.copyOf(words);
        if (words.size() != GROUNDS.size()) {
            throw new IllegalArgumentException(
                    "there are " + GROUNDS.size() + " verdicts, got words for " + words.size());
        }
    }

    /** The picture for a page. */
    public String svg(SheetFormat format) {
        return sheet(format).svg(title, description());
    }

    /** The picture for a file of its own. */
    public String fileSvg() {
        return sheet(SheetFormat.WIDE).fileSvg(title, description());
    }

    private String description() {
        List<String> parts = new ArrayList<>();
        for (VerdictBar row : rows) {
            List<String> shares = new ArrayList<>();
            for (int i = 0; i < GROUNDS.size(); i++) {
                if (row.shares().get(i) > 0) {
                    shares.add(percent(row.shares().get(i)) + " % " + words.get(i));
                }
            }
            parts.add(row.label() + ": " + String.join(", ", shares));
        }
        return String.join(". ", parts) + ".";
    }

    private SvgSheet sheet(SheetFormat format) {
        boolean isWide = format == SheetFormat.WIDE;
        int left = isWide ? 170 : 4;
        int width = format.width() - left - 4;
        int rowHeight = isWide ? 27 : 42;
        int height = rows.size() * rowHeight;
        SvgSheet sheet = new SvgSheet(id, format, TOP + height + BOTTOM);
        key(sheet, format, left);
        sheet.plot(left, TOP, PlotTrace.of(plot(width, height, isWide ? 0.5 : 0.68)));
        for (int i = 0; i < rows.size(); i++) {
            double centre = TOP + rowHeight * (i + (isWide ? 0.5 : 0.68));
            double base = centre + 0.35 * format.fontSize();
            if (isWide) {
                sheet.text(left - 10.0, base, Anchor.END, Ink.TEXT, rows.get(i).label());
            } else {
                sheet.text(
                        left,
                        centre - BAR_HEIGHT / 2 - 4,
                        Anchor.START,
                        Ink.TEXT,
                        rows.get(i).label());
            }
            figures(sheet, format, rows.get(i), left, width, base);
            frame(sheet, left, width, centre);
        }
        return sheet;
    }

    private XYChart plot(int width, int height, double middle) {
        XYChart chart = HouseStyle.barePlot(
                width,
                height,
                new Span(BigDecimal.ZERO, BigDecimal.ONE, BigDecimal.ONE),
                new Span(BigDecimal.valueOf(-rows.size()), BigDecimal.ZERO, BigDecimal.ONE));
        for (int verdict = 0; verdict < UNKNOWN; verdict++) {
            List<double[]> bars = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                double start = before(rows.get(i), verdict);
                double share = rows.get(i).shares().get(verdict);
                if (share > 0) {
                    bars.add(new double[] {start, -(i + middle), start + share, -(i + middle)});
                }
            }
            HouseStyle.strokes(chart, "verdict " + verdict, GROUNDS.get(verdict), HouseStyle.solid(BAR_HEIGHT), bars);
        }
        return chart;
    }

    private static double before(VerdictBar row, int verdict) {
        return row.shares().subList(0, verdict).stream()
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    private static void figures(SvgSheet sheet, SheetFormat format, VerdictBar row, int left, int width, double base) {
        for (int verdict = 0; verdict < GROUNDS.size(); verdict++) {
            double share = row.shares().get(verdict);
            String figure = verdict == UNKNOWN ? "?" : percent(share);
            if (share * width > format.widthOf(figure) + 6) {
                double middle = left + width * (before(row, verdict) + share / 2);
                sheet.plainText(middle, base, Anchor.MIDDLE, verdict == REFUSE ? Ink.PAPER : Ink.TEXT, figure);
            }
        }
    }

    private static void frame(SvgSheet sheet, int left, int width, double centre) {
        double top = centre - BAR_HEIGHT / 2;
        double bottom = centre + BAR_HEIGHT / 2;
        sheet.rule(left, top, left + width, top, Ink.LIMIT, HouseStyle.solid(0.7));
        sheet.rule(left, bottom, left + width, bottom, Ink.LIMIT, HouseStyle.solid(0.7));
        sheet.rule(left, top, left, bottom, Ink.LIMIT, HouseStyle.solid(0.7));
        sheet.rule(left + width, top, left + width, bottom, Ink.LIMIT, HouseStyle.solid(0.7));
    }

    private void key(SvgSheet sheet, SheetFormat format, int left) {
        double x = left;
        double base = format.fontSize();
        for (int verdict = 0; verdict < UNKNOWN; verdict++) {
            sheet.rule(x, base - 5, x + 14, base - 5, Ink.LIMIT, HouseStyle.solid(13));
            sheet.rule(x + 1, base - 5, x + 13, base - 5, GROUNDS.get(verdict), HouseStyle.solid(11));
            sheet.text(x + 19, base, Anchor.START, Ink.MUTED, words.get(verdict));
            x += 19 + format.widthOf(words.get(verdict)) + 14;
        }
        sheet.text(x, base, Anchor.START, Ink.MUTED, "%");
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share);
    }
}
