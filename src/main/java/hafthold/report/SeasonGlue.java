package hafthold.report;

import hafthold.air.CommonYear;
import hafthold.decide.Season;
import hafthold.decide.SeasonAnswer;
import hafthold.decide.SeasonAnswer.Call;
import hafthold.decide.SeasonAnswer.Hindrance;
import hafthold.decide.SeasonWeek;
import hafthold.simulate.BlankYear;
import hafthold.simulate.BlankYear.Week;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether to glue up today, in sentences for the bench.
 *
 * @param style language and units
 * @param season the plan
 * @param answer one material of it
 */
record SeasonGlue(BenchStyle style, Season season, SeasonAnswer answer) {
    private static final int HOURS_A_DAY = 24;

    /** What to do, why, and who knows better. */
    List<String> sentences() {
        String day = style.dayOfHour(HOURS_A_DAY * season.day());
        List<String> sentences = new ArrayList<>();
        if (answer.glue().isGo()) {
            sentences.add(style.say(isBuildFit() ? "season.glue.go" : "season.glue.stock", "day", day));
            answer.conditioning()
                    .ifPresent(air -> sentences.add(style.say(
                            "season.glue.near",
                            "difference",
                            points(gradient()),
                            "off",
                            points(Math.abs(today().meanFraction() - air.moistureFraction())),
                            "target",
                            style.percent(air.moistureFraction()))));
        } else {
            sentences.add(style.say("season.glue.not", "day", day, "why", style.joined("semicolon", hindrances())));
            sentences.add(until());
        }
        if (season.stock().gluedDays() > 0) {
            sentences.addAll(sandedLater());
        }
        sentences.add(style.say("season.glue.maker"));
        return sentences;
    }

    /** What comes of gluing it today and sanding it when its days are over. */
    private List<String> sandedLater() {
        SeasonWords words = new SeasonWords(style, season, answer);
        int day = (season.day() + season.stock().gluedDays()) % CommonYear.DAYS;
        SeasonWeek then = answer.weeks().get(BlankYear.weekOf(day));
        List<String> sentences = new ArrayList<>();
        sentences.add(style.say(
                "season.glue.later",
                "day",
                style.dayOfHour(HOURS_A_DAY * day),
                "moisture",
                style.percent(then.year().moisture().finish()),
                "edges",
                words.edges(then)));
        sentences.addAll(words.holds(then));
        if (answer.glue().isGo() && !then.holds()) {
            answer.conditioning()
                    .ifPresent(air -> sentences.add(style.say("season.glue.later.not", "air", words.air(air))));
        }
        return sentences;
    }

    private String until() {
        int wait = answer.glue().waitDays();
        boolean onlyAir = answer.glue().hindrances().stream()
                .allMatch(why -> why == Hindrance.TOO_COOL || why == Hindrance.TOO_WARM);
        if (wait > 0) {
            return style.say(
                    onlyAir ? "season.glue.until.air" : "season.glue.until",
                    "span",
                    style.counted("day", wait),
                    "until",
                    style.dayOfHour(HOURS_A_DAY * ((season.day() + wait) % 365)));
        }
        return style.say(onlyAir ? "season.glue.never.air" : "season.glue.never");
    }

    private List<String> hindrances() {
        return answer.glue().hindrances().stream().map(this::hindrance).toList();
    }

    private String hindrance(Hindrance why) {
        return switch (why) {
            case GRADIENT ->
                style.say(
                        today().surfaceFraction() > today().coreFraction()
                                ? "season.hindrance.surface-damper"
                                : "season.hindrance.surface-drier",
                        "points",
                        over(gradient(), season.limits().glueGradientFraction()),
                        "limit",
                        points(season.limits().glueGradientFraction()));
            case TOO_DAMP, TOO_DRY ->
                answer.conditioning()
                        .map(air -> style.say(
                                why == Hindrance.TOO_DAMP ? "season.hindrance.too-damp" : "season.hindrance.too-dry",
                                "mean",
                                style.percent(today().meanFraction()),
                                "target",
                                style.percent(air.moistureFraction()),
                                "limit",
                                points(season.limits().glueOffTargetFraction())))
                        .orElseThrow();
            case TOO_COOL ->
                style.say(
                        "season.hindrance.too-cool",
                        "celsius",
                        style.fixed(today().celsius(), 0),
                        "limit",
                        style.plain(season.limits().glueCoolestCelsius()));
            case TOO_WARM ->
                style.say(
                        "season.hindrance.too-warm",
                        "celsius",
                        style.fixed(today().celsius(), 0),
                        "limit",
                        style.plain(season.limits().glueWarmestCelsius()));
        };
    }

    /** Hindrances in a word each, for a table; what to do where there are none. */
    String brief() {
        return answer.glue().isGo()
                ? style.say(isBuildFit() ? "season.cell.go" : "season.cell.stock")
                : answer.glue().waitDays() > 0
                        ? style.say(
                                "season.cell.wait",
                                "days",
                                style.counted("day", answer.glue().waitDays()))
                        : style.say("season.cell.condition");
    }

    private boolean isBuildFit() {
        return answer.finish().call() != Call.CHANGE;
    }

    private double gradient() {
        return Math.abs(today().surfaceFraction() - today().coreFraction());
    }

    private Week today() {
        return answer.today().blank();
    }

    /** Points beyond a limit, with as many digits as tell that they are. */
    private String over(double fraction, double limit) {
        String rounded = points(fraction);
        return rounded.equals(points(limit)) ? style.fixed(100 * fraction, 2) : rounded;
    }

    private String points(double fraction) {
        return style.fixed(100 * fraction, 1);
    }
}
