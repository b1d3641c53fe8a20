package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.EventComparison;
import hafthold.knife.FitLimits;
import hafthold.report.chart.EdgeSketch;
import hafthold.simulate.HandleYear;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A comparison as a page of its own: no script, nothing fetched, to be read on a screen, a phone or paper.
 *
 * @param style language and units
 * @param namedMaterial id of the material asked for, which is spoken of first
 * @param limits classes of work, strictest first
 * @param command the command that repeats the run
 */
public record ComparisonPage(BenchStyle style, Optional<String> namedMaterial, List<FitLimits> limits, String command) {

    /** Keeps its own copy. */
    public ComparisonPage {
        limits = List.copyOf(limits);
    }

    /** The whole page as HTML. */
    public String of(Comparison comparison) {
        return of(EventComparison.quiet(comparison));
    }

    /** Likewise, with what each event does. */
    public String of(EventComparison answers) {
        Comparison comparison = answers.comparison();
        List<ReportChart> charts = new ComparisonCharts(style, namedMaterial, limits).of(comparison);
        PageFrame frame = new PageFrame(style, style.say("compare.title", "place", style.tell(comparison.placeName())));
        Markup page = frame.page();
        page.element("p", VerdictCount.sentence(style, comparison), "class", "lead");
        situation(page, comparison);
        answer(page, comparison);
        page.open("section").element("h2", style.say("heading.ranking"));
        frame.chart(charts.get(0));
        new ComparisonTables(style).ranking(page, comparison);
        page.element(
                "p", style.say("compare.note", "steps", new SituationWords(style).steps(comparison)), "class", "note");
        page.close("section");
        if (!answers.events().isEmpty()) {
            EventColumns.write(page, style, EventRows.of(style, answers.events()));
        }
        page.open("section").element("h2", style.say("heading.moves"));
        new WhatMoves(style).sentences(comparison).forEach(sentence -> page.element("p", sentence));
        new ComparisonTables(style).movements(page, comparison);
        page.close("section");
        page.open("section").element("h2", style.say("heading.year"));
        charts.stream().skip(1).forEach(frame::chart);
        page.close("section");
        new Foundations(style, limits).write(page, FindingDigest.of(style, comparison));
        frame.again(command);
        return frame.html();
    }

    private void answer(Markup page, Comparison comparison) {
        page.open("section", "class", "answer").element("h2", style.say("heading.answer"));
        List<Spoken> spoken = spoken(comparison);
        double tallest = spoken.stream()
                .mapToDouble(said ->
                        1000 * EdgeStep.worst(said.answer().year()).size().value())
                .max()
                .orElse(0);
        double unitsPerMillimetre = EdgeSketch.TALLEST_STEP / Math.max(tallest, 0.05);
        page.open("div", "class", "spoken");
        for (Spoken said : spoken) {
            spokenAnswer(page, said.label(), said.answer(), unitsPerMillimetre);
        }
        page.close("div");
        page.element(
                "p",
                style.say("compare.sketches", "times", Long.toString(EdgeSketch.exaggeration(unitsPerMillimetre))),
                "class",
                "note");
        page.close("section");
    }

    private void spokenAnswer(Markup page, String label, Ranked answer, double unitsPerMillimetre) {
        HandleYear year = answer.year();
        EdgeStep worst = EdgeStep.worst(year);
        boolean isDrawn = answer.isMovementKnown();
        page.open("article").element("p", label, "class", "kicker");
        page.element("h3", new AnswerWords(style).nameOf(year));
        page.open("p", "class", "stampline");
        ComparisonTables.stamp(page, style, answer.verdict());
        page.close("p");
        if (isDrawn) {
            double step = worst.isFlush()
                    ? 0
                    : (worst.side() == EdgeStep.Side.SHY ? -1000 : 1000)
                            * worst.size().value();
            String words = worst.isFlush()
                    ? style.say("flush")
                    : new AnswerWords(style).side(worst.side(), worst.length().text(style.mainUnit()));
            page.trusted(new EdgeSketch(
                            "sketch-" + answer.rank(),
                            style.say("sketch.title", "name", new AnswerWords(style).nameOf(year)),
                            step,
                            words,
                            EdgeStep.isBonded(year),
                            unitsPerMillimetre,
                            style)
                    .svg());
        } else {
            page.open("div").close("div");
        }
        page.element("p", new AnswerWords(style).sentence(answer)).close("article");
    }

    /** An answer that is spoken of, and why. */
    private record Spoken(Ranked answer, String label) {}

    /** What is spoken of: the material asked for first, then the best and the worst; each once. */
    private List<Spoken> spoken(Comparison comparison) {
        List<Spoken> spoken = new ArrayList<>();
        for (Ranked named : ChosenAnswers.named(comparison, namedMaterial)) {
            spoken.add(new Spoken(named, style.say("spoken.asked")));
        }
        List<Ranked> judged = ChosenAnswers.judged(comparison);
        if (!judged.isEmpty()) {
            speak(judged.get(0), "spoken.best", "spoken.and-best", spoken);
        }
        if (judged.size() > 1) {
            speak(judged.get(judged.size() - 1), "spoken.worst", "spoken.and-worst", spoken);
        }
        return spoken;
    }

    private void speak(Ranked answer, String alone, String together, List<Spoken> spoken) {
        for (int i = 0; i < spoken.size(); i++) {
            Spoken before = spoken.get(i);
            if (before.answer().rank() == answer.rank()) {
                spoken.set(i, new Spoken(answer, style.say(together, "before", before.label())));
                return;
            }
        }
        spoken.add(new Spoken(answer, style.say(alone)));
    }

    private void situation(Markup page, Comparison comparison) {
        SituationWords words = new SituationWords(style);
        Map<String, String> inputs = new LinkedHashMap<>();
        inputs.put(style.say("row.lives"), words.lives(comparison));
        inputs.put(style.say("row.made-at"), words.made(comparison));
        inputs.put(style.say("row.handle"), words.handle(comparison.handle()));
        PageFrame.situation(page, inputs);
    }
}
