package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.DayOfAir;
import hafthold.decide.Comparison.Ranked;
import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.util.List;
import java.util.Optional;

/**
 * The sentence that reads each picture of a comparison.
 *
 * @param style language and units
 */
record ChartReadings(BenchStyle style) {
    private static final int DRAWN_LIMITS = 2;

    /** How many keep the seasonal limit, and what goes furthest. */
    String ranking(Comparison comparison, List<FitLimits> limits) {
        List<Ranked> judged = ChosenAnswers.judged(comparison);
        if (judged.isEmpty()) {
            return style.say("ranking.none");
        }
        HandleYear furthest = judged.stream()
                .map(Ranked::year)
                .max((a, b) -> Double.compare(
                        EdgeStep.worst(a).size().value(),
                        EdgeStep.worst(b).size().value()))
                .orElseThrow();
        AnswerWords words = new AnswerWords(style);
        String far = style.say("ranking.furthest", "subject", words.subjectOf(furthest), "step", words.step(furthest));
        if (limits.size() < DRAWN_LIMITS) {
            return far;
        }
        FitLimits seasonal = limits.get(limits.size() - DRAWN_LIMITS);
        long within = judged.stream()
                .map(Ranked::year)
                .filter(year ->
                        year.edge().bonded().shy().value() <= seasonal.shy().metres()
                                && year.edge().bonded().proud().value()
                                        <= seasonal.proud().metres())
                .count();
        return style.say(
                        "ranking.within",
                        "count",
                        Long.toString(within),
                        "all",
                        Integer.toString(judged.size()),
                        "work",
                        style.work(seasonal))
                + " " + far;
    }

    /** Where the edge stands on average in the months of its extremes. */
    String edge(HandleYear year) {
        MonthlyMeans months = MonthlyMeans.of(
                year.days().edgeOffset().stream().map(Band::value).toList());
        Optional<String> lowest = step(year, months, months.lowestMonth());
        Optional<String> highest = step(year, months, months.highestMonth());
        String subject = new AnswerWords(style).subjectOf(year);
        return lowest.isEmpty() && highest.isEmpty()
                ? style.say("edge-year.flush", "subject", subject)
                : style.say(
                        "edge-year.reading",
                        "subject",
                        subject,
                        "lowest",
                        lowest.orElse(style.say("flush")),
                        "low-month",
                        style.month(months.lowestMonth()),
                        "highest",
                        highest.orElse(style.say("flush")),
                        "high-month",
                        style.month(months.highestMonth()));
    }

    /** The mean step of a month with as many digits as the year's worst deserves; empty where it prints as none. */
    private Optional<String> step(HandleYear year, MonthlyMeans months, int month) {
        EdgeStep worst = EdgeStep.worst(year);
        double share = worst.size().value() == 0
                ? 0
                : Math.abs(months.of(month)) / worst.size().value();
        BenchLength length = new BenchLength(worst.size().times(share));
        EdgeStep.Side side = months.of(month) < 0 ? EdgeStep.Side.SHY : EdgeStep.Side.PROUD;
        return length.isZero() ? Optional.empty() : Optional.of(new AnswerWords(style).side(side, length.text(style)));
    }

    String moisture(HandleYear year) {
        MonthlyMeans months = MonthlyMeans.of(year.days().moisture());
        boolean drier = year.moisture().highest() < year.moisture().finish();
        boolean wetter = year.moisture().lowest() > year.moisture().finish();
        return style.say(
                drier ? "moisture-year.drier" : wetter ? "moisture-year.wetter" : "moisture-year.reading",
                "subject",
                new AnswerWords(style).subjectOf(year),
                "made",
                style.percent(year.moisture().finish()),
                "lowest",
                style.percent(months.of(months.lowestMonth())),
                "low-month",
                style.month(months.lowestMonth()),
                "highest",
                style.percent(months.of(months.highestMonth())),
                "high-month",
                style.month(months.highestMonth()));
    }

    /** Driest and dampest month where the knife lives, against the workshop. */
    String humidity(Comparison comparison) {
        MonthlyMeans home = MonthlyMeans.of(
                ComparisonCharts.column(comparison.dailyIndoors(), day -> 100 * day.relativeHumidityFraction()));
        return style.say(
                "humidity-year.reading",
                "driest",
                style.month(home.lowestMonth()),
                "low",
                style.fixed(home.of(home.lowestMonth()), 0),
                "dampest",
                style.month(home.highestMonth()),
                "high",
                style.fixed(home.of(home.highestMonth()), 0),
                "made",
                style.plain(comparison.madeHumidity().percent()));
    }

    /** Coldest and warmest month, outdoors and where the knife lives. */
    String temperature(Comparison comparison) {
        MonthlyMeans out =
                MonthlyMeans.of(ComparisonCharts.column(comparison.dailyOutdoors(), DayOfAir::temperatureCelsius));
        MonthlyMeans home =
                MonthlyMeans.of(ComparisonCharts.column(comparison.dailyIndoors(), DayOfAir::temperatureCelsius));
        return style.say(
                "temperature-year.reading",
                "coldest",
                style.fixed(out.of(out.lowestMonth()), 0),
                "cold-month",
                style.month(out.lowestMonth()),
                "warmest",
                style.fixed(out.of(out.highestMonth()), 0),
                "warm-month",
                style.month(out.highestMonth()),
                "home-coldest",
                style.fixed(home.of(home.lowestMonth()), 0),
                "home-warmest",
                style.fixed(home.of(home.highestMonth()), 0));
    }
}
