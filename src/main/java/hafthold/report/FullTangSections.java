package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.simulate.FitYear.SideYear;
import java.util.List;
import java.util.Set;

/**
 * The part of a page that is about a full-tang knife: section, year, pins, strength.
 *
 * @param units units of movements
 * @param limits classes of work, strictest first
 * @param fit the knife and its year
 * @param rows the words of the bench note
 */
record FullTangSections(LengthUnits units, List<FitLimits> limits, FullTangFit fit, FitRows rows) {
    private static final Set<String> EDGES = Set.of("Edges", "left", "right", "Faces", "Bolster", "Bow");
    private static final Set<String> STRENGTH = Set.of("Glue line", "Scale", "Ends", "Heat");

    void write(PageFrame frame) {
        Markup page = frame.page();
        FullTangCharts charts = new FullTangCharts(limits);
        page.open("section").element("h2", "Edges and faces");
        frame.chart(charts.section(fit));
        rows.write(page, EDGES::contains);
        frame.chart(charts.edgeYear(fit));
        charts.stays(fit).ifPresent(frame::chart);
        sides(page);
        page.close("section");
        page.open("section").element("h2", "Pins");
        if (fit.year().pins().isEmpty()) {
            page.element("p", "This handle has no pins: glue alone holds the scales.");
        } else {
            frame.chart(charts.pins(fit));
            rows.write(page, lead -> lead.startsWith("Pin "));
        }
        page.close("section");
        page.open("section").element("h2", "What bears it");
        frame.chart(charts.stressYear(fit));
        rows.write(page, STRENGTH::contains);
        rows.write(page, "Doubt"::equals);
        page.close("section");
    }

    /** Each scale by itself where the two differ. */
    private void sides(Markup page) {
        if (fit.year().sides().size() > 1) {
            PageFrame.openTable(
                    page,
                    "Each scale by itself, the year's worst",
                    List.of("Scale", "Cut", "Edge shy", "Edge proud", "Unglued shy", "Unglued proud"));
            for (SideYear side : fit.year().sides()) {
                page.open("tr").element("th", side.name(), "scope", "row");
                page.element("td", AdviceWords.cutWord(side.cut()));
                List.of(side.edgeShy(), side.edgeProud(), side.freeShy(), side.freeProud())
                        .forEach(band -> page.element("td", cell(band), "class", "held"));
                page.close("tr");
            }
            PageFrame.closeTable(page);
        }
    }

    private String cell(Band band) {
        BenchLength length = new BenchLength(band);
        return length.hundredths(units) + (band.isExact() ? "" : " (" + length.hundredthsRange() + ")");
    }
}
