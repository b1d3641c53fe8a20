package hafthold.report;

import hafthold.decide.StackFit;
import hafthold.knife.FitLimits;
import java.util.List;
import java.util.Set;

/**
 * The part of a page that is about a stack on a tang: its parts and its year.
 *
 * @param limits classes of work, strictest first
 * @param fit the knife and its year
 * @param rows the words of the bench note
 */
record StackSections(List<FitLimits> limits, StackFit fit, FitRows rows) {
    private static final Set<String> YEAR = Set.of("Stack", "Doubt");

    void write(PageFrame frame) {
        Markup page = frame.page();
        StackCharts charts = new StackCharts(limits);
        page.open("section").element("h2", "What each part does");
        frame.chart(charts.parts(fit.year()));
        page.close("section");
        page.open("section").element("h2", "Through the year");
        frame.chart(charts.year(fit));
        rows.write(page, YEAR::contains);
        page.close("section");
    }
}
