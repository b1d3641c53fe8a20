package hafthold.report;

import hafthold.air.CommonYear;
import hafthold.decide.Season;
import hafthold.decide.SeasonAnswer;
import hafthold.decide.SeasonAnswer.CutChoice;
import hafthold.decide.SeasonWeek;
import hafthold.decide.Verdict;
import hafthold.quantity.Band;
import hafthold.simulate.BlankYear;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * The tables of a season as cells, for a text and for a page.
 *
 * @param style language and units
 * @param season the plan
 */
record SeasonTables(BenchStyle style, Season season) {
    private static final int HOURS_A_DAY = 24;

    /** Headings of the materials side by side. */
    List<String> overviewHead() {
        return List.of(
                style.say("head.material"),
                style.say("head.cut"),
                style.say("season.head.best"),
                style.say("season.head.holds"),
                style.say("season.head.sand"),
                style.say("season.head.edges-now"),
                style.say("season.head.leave"),
                style.say("season.head.glue"));
    }

    /** One row a material and cut. */
    List<List<String>> overview() {
        List<List<String>> rows = new ArrayList<>();
        for (SeasonAnswer answer : season.answers()) {
            SeasonWords words = new SeasonWords(style, season, answer);
            rows.add(List.of(
                    answer.scale().name(),
                    style.shortCut(answer.scale().cut()),
                    answer.anyWeek() ? style.say("season.cell.any") : words.spans(answer.best()),
                    holds(answer.bestWeek()),
                    call(answer),
                    edges(answer.today().year()),
                    leave(answer.today()),
                    new SeasonGlue(style, season, answer).brief()));
        }
        return rows;
    }

    /** What to do today in a word or two. */
    String call(SeasonAnswer answer) {
        return switch (answer.finish().call()) {
            case GO -> style.say("season.cell.go");
            case WAIT -> wait(answer);
            case CONDITION -> style.say("season.cell.condition");
            case CHANGE -> style.say("season.cell.change");
            case OPEN -> style.say("season.cell.open");
        };
    }

    private String wait(SeasonAnswer answer) {
        String days = style.counted("day", answer.finish().waitDays());
        return answer.soonerBox()
                .map(air -> style.say(
                        "season.cell.wait.box",
                        "box",
                        SettlingWords.span(style, air.blankDays().value()),
                        "days",
                        days))
                .orElseGet(() -> style.say("season.cell.wait", "days", days));
    }

    /** Headings of the year at the bench. */
    List<String> yearHead() {
        return List.of(
                style.say("season.head.week"),
                style.say("season.head.air"),
                style.say("season.head.mean"),
                style.say("season.head.surface"),
                style.say("season.head.edges"),
                style.say("season.head.free"),
                style.say("season.head.heads"),
                style.say("season.head.leave"),
                style.say("head.verdict"),
                style.say("season.head.holds"));
    }

    /** The week in the middle of each month, and that of today. */
    List<List<String>> months(SeasonAnswer answer) {
        List<Integer> weeks = new ArrayList<>();
        for (int month = 1; month <= CommonYear.MONTHS; month++) {
            weeks.add(BlankYear.weekOf(CommonYear.firstDay(month) + CommonYear.daysOfMonth(month) / 2));
        }
        return weeks.stream().map(week -> row(answer.weeks().get(week))).toList();
    }

    /** Every week. */
    List<List<String>> weeks(SeasonAnswer answer) {
        return answer.weeks().stream().map(this::row).toList();
    }

    private List<String> row(SeasonWeek week) {
        return List.of(
                style.dayOfHour(HOURS_A_DAY * week.blank().firstDay()),
                style.fixed(100 * week.blank().humidityFraction(), 0),
                style.percent(week.year().moisture().finish()),
                style.percent(week.blank().surfaceFraction()),
                edges(week.year()),
                edges(week.year().edge().free()),
                PinWords.heads(style, week.year()),
                leave(week),
                style.verdict(week.verdict()),
                holds(week));
    }

    /** Headings of the cuts. */
    List<String> cutsHead() {
        return List.of(
                style.say("head.cut"),
                style.say("season.head.edges"),
                style.say("season.head.heads"),
                style.say("season.head.ends"),
                style.say("season.head.length"),
                style.say("head.verdict"));
    }

    /** One row a cut, sanded today or in the best week. */
    List<List<String>> cuts(SeasonAnswer answer, boolean today) {
        List<List<String>> rows = new ArrayList<>();
        for (CutChoice cut : answer.cuts()) {
            rows.add(cut(cut, today ? cut.today() : cut.best(), today ? cut.todayVerdict() : cut.bestVerdict()));
        }
        return rows;
    }

    private List<String> cut(CutChoice cut, HandleYear year, Verdict verdict) {
        boolean isShort = year.ends().shortBy().value() >= year.ends().longBy().value();
        Band end = isShort ? year.ends().shortBy() : year.ends().longBy();
        return List.of(
                style.shortCut(cut.cut()),
                edges(year),
                PinWords.heads(style, year),
                new BenchLength(end).isZero()
                        ? style.say("flush")
                        : style.say(isShort ? "side.short" : "side.long", "size", style.hundredths(end.value())),
                style.hundredths(year.ends().lengthMismatch().value()),
                style.verdict(verdict));
    }

    /** Both ends of the glued edge's year, such as "0.31 shy, 0.02 proud". */
    String edges(HandleYear year) {
        return edges(year.edge().bonded());
    }

    private String edges(Step step) {
        List<String> sides = new ArrayList<>();
        if (!new BenchLength(step.shy()).isZero()) {
            sides.add(style.say("side.shy", "size", style.hundredths(step.shy().value())));
        }
        if (!new BenchLength(step.proud()).isZero()) {
            sides.add(style.say(
                    "side.proud", "size", style.hundredths(step.proud().value())));
        }
        return sides.isEmpty() ? style.say("flush") : style.joined("comma", sides);
    }

    private String leave(SeasonWeek week) {
        return style.signed(style.shown(week.allowance().proud().value()), style.isThou() ? 0 : 2);
    }

    private String holds(SeasonWeek week) {
        return week.keeps().isPresent()
                ? Long.toString(Math.round(100 * week.keeps().getAsDouble()))
                : "–";
    }
}
