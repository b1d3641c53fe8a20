package hafthold.report;

import hafthold.report.chart.SheetFormat;
import java.util.function.Function;

/**
 * A picture with everything that belongs to it.
 *
 * @param id short name, also of its file
 * @param title title
 * @param reading one sentence that reads it
 * @param wideSvg for screen and paper
 * @param narrowSvg for a phone
 * @param fileSvg for a file of its own
 * @param numbers what it shows, as numbers
 */
public record ReportChart(
        String id,
        String title,
        String reading,
        String wideSvg,
        String narrowSvg,
        String fileSvg,
        NumbersTable numbers) {

    /**
     * A picture in all its formats.
     *
     * @param svg draws it in a format
     * @param fileSvg drawn for a file of its own
     */
    static ReportChart of(
            String id,
            String title,
            String reading,
            Function<SheetFormat, String> svg,
            String fileSvg,
            NumbersTable numbers) {
        return new ReportChart(
                id, title, reading, svg.apply(SheetFormat.WIDE), svg.apply(SheetFormat.NARROW), fileSvg, numbers);
    }
}
