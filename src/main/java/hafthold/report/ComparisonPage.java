package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.EventComparison;
import hafthold.knife.FitLimits;
import hafthold.report.chart.EdgeSketch;
import hafthold.simulate.HandleYear;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A comparison as a page of its own: no script, nothing fetched, to be read on a screen, a phone or paper.
 *
 * @param units units of movements
 * @param namedMaterial id of the material asked for, which is spoken of first
 * @param limits classes of work, strictest first
 * @param command the command that repeats the run
 */
public record ComparisonPage(
        LengthUnits units, Optional<String> namedMaterial, List<FitLimits> limits, String command) {

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
        List<ReportChart> charts = new ComparisonCharts(namedMaterial, limits).of(comparison);
        PageFrame frame = new PageFrame("Handle materials for " + comparison.placeName());
        Markup page = frame.page();
        page.element("p", VerdictCount.sentence(comparison), "class", "lead");
        situation(page, comparison);
        answer(page, comparison);
        page.open("section").element("h2", "Ranking");
        frame.chart(charts.get(0));
        new ComparisonTables(units).ranking(page, comparison);
        page.element(
                "p",
                "Step: " + SituationWords.steps(comparison)
                        + " Range and month stand below it. The verdict counts pins and joints as well as edges.",
                "class",
                "note");
        page.close("section");
        if (!answers.events().isEmpty()) {
            EventColumns.write(page, EventRows.of(answers.events()));
        }
        page.open("section").element("h2", "What moves");
        WhatMoves.sentences(comparison).forEach(sentence -> page.element("p", sentence));
        new ComparisonTables(units).movements(page, comparison);
        page.close("section");
        page.open("section").element("h2", "Through the year");
        charts.stream().skip(1).forEach(frame::chart);
        page.close("section");
        Foundations.write(page, comparison, limits);
        again(page);
        return frame.html();
    }

    private void answer(Markup page, Comparison comparison) {
        page.open("section", "class", "answer").element("h2", "The answer");
        Map<Ranked, String> spoken = spoken(comparison);
        double tallest = spoken.keySet().stream()
                .mapToDouble(
                        answer -> 1000 * EdgeStep.worst(answer.year()).size().value())
                .max()
                .orElse(0);
        double unitsPerMillimetre = EdgeSketch.TALLEST_STEP / Math.max(tallest, 0.05);
        page.open("div", "class", "spoken");
        for (Map.Entry<Ranked, String> entry : spoken.entrySet()) {
            spokenAnswer(page, entry.getValue(), entry.getKey(), unitsPerMillimetre);
        }
        page.close("div");
        page.element(
                "p",
                "Sketches: steps drawn about " + EdgeSketch.exaggeration(unitsPerMillimetre)
                        + " times too tall, all alike.",
                "class",
                "note");
        page.close("section");
    }

    private void spokenAnswer(Markup page, String label, Ranked answer, double unitsPerMillimetre) {
        HandleYear year = answer.year();
        EdgeStep worst = EdgeStep.worst(year);
        boolean isDrawn = answer.isMovementKnown();
        page.open("article").element("p", label, "class", "kicker");
        page.element("h3", AnswerWords.nameOf(year));
        page.open("p", "class", "stampline");
        ComparisonTables.stamp(page, answer.verdict());
        page.close("p");
        if (isDrawn) {
            double step = worst.isFlush()
                    ? 0
                    : (worst.side() == EdgeStep.Side.SHY ? -1000 : 1000)
                            * worst.size().value();
            String words = worst.isFlush()
                    ? "flush"
                    : worst.length().text(LengthUnits.MM) + " " + worst.side().word();
            page.trusted(new EdgeSketch(
                            "sketch-" + answer.rank(),
                            AnswerWords.nameOf(year) + " at its worst",
                            step,
                            words,
                            EdgeStep.isBonded(year),
                            unitsPerMillimetre)
                    .svg());
        } else {
            page.open("div").close("div");
        }
        page.element("p", new AnswerWords(units).sentence(answer)).close("article");
    }

    /** What is spoken of: the material asked for first, then the best and the worst. */
    private Map<Ranked, String> spoken(Comparison comparison) {
        Map<Ranked, String> spoken = new LinkedHashMap<>();
        ChosenAnswers.named(comparison, namedMaterial).forEach(answer -> spoken.put(answer, "Asked for"));
        List<Ranked> judged = ChosenAnswers.judged(comparison);
        if (!judged.isEmpty()) {
            spoken.merge(judged.get(0), "Best", (before, word) -> before + ", and best");
            if (judged.size() > 1) {
                spoken.merge(judged.get(judged.size() - 1), "Worst", (before, word) -> before + ", and worst");
            }
        }
        return spoken;
    }

    private void again(Markup page) {
        page.open("section").element("h2", "To run this again");
        page.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", "Command")
                .open("pre")
                .verbatim(command)
                .close("pre")
                .close("div");
        page.close("section");
    }

    private void situation(Markup page, Comparison comparison) {
        page.open("dl", "class", "situation");
        Map<String, String> inputs = new LinkedHashMap<>();
        inputs.put("Lives", SituationWords.lives(comparison));
        inputs.put("Made at", SituationWords.made(comparison));
        inputs.put("Handle", SituationWords.handle(comparison.handle(), units));
        inputs.forEach((term, words) -> page.element("dt", term).element("dd", words));
        page.close("dl");
    }
}
