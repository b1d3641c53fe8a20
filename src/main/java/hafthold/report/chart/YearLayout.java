package hafthold.report.chart;

import java.math.BigDecimal;

/**
 * Where things lie in a {@link YearChart}.
 *
 * @param format size of the sheet
 * @param lines number of lines
 * @param hasStart whether there is a place for final sanding ahead of January
 */
record YearLayout(SheetFormat format, int lines, boolean hasStart) {

    boolean isWide() {
        return format == SheetFormat.WIDE;
    }

    int left() {
        return isWide() ? 48 : 36;
    }

    int top() {
        return 34;
    }

    int plotWidth() {
        return isWide() ? 510 : 292;
    }

    int plotHeight() {
        return isWide() ? 290 : 220;
    }

    int height() {
        return top() + plotHeight() + format.fontSize() + 16 + (isWide() ? 0 : lines * LineNames.row(format) + 6);
    }

    double startDay() {
        return isWide() ? -18 : -26;
    }

    Span x() {
        double first = hasStart ? 2 * startDay() : 0;
        return new Span(BigDecimal.valueOf(first), BigDecimal.valueOf(YearDays.DAYS), BigDecimal.ONE);
    }

    double x(double day) {
        return left() + plotWidth() * (day - x().lowest()) / (x().highest() - x().lowest());
    }

    double y(Span span, double value) {
        return top() + plotHeight() * (span.highest() - value) / (span.highest() - span.lowest());
    }
}
