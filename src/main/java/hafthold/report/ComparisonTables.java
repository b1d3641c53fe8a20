package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Verdict;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import hafthold.source.Evidence;
import java.util.List;

/**
 * The tables of a page about a comparison.
 *
 * @param style language and units
 */
record ComparisonTables(BenchStyle style) {
    /** One row a material, best first. */
    void ranking(Markup page, Comparison comparison) {
        PageFrame.openTable(
                page,
                style.say("caption.ranking"),
                List.of(
                        "",
                        style.say("head.material"),
                        style.say("head.verdict"),
                        style.say("head.worst-step"),
                        style.say("head.moisture"),
                        style.say("head.pin-hole", "unit", style.unit()),
                        style.say("head.pin-heads", "unit", style.unit()),
                        style.say("heading.decides"),
                        style.say("head.rests-on")),
                comparison.ranked().size());
        for (Ranked answer : comparison.ranked()) {
            HandleYear year = answer.year();
            page.open("tr").element("td", Integer.toString(answer.rank()), "class", "n");
            page.element("th", new AnswerWords(style).nameOf(year), "scope", "row");
            page.open("td");
            stamp(page, style, answer.verdict());
            page.close("td");
            page.open("td", "class", "step");
            step(page, answer);
            page.close("td");
            page.element("td", new AnswerWords(style).moistureRange(year), "class", "held");
            page.element("td", PinWords.hole(style, year), "class", "held");
            page.element("td", PinWords.heads(style, year), "class", "held");
            page.element(
                    "td",
                    answer.reasons().stream()
                            .findFirst()
                            .map(new ReasonWords(style, false)::brief)
                            .orElse("–"),
                    "class",
                    "reason");
            page.element("td", restsOn(year)).close("tr");
        }
        PageFrame.closeTable(page);
    }

    /** Every movement of every material. */
    void movements(Markup page, Comparison comparison) {
        PageFrame.openTable(
                page,
                style.say("caption.moves", "unit", style.unit()),
                style.heads(
                        "material",
                        "edge-shy",
                        "edge-proud",
                        "end-short",
                        "end-long",
                        "hole-opens",
                        "hole-closes",
                        "heads-up",
                        "heads-sunk"),
                comparison.ranked().size());
        for (Ranked answer : comparison.ranked()) {
            HandleYear year = answer.year();
            page.open("tr").element("th", new AnswerWords(style).nameOf(year), "scope", "row");
            for (Band band : List.of(
                    year.edge().bonded().shy(),
                    year.edge().bonded().proud(),
                    year.ends().shortBy(),
                    year.ends().longBy(),
                    year.pins().gap(),
                    year.pins().squeeze(),
                    year.pins().headProud(),
                    year.pins().headSunk())) {
                page.element("td", new BenchLength(band).cell(style), "class", "held");
            }
            page.close("tr");
        }
        PageFrame.closeTable(page);
    }

    /** The verdict as a stamp. */
    static void stamp(Markup page, BenchStyle style, Verdict verdict) {
        page.element("span", style.verdict(verdict), "class", "stamp stamp-" + verdict.word());
    }

    /** The step in words, and below it the month and the range. */
    private void step(Markup page, Ranked answer) {
        HandleYear year = answer.year();
        EdgeStep worst = EdgeStep.worst(year);
        BenchLength length = worst.length();
        AnswerWords words = new AnswerWords(style);
        if (worst.isFlush()) {
            page.text(!answer.isMovementKnown() && length.isNothing() ? style.say("not-known") : words.step(year));
            return;
        }
        String range = length.range(style);
        String month = style.shortMonth(year.worstMonth());
        if (!answer.isMovementKnown()) {
            page.text(style.say("perhaps." + worst.side().word()))
                    .open("br")
                    .element("small", style.joined("comma", List.of(month, range)));
        } else {
            page.text(words.side(worst.side(), length.text(style)))
                    .open("br")
                    .element("small", range.isEmpty() ? month : style.joined("comma", List.of(month, range)));
        }
    }

    /** The grade, and the figure that it comes from where that is weaker than print. */
    private String restsOn(HandleYear year) {
        String grade = style.named("evidence", year.grounds().evidence().grade());
        String figure = new AnswerWords(style).restsOn(year);
        boolean isWeak = year.grounds().evidence().compareTo(Evidence.PUBLISHED) > 0 && !figure.isEmpty();
        return isWeak ? grade + ": " + figure : grade;
    }
}
