package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.DayOfAir;
import hafthold.decide.Comparison.Ranked;
import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.util.List;
import java.util.Locale;

/** The sentence that reads each picture of a comparison. */
final class ChartReadings {
    private static final AnswerWords WORDS = new AnswerWords(LengthUnits.MM);
    private static final int DRAWN_LIMITS = 2;

    private ChartReadings() {}

    /** How many keep the seasonal limit, and what goes furthest. */
    static String ranking(Comparison comparison, List<FitLimits> limits) {
        List<Ranked> judged = ChosenAnswers.judged(comparison);
        if (judged.isEmpty()) {
            return "None of them can be judged.";
        }
        HandleYear furthest = judged.stream()
                .map(Ranked::year)
                .max((a, b) -> Double.compare(
                        EdgeStep.worst(a).size().value(),
                        EdgeStep.worst(b).size().value()))
                .orElseThrow();
        String far = AnswerWords.subjectOf(furthest) + " goes furthest: " + WORDS.step(furthest) + ".";
        if (limits.size() < DRAWN_LIMITS) {
            return far;
        }
        FitLimits seasonal = limits.get(limits.size() - DRAWN_LIMITS);
        long within = judged.stream()
                .map(answer -> answer.year().edge().bonded())
                .filter(step -> step.shy().value() <= seasonal.shy().metres()
                        && step.proud().value() <= seasonal.proud().metres())
                .count();
        return within + " of " + judged.size() + " keep their edges inside the limit for "
                + seasonal.name().replace('-', ' ') + " work all year. " + far;
    }

    /** Where the edge stands on average in the months of its extremes. */
    static String edge(HandleYear year) {
        MonthlyMeans months = MonthlyMeans.of(
                year.days().edgeOffset().stream().map(Band::value).toList());
        String lowest = side(year, months, months.lowestMonth());
        String highest = side(year, months, months.highestMonth());
        return lowest.equals("flush") && highest.equals("flush")
                ? AnswerWords.subjectOf(year) + " stays flush in every month."
                : AnswerWords.subjectOf(year) + " is on average " + lowest + " in " + MonthWord.of(months.lowestMonth())
                        + " and " + highest + " in " + MonthWord.of(months.highestMonth()) + ".";
    }

    private static String side(HandleYear year, MonthlyMeans months, int month) {
        EdgeStep worst = EdgeStep.worst(year);
        double share = worst.size().value() == 0
                ? 0
                : Math.abs(months.of(month)) / worst.size().value();
        BenchLength length = new BenchLength(worst.size().times(share));
        if (length.isZero()) {
            return "flush";
        }
        return length.text(LengthUnits.MM) + (months.of(month) < 0 ? " shy" : " proud");
    }

    static String moisture(HandleYear year) {
        MonthlyMeans months = MonthlyMeans.of(year.days().moisture());
        String swing = AnswerWords.subjectOf(year) + " was sanded at "
                + AnswerWords.percent(year.moisture().finish())
                + " % moisture; here it goes from " + AnswerWords.percent(months.of(months.lowestMonth())) + " % in "
                + MonthWord.of(months.lowestMonth()) + " to " + AnswerWords.percent(months.of(months.highestMonth()))
                + " % in " + MonthWord.of(months.highestMonth());
        if (year.moisture().highest() < year.moisture().finish()) {
            return swing + ": it never gets as wet again as it was.";
        }
        return swing + (year.moisture().lowest() > year.moisture().finish() ? ": it never dries back to it." : ".");
    }

    /** Driest and dampest month where the knife lives, against the workshop. */
    static String humidity(Comparison comparison) {
        String made = AnswerWords.plain(comparison.madeHumidity().percent());
        MonthlyMeans home = MonthlyMeans.of(
                ComparisonCharts.column(comparison.dailyIndoors(), day -> 100 * day.relativeHumidityFraction()));
        return String.format(
                Locale.ROOT,
                "Where the knife lives the air is driest in %s (%.0f %%) and dampest in %s (%.0f %%); the workshop had"
                        + " %s %%.",
                MonthWord.of(home.lowestMonth()),
                home.of(home.lowestMonth()),
                MonthWord.of(home.highestMonth()),
                home.of(home.highestMonth()),
                made);
    }

    /** Coldest and warmest month, outdoors and where the knife lives. */
    static String temperature(Comparison comparison) {
        MonthlyMeans out =
                MonthlyMeans.of(ComparisonCharts.column(comparison.dailyOutdoors(), DayOfAir::temperatureCelsius));
        MonthlyMeans home =
                MonthlyMeans.of(ComparisonCharts.column(comparison.dailyIndoors(), DayOfAir::temperatureCelsius));
        return String.format(
                        Locale.ROOT,
                        "Outdoors the months run from %.0f °C (%s) to %.0f °C (%s); where the knife lives from %.0f to"
                                + " %.0f °C.",
                        out.of(out.lowestMonth()),
                        MonthWord.of(out.lowestMonth()),
                        out.of(out.highestMonth()),
                        MonthWord.of(out.highestMonth()),
                        home.of(home.lowestMonth()),
                        home.of(home.highestMonth()))
                .replace("-", "\u2212");
    }
}
