package hafthold.report;

import hafthold.decide.Advice;
import hafthold.decide.EventFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * The changes that were tried on a knife, those that are enough apart from those that are not. They are sought in the
 * year without events; where something happens besides the weather, only of the first is said what it comes to with that.
 *
 * @param style language and units
 * @param answer the knife, and what happens to it
 */
record TriedChanges(BenchStyle style, EventFit answer) {

    /**
     * Changes under one heading.
     *
     * @param heading what they have in common
     * @param changes best first
     * @param none what to say where there are none
     * @param after what to say below them; empty for nothing
     */
    record Group(String heading, List<Advice> changes, String none, String after) {}

    /** What to do, and what is not enough where something was tried that is not. */
    List<Group> groups() {
        List<Advice> all = answer.fit().advice();
        List<Advice> enough = all.stream().filter(Advice::isEnough).toList();
        List<Advice> shortOf = all.stream().filter(advice -> !advice.isEnough()).toList();
        List<Group> groups = new ArrayList<>();
        groups.add(new Group(
                style.say(hasEvents() ? "heading.to-do.quiet" : "heading.to-do"),
                enough,
                none(),
                enough.isEmpty() ? "" : withEvents()));
        if (!shortOf.isEmpty()) {
            groups.add(new Group(style.say("heading.not-enough"), shortOf, "", enough.isEmpty() ? withEvents() : ""));
        }
        return groups;
    }

    /** True where anything was tried that is worth telling. */
    boolean any() {
        return !answer.fit().advice().isEmpty();
    }

    /** What the first change comes to with what happens besides the weather. */
    private String withEvents() {
        return answer.remedied()
                .map(after -> after.reasons().stream()
                        .findFirst()
                        .map(reason -> style.say(
                                "fit.first-with-events.reason",
                                "verdict",
                                style.verdict(after.verdict()),
                                "reason",
                                new ReasonWords(style, true).clause(reason)))
                        .orElseGet(() -> style.say("fit.first-with-events", "verdict", style.verdict(after.verdict()))))
                .orElse("");
    }

    private String none() {
        KnifeFit fit = answer.fit();
        if (any()) {
            return style.say("fit.none-enough");
        }
        if (fit.reasons().isEmpty()) {
            return style.say("fit.build-it");
        }
        if (fit.verdict() == Verdict.UNKNOWN) {
            return style.say("fit.measure-first");
        }
        return style.say(hasEvents() ? "fit.no-better.events" : "fit.no-better");
    }

    /** Knife, place and verdict in one line; where a change mends what is built, both. */
    String title() {
        KnifeFit fit = answer.fit();
        String knife = fit.knife().build().order().name().orElse(style.say("fit.unnamed"));
        String place = style.tell(fit.destination().name());
        String verdict = style.verdict(fit.verdict());
        return mends()
                ? style.say(
                        "fit.title.mended",
                        "knife",
                        knife,
                        "place",
                        place,
                        "verdict",
                        verdict,
                        "remedy",
                        said(fit.advice().get(0)))
                : style.say("fit.title", "knife", knife, "place", place, "verdict", verdict);
    }

    /** What mends it, as a sentence after another; empty where nothing does or nothing needs to. */
    String remedy() {
        return mends() ? " " + BenchStyle.capital(said(answer.fit().advice().get(0))) + "." : "";
    }

    private String said(Advice best) {
        return style.say(
                "fit.remedy",
                "change",
                new AdviceWords(style).with(best.change()),
                "verdict",
                style.verdict(best.verdict()));
    }

    private boolean mends() {
        KnifeFit fit = answer.fit();
        boolean adverse = fit.verdict() == Verdict.CHANGE || fit.verdict() == Verdict.REFUSE;
        return adverse && !hasEvents() && any() && fit.advice().get(0).isEnough();
    }

    private boolean hasEvents() {
        return answer.events().isPresent();
    }
}
