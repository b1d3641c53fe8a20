package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.knife.FitLimits;
import hafthold.simulate.FitYear.SideYear;
import java.util.List;
import java.util.Set;

/**
 * The part of a page that is about a full-tang knife: section, year, pins, strength.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 * @param fit the knife and its year
 * @param rows the words of the bench note
 */
record FullTangSections(BenchStyle style, List<FitLimits> limits, FullTangFit fit, FitRows rows) {

    void write(PageFrame frame) {
        Markup page = frame.page();
        FullTangCharts charts = new FullTangCharts(style, limits);
        page.open("section").element("h2", style.say("heading.edges"));
        frame.chart(charts.section(fit));
        rows.write(page, Set.of("edges", "faces", "bolster", "bow"));
        frame.chart(charts.edgeYear(fit));
        charts.stays(fit).ifPresent(frame::chart);
        sides(page);
        page.close("section");
        page.open("section").element("h2", style.say("heading.pins"));
        if (fit.year().pins().isEmpty()) {
            page.element("p", style.say("fit.no-pins"));
        } else {
            frame.chart(charts.pins(fit));
            rows.write(page, Set.of("pins"));
        }
        page.close("section");
        page.open("section").element("h2", style.say("heading.bears"));
        frame.chart(charts.stressYear(fit));
        rows.write(page, Set.of("strength"));
        rows.write(page, Set.of("doubt"));
        page.close("section");
    }

    /** Each scale by itself where the two differ. */
    private void sides(Markup page) {
        if (fit.year().sides().size() > 1) {
            PageFrame.openTable(
                    page,
                    style.say("caption.sides"),
                    style.heads("scale", "cut", "edge-shy", "edge-proud", "unglued-shy", "unglued-proud"));
            for (SideYear side : fit.year().sides()) {
                page.open("tr").element("th", style.named("of-two", side.name()), "scope", "row");
                page.element("td", style.cut(side.cut()));
                List.of(side.edgeShy(), side.edgeProud(), side.freeShy(), side.freeProud())
                        .forEach(band -> page.element("td", new BenchLength(band).sized(style), "class", "held"));
                page.close("tr");
            }
            PageFrame.closeTable(page);
        }
    }
}
