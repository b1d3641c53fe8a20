package hafthold.report;

import hafthold.decide.Season;
import hafthold.decide.SeasonAnswer;
import hafthold.decide.SeasonWeek;
import hafthold.quantity.Band;
import hafthold.simulate.BlankYear.Reading;
import java.util.ArrayList;
import java.util.List;

/**
 * What the stock holds today, and how that is known, in sentences for the bench.
 *
 * @param style language and units
 * @param season the plan
 * @param answer one material of it, which takes up water
 */
record SeasonStock(BenchStyle style, Season season, SeasonAnswer answer) {

    /** What was read or reckoned, whether that goes together, and what a point more or less makes. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add(answer.blank().reading().map(this::read).orElseGet(this::reckoned));
        if (season.stock().gluedDays() > 0) {
            sentences.add(glued());
        }
        String point = answer.blank().reading().isPresent() ? "season.point.read" : "season.point";
        new SeasonAllowance(style, season, answer)
                .perPoint()
                .map(metres -> style.say(point, "size", new BenchLength(Band.exact(metres)).text(style)))
                .ifPresent(sentences::add);
        return sentences;
    }

    private String read(Reading reading) {
        return style.say(
                reading.contradicts() ? "season.read.contradicts" : "season.read.agrees",
                "read",
                style.percent(reading.readFraction()),
                "settled",
                style.percent(reading.settledFraction()),
                "doubt",
                style.fixed(100 * reading.doubtFraction(), 1),
                "apart",
                style.fixed(100 * reading.apartFraction(), 1));
    }

    private String reckoned() {
        SeasonWeek week = answer.today();
        return style.say(
                "season.blank",
                "mean",
                style.percent(week.blank().meanFraction()),
                "surface",
                style.percent(week.blank().surfaceFraction()),
                "core",
                style.percent(week.blank().coreFraction()));
    }

    /** What it held at glue-up; of stock that was read beside what the workshop's year alone says of that day. */
    private String glued() {
        double glued = answer.blank().gluedFraction(answer.now());
        double ofYear = answer.blank()
                .reading()
                .map(reading -> glued + reading.settledFraction() - reading.readFraction())
                .orElse(glued);
        return style.say(
                answer.blank().reading().isPresent() ? "season.glued.read" : "season.glued",
                "span",
                style.counted("day", season.stock().gluedDays()),
                "glued",
                style.percent(glued),
                "year",
                style.percent(ofYear),
                "sanded",
                style.percent(answer.today().year().moisture().finish()));
    }
}
