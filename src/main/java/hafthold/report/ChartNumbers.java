package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.DayOfAir;
import hafthold.decide.Comparison.Ranked;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The numbers behind the pictures of a comparison. */
final class ChartNumbers {
    private ChartNumbers() {}

    /** Edge steps of every material, low, value and high. */
    static NumbersTable ranking(Comparison comparison) {
        List<List<String>> rows = new ArrayList<>();
        for (Ranked answer : comparison.ranked()) {
            HandleYear year = answer.year();
            rows.add(List.of(
                    AnswerWords.nameOf(year),
                    millimetres(year.edge().bonded().shy()),
                    millimetres(year.edge().bonded().proud()),
                    millimetres(year.edge().free().shy()),
                    millimetres(year.edge().free().proud())));
        }
        return new NumbersTable(
                "mm a side, the year's worst: value (low to high)",
                List.of("Material", "Shy", "Proud", "Unglued shy", "Unglued proud"),
                rows);
    }

    /** Monthly means of the edge offset. */
    static NumbersTable edgeYear(List<Ranked> drawn) {
        return months(
                "mm a side, means of the month; shy below zero, proud above",
                3,
                drawn,
                year -> year.days().edgeOffset().stream()
                        .map(day -> 1000 * day.value())
                        .toList());
    }

    /** Monthly means of the moisture content, below the moisture at final sanding. */
    static NumbersTable moistureYear(List<Ranked> drawn) {
        NumbersTable months = months(
                "% of dry weight, means of the month",
                1,
                drawn,
                year -> year.days().moisture().stream().map(day -> 100 * day).toList());
        List<List<String>> rows = new ArrayList<>();
        List<String> made = new ArrayList<>(List.of("At final sanding"));
        drawn.forEach(
                answer -> made.add(AnswerWords.percent(answer.year().moisture().finish())));
        rows.add(made);
        rows.addAll(months.rows());
        return new NumbersTable(months.caption(), months.head(), rows);
    }

    /** Monthly means of one column of the air. */
    static NumbersTable air(Comparison comparison, ToDoubleFunction<DayOfAir> of, String unit) {
        MonthlyMeans home = MonthlyMeans.of(ComparisonCharts.column(comparison.dailyIndoors(), of));
        MonthlyMeans out = MonthlyMeans.of(ComparisonCharts.column(comparison.dailyOutdoors(), of));
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            rows.add(List.of(MonthWord.of(month), fixed(home.of(month), 1), fixed(out.of(month), 1)));
        }
        return new NumbersTable(
                unit + ", means of the month", List.of("Month", "Where the knife lives", "Outdoors"), rows);
    }

    /** Value and range in millimetres with three decimals. */
    static String millimetres(Band metres) {
        String value = fixed(1000 * metres.value(), 3);
        String low = fixed(1000 * metres.low(), 3);
        String high = fixed(1000 * metres.high(), 3);
        return low.equals(high) ? value : value + " (" + low + " to " + high + ")";
    }

    /** A number with fixed decimals, a true minus sign and no negative zero. */
    static String fixed(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.toPlainString().replace('-', '\u2212');
    }

    private static NumbersTable months(
            String caption, int decimals, List<Ranked> drawn, Function<HandleYear, List<Double>> daily) {
        List<String> head = new ArrayList<>(List.of("Month"));
        drawn.forEach(answer -> head.add(AnswerWords.nameOf(answer.year())));
        List<MonthlyMeans> means = drawn.stream()
                .map(answer -> MonthlyMeans.of(daily.apply(answer.year())))
                .toList();
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            List<String> row = new ArrayList<>(List.of(MonthWord.of(month)));
            for (MonthlyMeans mean : means) {
                row.add(fixed(mean.of(month), decimals));
            }
            rows.add(row);
        }
        return new NumbersTable(caption, head, rows);
    }
}
