package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.util.List;
import java.util.Optional;

/**
 * A year with spans of days marked along its foot, and one day called out.
 *
 * @param year the year
 * @param spans what is marked, each from a day to a later one, 0 to 365
 * @param spanWord what the marks mean
 * @param day the day called out, 0 to 365
 * @param dayWord words beside it
 */
public record MarkedYearChart(YearChart year, List<double[]> spans, String spanWord, double day, String dayWord) {
    private static final double ABOVE_FOOT = 7;
    private static final double HALF_CAP = 5;
    private static final double THICK = 5;

    /** Keeps its own copy. */
    public MarkedYearChart {
        spans = spans.stream().map(double[]::clone).toList();
    }

    /** The picture in one format, for a page. */
    public String svg(SheetFormat format) {
        return sheet(format).svg(year.title(), year.description());
    }

    /** The wide picture for a file of its own, its title in sight. */
    public String fileSvg() {
        return sheet(SheetFormat.WIDE).fileSvg(year.title(), year.description());
    }

    private SvgSheet sheet(SheetFormat format) {
        SvgSheet sheet = year.sheet(format);
        YearLayout layout = year.layout(format);
        double foot = layout.top() + layout.plotHeight() - ABOVE_FOOT;
        for (double[] span : spans) {
            double from = layout.x(span[0]);
            double to = layout.x(span[1]);
            sheet.rule(from, foot, to, foot, Ink.PROUD, HouseStyle.solid(THICK));
            sheet.rule(from, foot - HALF_CAP, from, foot + HALF_CAP, Ink.PROUD, HouseStyle.solid(1.6));
            sheet.rule(to, foot - HALF_CAP, to, foot + HALF_CAP, Ink.PROUD, HouseStyle.solid(1.6));
        }
        widest().ifPresent(span -> {
            double words = format.widthOf(spanWord);
            double left = layout.left() + 2.0;
            double right = layout.left() + layout.plotWidth() - words - 2;
            double middle = layout.x((span[0] + span[1]) / 2) - words / 2;
            sheet.text(Math.max(left, Math.min(right, middle)), foot - 9, Anchor.START, Ink.TEXT, spanWord);
        });
        double x = layout.x(day);
        sheet.rule(x, layout.top() + format.fontSize() + 6.0, x, foot, Ink.MUTED, HouseStyle.solid(1));
        boolean isLate = x + format.widthOf(dayWord) + 6 > layout.left() + layout.plotWidth();
        sheet.text(
                isLate ? x - 4 : x + 4,
                layout.top() + format.fontSize() + 4.0,
                isLate ? Anchor.END : Anchor.START,
                Ink.TEXT,
                dayWord);
        return sheet;
    }

    private Optional<double[]> widest() {
        return spans.stream().max((one, other) -> Double.compare(one[1] - one[0], other[1] - other[0]));
    }
}
