package hafthold.report.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Where things lie in a {@link TravelChart}.
 *
 * @param format size of the sheet
 * @param rows number of rows
 * @param left left edge of the plot
 * @param plotWidth width of the plot
 * @param top upper edge of the plot
 * @param rowHeight height of a row
 * @param barHeight height of a bar
 */
record TravelLayout(SheetFormat format, int rows, int left, int plotWidth, int top, int rowHeight, double barHeight) {

    private static final double BELOW_LABEL = 0.5;

    static TravelLayout of(SheetFormat format, int rows) {
        return format == SheetFormat.WIDE
                ? new TravelLayout(format, rows, 326, 358, 56, 28, 9)
                : new TravelLayout(format, rows, 8, 320, 54, 40, 9);
    }

    int plotHeight() {
        return rows * rowHeight;
    }

    int height() {
        return top + plotHeight() + 3 * (format.fontSize() + 5) + 14;
    }

    double x(Span span, double value) {
        return left + plotWidth * (value - span.lowest()) / (span.highest() - span.lowest());
    }

    /** The start of words of a width, moved so that they stay on the sheet. */
    double held(double start, double width) {
        return Math.max(2, Math.min(start, format.width() - width - 2));
    }

    double rowCentre(int row) {
        return -(row + (format == SheetFormat.WIDE ? 0.5 : 0.7));
    }

    /**
     * An upright line at a value: from top to floor on a wide sheet; on a narrow one, where labels stand in the plot, only
     * beside the bars, so that it crosses no words.
     */
    List<double[]> uprights(double value) {
        if (format == SheetFormat.WIDE) {
            return List.of(new double[] {value, -rows, value, 0});
        }
        List<double[]> pieces = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            pieces.add(new double[] {value, -(row + 1), value, -(row + BELOW_LABEL)});
        }
        return pieces;
    }

    double labelBase(int row) {
        return top + row * rowHeight + (format == SheetFormat.WIDE ? 0.5 * rowHeight + 4.5 : 17);
    }

    double nameX() {
        return 32;
    }

    int nameCharacters() {
        return format == SheetFormat.WIDE ? 43 : 40;
    }
}
