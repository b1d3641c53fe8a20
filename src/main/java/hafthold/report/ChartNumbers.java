package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.DayOfAir;
import hafthold.decide.Comparison.Ranked;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The numbers behind the pictures of a comparison.
 *
 * @param style language and units
 */
record ChartNumbers(BenchStyle style) {

    /** Edge steps of every material, low, value and high. */
    NumbersTable ranking(Comparison comparison) {
        List<List<String>> rows = new ArrayList<>();
        for (Ranked answer : comparison.ranked()) {
            HandleYear year = answer.year();
            rows.add(List.of(
                    new AnswerWords(style).nameOf(year),
                    band(year.edge().bonded().shy()),
                    band(year.edge().bonded().proud()),
                    band(year.edge().free().shy()),
                    band(year.edge().free().proud())));
        }
        return new NumbersTable(
                style.say("ranking.caption", "unit", style.unit()),
                style.heads("material", "shy", "proud", "unglued-shy", "unglued-proud"),
                rows);
    }

    /** Monthly means of the edge offset. */
    NumbersTable edgeYear(List<Ranked> drawn) {
        return months(
                style.say("edge-year.caption", "unit", style.unit()),
                style::thousandths,
                drawn,
                year -> year.days().edgeOffset().stream().map(Band::value).toList());
    }

    /** Monthly means of the moisture content, below the moisture at final sanding. */
    NumbersTable moistureYear(List<Ranked> drawn) {
        NumbersTable months = months(
                style.say("moisture-year.caption"),
                style::percent,
                drawn,
                year -> year.days().moisture());
        List<List<String>> rows = new ArrayList<>();
        List<String> made = new ArrayList<>(List.of(style.say("moisture-year.made")));
        drawn.forEach(answer -> made.add(style.percent(answer.year().moisture().finish())));
        rows.add(made);
        rows.addAll(months.rows());
        return new NumbersTable(months.caption(), months.head(), rows);
    }

    /** Monthly means of one column of the air. */
    NumbersTable air(Comparison comparison, ToDoubleFunction<DayOfAir> of, String unit) {
        MonthlyMeans home = MonthlyMeans.of(ComparisonCharts.column(comparison.dailyIndoors(), of));
        MonthlyMeans out = MonthlyMeans.of(ComparisonCharts.column(comparison.dailyOutdoors(), of));
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            rows.add(List.of(style.month(month), style.fixed(home.of(month), 1), style.fixed(out.of(month), 1)));
        }
        return new NumbersTable(
                style.say("air.caption", "unit", unit), style.heads("month", "indoors", "outdoors"), rows);
    }

    /** Value and range of a movement for a table of numbers. */
    String band(Band metres) {
        String value = style.thousandths(metres.value());
        String low = style.thousandths(metres.low());
        String high = style.thousandths(metres.high());
        return low.equals(high) ? value : style.say("range", "value", value, "low", low, "high", high);
    }

    private NumbersTable months(
            String caption,
            DoubleFunction<String> printed,
            List<Ranked> drawn,
            Function<HandleYear, List<Double>> daily) {
        List<String> head = new ArrayList<>(style.heads("month"));
        drawn.forEach(answer -> head.add(new AnswerWords(style).nameOf(answer.year())));
        List<MonthlyMeans> means = drawn.stream()
                .map(answer -> MonthlyMeans.of(daily.apply(answer.year())))
                .toList();
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            List<String> row = new ArrayList<>(List.of(style.month(month)));
            for (MonthlyMeans mean : means) {
                row.add(printed.apply(mean.of(month)));
            }
            rows.add(row);
        }
        return new NumbersTable(caption, head, rows);
    }
}
