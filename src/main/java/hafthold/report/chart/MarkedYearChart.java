package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A year with spans of days marked along its top, and one day called out.
 *
 * @param year the year
 * @param spans what is marked, each from a day to a later one, 0 to 365
 * @param spanWord what the marks mean
 * @param day the day called out, 0 to 365
 * @param dayWord words beside it
 */
public record MarkedYearChart(YearChart year, List<double[]> spans, String spanWord, double day, String dayWord) {
    private static final double HALF_CAP = 4;
    private static final double THICK = 5;
    private static final double SAMPLE = 16;
    private static final double GAP = 7;

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
        SvgSheet sheet = year.sheet(format, OptionalDouble.of(day));
        YearLayout layout = year.layout(format);
        double bar = layout.top() - HALF_CAP;
        for (double[] span : spans) {
            sheet.rule(layout.x(span[0]), bar, layout.x(span[1]), bar, Ink.PROUD, HouseStyle.solid(THICK));
        }
        double x = layout.x(day);
        double foot = layout.top() + layout.plotHeight();
        sheet.rule(x, layout.top() - 2 * HALF_CAP, x, foot, Ink.MUTED, HouseStyle.solid(1.6));
        key(sheet, layout);
        return sheet;
    }

    /** What bar and upright line mean, over the right end of the plot. */
    private void key(SvgSheet sheet, YearLayout layout) {
        double base = layout.top() - 12.0;
        double middle = base - 4;
        double right = layout.left() + layout.plotWidth();
        sheet.text(right, base, Anchor.END, Ink.TEXT, dayWord);
        double line = right - layout.format().widthOf(dayWord) - GAP;
        sheet.rule(line, middle - 5, line, middle + 5, Ink.MUTED, HouseStyle.solid(1.6));
        double words = line - 2 * GAP;
        sheet.text(words, base, Anchor.END, Ink.TEXT, spanWord);
        double sample = words - layout.format().widthOf(spanWord) - GAP;
        sheet.rule(sample - SAMPLE, middle, sample, middle, Ink.PROUD, HouseStyle.solid(THICK));
    }
}
