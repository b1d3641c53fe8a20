package hafthold.report;

import hafthold.decide.Advice;
import hafthold.decide.EventFit;
import hafthold.decide.FullTangFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.Reason;
import hafthold.decide.StackFit;
import hafthold.knife.FitLimits;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * One knife in one place as a page of its own: the bench note with its pictures, no script, nothing fetched, to be read
 * on a screen, a phone or paper.
 *
 * @param units units of movements
 * @param limits classes of work, strictest first
 * @param cautions what can hurt with the materials of the knife
 * @param input the knife's file as it was given, to be echoed
 * @param command the command that repeats the run
 */
public record FitPage(LengthUnits units, List<FitLimits> limits, List<Finding> cautions, String input, String command) {
    private static final Set<String> SITUATION = Set.of("Lives", "Made", "Handle");

    /** Keeps its own copy. */
    public FitPage {
        limits = List.copyOf(limits);
        cautions = List.copyOf(cautions);
    }

    /** The whole page as HTML. */
    public String of(KnifeFit fit) {
        return of(EventFit.quiet(fit));
    }

    /** Likewise, with what each event does. */
    public String of(EventFit answer) {
        KnifeFit fit = answer.fit();
        PageFrame frame = new PageFrame(fit.knife().build().order().name().orElse("A knife") + " for "
                + fit.destination().name());
        Markup page = frame.page();
        FitRows rows = FitRows.of(fit, units);
        page.open("p", "class", "lead verdict");
        ComparisonTables.stamp(page, fit.verdict());
        page.text(" " + FitText.verdictSentence(fit) + FitText.remedy(fit)).close("p");
        rows.writeSituation(page, SITUATION::contains);
        decides(page, fit);
        answer.events().ifPresent(events -> EventColumns.write(page, EventRows.of(events)));
        toDo(page, fit);
        if (fit instanceof FullTangFit full) {
            new FullTangSections(units, limits, full, rows).write(frame);
        } else {
            new StackSections(limits, (StackFit) fit, rows).write(frame);
        }
        List<Finding> findings = new ArrayList<>(fit.findings());
        findings.addAll(cautions);
        Foundations.write(
                page,
                FindingDigest.of(findings, FitInputs.names(fit.knife())),
                limits,
                fit.knife().build().order().workClass());
        inputs(page, fit);
        return frame.html();
    }

    private void decides(Markup page, KnifeFit fit) {
        AnswerWords words = new AnswerWords(units);
        page.open("section").element("h2", "What decides");
        if (fit.reasons().isEmpty()) {
            page.element("p", "Nothing moves further than show-piece work allows.");
        } else {
            page.open("ol", "class", "reasons");
            for (Reason reason : fit.reasons()) {
                String text = words.reason(reason);
                page.element("li", text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".");
            }
            page.close("ol");
        }
        page.close("section");
    }

    private static void toDo(Markup page, KnifeFit fit) {
        page.open("section").element("h2", "What to do");
        if (fit.advice().isEmpty()) {
            page.element("p", FitText.nothingToDo(fit));
        } else {
            page.open("ol", "class", "reasons advice");
            for (Advice advice : fit.advice()) {
                page.open("li")
                        .open("b")
                        .text(AdviceWords.toDo(advice.change()) + ".")
                        .trusted("</b> ");
                ComparisonTables.stamp(page, advice.verdict());
                String effects = AdviceWords.effects(advice);
                if (!effects.isEmpty()) {
                    page.open("br").element("small", effects);
                }
                page.close("li");
            }
            page.close("ol");
            page.element("p", FitText.TRIED, "class", "note");
        }
        page.close("section");
    }

    private void inputs(Markup page, KnifeFit fit) {
        page.open("section", "class", "inputs").element("h2", "What was reckoned with");
        PageFrame.openTable(page, "Inputs, with what was taken where the file says nothing", List.of("Input", "Value"));
        for (FitInputs.Input input : FitInputs.of(fit)) {
            page.open("tr")
                    .element("th", input.name(), "scope", "row")
                    .element("td", input.value())
                    .close("tr");
        }
        PageFrame.closeTable(page);
        page.open("details").element("summary", "The file as it was given");
        verbatim(page, "File", input);
        page.close("details");
        page.element("h3", "To run this again");
        verbatim(page, "Command", command);
        page.close("section");
    }

    private static void verbatim(Markup page, String label, String text) {
        page.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", label)
                .open("pre")
                .verbatim(text)
                .close("pre")
                .close("div");
    }
}
