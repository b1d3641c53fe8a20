package hafthold.report;

import hafthold.decide.StackFit;
import hafthold.knife.FitLimits;
import java.util.List;
import java.util.Set;

/**
 * The part of a page that is about a stack on a tang: its parts and its year.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 * @param fit the knife and its year
 * @param rows the words of the bench note
 */
record StackSections(BenchStyle style, List<FitLimits> limits, StackFit fit, FitRows rows) {
    private static final Set<String> YEAR = Set.of("stack", "doubt");

    void write(PageFrame frame) {
        Markup page = frame.page();
        StackCharts charts = new StackCharts(style, limits);
        page.open("section").element("h2", style.say("heading.parts"));
        frame.chart(charts.parts(fit.year()));
        page.close("section");
        page.open("section").element("h2", style.say("heading.year"));
        frame.chart(charts.year(fit));
        rows.write(page, YEAR);
        page.close("section");
    }
}
