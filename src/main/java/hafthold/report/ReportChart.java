package hafthold.report;

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
        NumbersTable numbers) {}
