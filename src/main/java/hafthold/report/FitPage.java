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
import java.util.Set;

/**
 * One knife in one place as a page of its own: the bench note with its pictures, no script, nothing fetched, to be read
 * on a screen, a phone or paper.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 * @param cautions what can hurt with the materials of the knife
 * @param input the knife's file as it was given, to be echoed
 * @param command the command that repeats the run
 */
public record FitPage(BenchStyle style, List<FitLimits> limits, List<Finding> cautions, String input, String command) {
    private static final Set<String> SITUATION = Set.of("lives", "counted", "made", "handle");

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
        PageFrame frame = new PageFrame(
                style,
                style.say(
                        "fit.page-title",
                        "knife",
                        fit.knife().build().order().name().orElse(style.say("fit.a-knife")),
                        "place",
                        style.tell(fit.destination().name())));
        Markup page = frame.page();
        FitRows rows = FitRows.of(answer, style);
        page.open("p", "class", "lead verdict");
        ComparisonTables.stamp(page, style, fit.verdict());
        TriedChanges tried = new TriedChanges(style, answer);
        page.text(" " + FitText.verdictSentence(fit, style) + tried.remedy()).close("p");
        rows.writeSituation(page, SITUATION);
        decides(page, fit);
        answer.events().ifPresent(events -> EventColumns.write(page, style, EventRows.of(style, events)));
        toDo(page, tried);
        if (fit instanceof FullTangFit full) {
            new FullTangSections(style, limits, full, rows).write(frame);
        } else {
            new StackSections(style, limits, (StackFit) fit, rows).write(frame);
        }
        List<Finding> findings = new ArrayList<>(fit.findings());
        findings.addAll(cautions);
        new Foundations(style, limits)
                .write(
                        page,
                        FindingDigest.of(style, findings, FitInputs.names(fit.knife())),
                        fit.knife().build().order().workClass());
        inputs(page, fit);
        return frame.html();
    }

    private void decides(Markup page, KnifeFit fit) {
        ReasonWords words = new ReasonWords(style, false);
        page.open("section").element("h2", style.say("heading.decides"));
        if (fit.reasons().isEmpty()) {
            page.element("p", style.say("fit.nothing-moves"));
        } else {
            page.open("ol", "class", "reasons");
            for (Reason reason : fit.reasons()) {
                page.element("li", BenchStyle.capital(words.clause(reason)) + ".");
            }
            page.close("ol");
        }
        page.close("section");
    }

    private void toDo(Markup page, TriedChanges tried) {
        page.open("section");
        for (TriedChanges.Group group : tried.groups()) {
            page.element("h2", group.heading());
            if (group.changes().isEmpty()) {
                page.element("p", group.none());
            } else {
                changes(page, group.changes());
            }
            if (!group.after().isEmpty()) {
                page.element("p", group.after());
            }
        }
        if (tried.any()) {
            page.element("p", style.say("fit.tried"), "class", "note");
        }
        page.close("section");
    }

    private void changes(Markup page, List<Advice> changes) {
        AdviceWords words = new AdviceWords(style);
        page.open("ol", "class", "reasons advice");
        for (Advice advice : changes) {
            page.open("li").open("b").text(words.toDo(advice.change()) + ".").trusted("</b> ");
            ComparisonTables.stamp(page, style, advice.verdict());
            String effects = words.effects(advice);
            if (!effects.isEmpty()) {
                page.open("br").element("small", effects);
            }
            page.close("li");
        }
        page.close("ol");
    }

    private void inputs(Markup page, KnifeFit fit) {
        page.open("section", "class", "inputs").element("h2", style.say("heading.inputs"));
        PageFrame.openTable(page, style.say("caption.inputs"), style.heads("input", "value"));
        for (FitInputs.Input input : FitInputs.of(fit, style)) {
            page.open("tr")
                    .element("th", input.name(), "scope", "row")
                    .element("td", input.value())
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
