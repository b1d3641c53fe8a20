package hafthold.report;

import hafthold.decide.Claim;
import hafthold.decide.ClaimVerdict;
import hafthold.knife.FitLimits;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A judged claim as a page of its own: the bench note with its picture, no script, nothing fetched.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 * @param cautions what can hurt with the materials of the knife
 * @param input the knife's file as it was given, to be echoed
 * @param command the command that repeats the run
 */
record ClaimPage(BenchStyle style, List<FitLimits> limits, List<Finding> cautions, String input, String command) {

    /** The whole page as HTML. */
    String of(Claim claim) {
        ClaimWords words = new ClaimWords(style, claim);
        ClaimTables tables = new ClaimTables(style, claim);
        ClaimAdvice advice = new ClaimAdvice(style, claim);
        PageFrame frame = new PageFrame(style, words.pageTitle());
        Markup page = frame.page();
        page.open("div", "class", "brief");
        page.open("p", "class", "lead verdict")
                .element("span", words.verdictAndSure(), "class", "stamp " + stamp(claim.verdict()))
                .text(" " + words.verdict())
                .close("p");
        page.open("section").element("h2", style.say("claim.heading.measured"));
        PageFrame.numbers(
                page,
                new NumbersTable(
                        style.say("claim.caption.measured", "unit", style.unit()),
                        tables.readingsHead(),
                        tables.readings()));
        page.element("p", style.say("claim.signs"), "class", "note");
        frame.chart(new ClaimCharts(style, limits).course(claim));
        page.close("section");
        page.open("section").element("h2", style.say("claim.heading.shares")).open("div", "class", "abreast");
        tables.sharedOut()
                .forEach(row -> PageFrame.numbers(
                        page,
                        new NumbersTable(
                                style.say(
                                        "claim.caption.shares",
                                        "step",
                                        words.step(row.measured()),
                                        "point",
                                        words.point(row.measured().point()),
                                        "day",
                                        words.day(row.measured().on())),
                                tables.sharesHead(),
                                tables.shares(row))));
        page.close("div").element("p", tables.sharesNote(), "class", "note").close("section");
        list(page, style.say("claim.heading.back"), advice.back());
        list(page, style.say("heading.to-do"), new ClaimToDo(style, claim).words());
        list(page, style.say("claim.heading.sure"), advice.sure());
        page.open("section")
                .element("h2", style.say("claim.heading.customer"))
                .element("p", new ClaimForCustomer(style, claim).words())
                .close("section");
        List<Finding> findings = new ArrayList<>(claim.findings());
        findings.addAll(cautions);
        page.open("div", "class", "small-print");
        new Foundations(style, List.of())
                .write(page, FindingDigest.of(style, findings, FitInputs.names(claim.knife())));
        inputs(page, claim);
        page.close("div").close("div");
        return frame.html();
    }

    /** The look of the stamp, from the quietest verdict to the loudest. */
    private static String stamp(ClaimVerdict verdict) {
        return switch (verdict) {
            case WEATHER -> "stamp-stays";
            case PLACE, USE, PLACE_AND_USE -> "stamp-care";
            case FINISH, FINISH_AND_PLACE, FINISH_AND_USE -> "stamp-change";
            case NOT_EXPLAINED -> "stamp-refuse";
            case OPEN, TOO_COARSE -> "stamp-unknown";
        };
    }

    private static void list(Markup page, String heading, List<String> sentences) {
        page.open("section").element("h2", heading).open("ul");
        sentences.forEach(sentence -> page.element("li", sentence));
        page.close("ul").close("section");
    }

    private void inputs(Markup page, Claim claim) {
        page.open("section", "class", "inputs").element("h2", style.say("claim.heading.told"));
        PageFrame.openTable(page, style.say("caption.inputs"), style.heads("input", "value"));
        for (FitInputs.Input told : ClaimInputs.of(claim, style)) {
            page.open("tr")
                    .element("th", told.name(), "scope", "row")
                    .element("td", told.value())
                    .close("tr");
        }
        PageFrame.closeTable(page);
        page.open("details").element("summary", style.say("fit.file"));
        PageFrame.verbatim(page, style.say("label.file"), input);
        page.close("details");
        page.element("h3", style.say("heading.again"));
        PageFrame.verbatim(page, style.say("label.command"), command);
        page.close("section");
    }
}
