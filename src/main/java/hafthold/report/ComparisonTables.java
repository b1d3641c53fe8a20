package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Verdict;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.util.List;

/** The tables of a page about a comparison. */
final class ComparisonTables {
    private final LengthUnits units;
    private final AnswerWords words;

    ComparisonTables(LengthUnits units) {
        this.units = units;
        this.words = new AnswerWords(units);
    }

    /** One row a material, best first. */
    void ranking(Markup page, Comparison comparison) {
        PageFrame.openTable(
                page,
                "Ranking, best first",
                List.of(
                        "",
                        "Material",
                        "Verdict",
                        "Worst edge step",
                        "Moisture, %",
                        "Pin hole, mm",
                        "Pin heads, mm",
                        "What decides",
                        "Rests on"),
                comparison.ranked().size());
        for (Ranked answer : comparison.ranked()) {
            HandleYear year = answer.year();
            page.open("tr").element("td", Integer.toString(answer.rank()), "class", "n");
            page.element("th", AnswerWords.nameOf(year), "scope", "row");
            page.open("td");
            stamp(page, answer.verdict());
            page.close("td");
            page.open("td", "class", "step");
            step(page, answer);
            page.close("td");
            page.element("td", AnswerWords.moistureRange(year), "class", "held");
            page.element("td", PinWords.hole(year), "class", "held");
            page.element("td", PinWords.heads(year), "class", "held");
            page.element(
                    "td",
                    answer.reasons().stream()
                            .findFirst()
                            .map(words::shortReason)
                            .orElse("–"),
                    "class",
                    "reason");
            page.element("td", year.grounds().restsOn().words()).close("tr");
        }
        PageFrame.closeTable(page);
    }

    /** Every movement of every material. */
    void movements(Markup page, Comparison comparison) {
        PageFrame.openTable(
                page,
                "What moves, mm, the year's worst",
                List.of(
                        "Material",
                        "Edge shy",
                        "Edge proud",
                        "Each end short",
                        "Each end long",
                        "Pin hole opens",
                        "Pin hole closes",
                        "Pin heads up",
                        "Pin heads sunk"),
                comparison.ranked().size());
        for (Ranked answer : comparison.ranked()) {
            HandleYear year = answer.year();
            page.open("tr").element("th", AnswerWords.nameOf(year), "scope", "row");
            for (Band band : List.of(
                    year.edge().bonded().shy(),
                    year.edge().bonded().proud(),
                    year.ends().shortBy(),
                    year.ends().longBy(),
                    year.pins().gap(),
                    year.pins().squeeze(),
                    year.pins().headProud(),
                    year.pins().headSunk())) {
                page.element("td", new BenchLength(band).cell(units), "class", "held");
            }
            page.close("tr");
        }
        PageFrame.closeTable(page);
    }

    /** The verdict as a stamp. */
    static void stamp(Markup page, Verdict verdict) {
        page.element("span", verdict.word(), "class", "stamp stamp-" + verdict.word());
    }

    /** The step in words, and below it the month and the range. */
    private void step(Markup page, Ranked answer) {
        HandleYear year = answer.year();
        EdgeStep worst = EdgeStep.worst(year);
        BenchLength length = worst.length();
        if (worst.isFlush()) {
            page.text(!answer.isMovementKnown() && length.isNothing() ? "not known" : words.step(year));
            return;
        }
        String side = worst.side().word();
        String range = length.range();
        String month = MonthWord.shortOf(year.worstMonth());
        if (!answer.isMovementKnown()) {
            page.text("perhaps " + side).open("br").element("small", month + ", " + range);
        } else {
            page.text(length.text(units) + " " + side)
                    .open("br")
                    .element("small", month + (range.isEmpty() ? "" : ", " + range));
        }
    }
}
