package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.util.List;

/**
 * Names of the lines of a chart: beside their right ends where the sheet is wide, below the plot where it is narrow.
 *
 * @param sheet the sheet they stand on
 * @param format its size
 * @param names one a line, in the order of the lines
 * @param isMarked whether the lines carry markers
 */
record LineNames(SvgSheet sheet, SheetFormat format, List<String> names, boolean isMarked) {
    private static final int CHARACTERS = 23;

    /** Keeps its own copy. */
    LineNames {
        names = List.copyOf(names);
    }

    /** Height of a row below the plot. */
    static int row(SheetFormat format) {
        return format.fontSize() + 8;
    }

    /**
     * Beside the plot.
     *
     * @param right its right edge
     * @param top its upper edge
     * @param bottom its lower edge
     * @param wanted where each line ends
     */
    void beside(double right, double top, double bottom, double[] wanted) {
        double lineHeight = format.fontSize() + 3.0;
        List<List<String>> broken =
                names.stream().map(name -> LineBreak.lines(name, CHARACTERS)).toList();
        double[] heights = broken.stream()
                .mapToDouble(name -> name.size() * lineHeight + 5)
                .toArray();
        double[] centres = LabelSpread.apart(wanted, heights, top - 4, bottom + 8);
        for (int order = 0; order < names.size(); order++) {
            Ink ink = Ink.ofLine(order);
            sheet.rule(right + 2, wanted[order], right + 16, centres[order], ink, HouseStyle.solid(1));
            sheet.rule(right + 16, centres[order], right + 40, centres[order], ink, HouseStyle.ofLine(order));
            mark(order, right + 28, centres[order]);
            double base = centres[order] - (broken.get(order).size() - 1) * lineHeight / 2 + 4.5;
            for (String words : broken.get(order)) {
                sheet.text(right + 46, base, Anchor.START, Ink.TEXT, words);
                base += lineHeight;
            }
        }
    }

    /** Below the plot, whose lower edge is given. */
    void below(double bottom) {
        double base = bottom + 2.0 * format.fontSize() + 18;
        for (int order = 0; order < names.size(); order++) {
            sheet.rule(8, base - 4, 40, base - 4, Ink.ofLine(order), HouseStyle.ofLine(order));
            mark(order, 24, base - 4);
            sheet.text(48, base, Anchor.START, Ink.TEXT, names.get(order));
            base += row(format);
        }
    }

    private void mark(int order, double x, double y) {
        if (isMarked) {
            sheet.paths(PlotTrace.of(HouseStyle.markerOf(order), Ink.ofLine(order), x, y));
        }
    }
}
