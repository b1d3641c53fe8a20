package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.DayOfAir;
import hafthold.decide.Comparison.Ranked;
import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.report.chart.LimitMark;
import hafthold.report.chart.TravelChart;
import hafthold.report.chart.TravelRow;
import hafthold.report.chart.YearChart;
import hafthold.report.chart.YearLine;
import hafthold.report.chart.ZeroLine;
import hafthold.simulate.HandleYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The pictures of a comparison.
 *
 * @param namedMaterial id of a material that is drawn in any case
 * @param limits classes of work, strictest first; the last two are drawn
 */
public record ComparisonCharts(Optional<String> namedMaterial, List<FitLimits> limits) {
    private static final int MOST_LINES = 5;
    private static final int MOST_ROWS = 36;
    private static final int DRAWN_LIMITS = 2;
    private static final int AIR_DAYS_TOGETHER = 5;

    /** Keeps its own copy. */
    public ComparisonCharts {
        limits = List.copyOf(limits);
    }

    /** All pictures, in the order they are read; those without data are left out. */
    public List<ReportChart> of(Comparison comparison) {
        List<ReportChart> charts = new ArrayList<>();
        charts.add(ranking(comparison));
        StayCharts.of(
                        drawn(comparison).get(0).year(),
                        limits.subList(Math.max(0, limits.size() - DRAWN_LIMITS), limits.size()))
                .ifPresent(charts::add);
        if (drawn(comparison).stream()
                .noneMatch(answer -> answer.year().days().edgeOffset().isEmpty())) {
            charts.add(edgeYear(comparison));
        }
        if (drawn(comparison).stream()
                .noneMatch(answer -> answer.year().days().moisture().isEmpty())) {
            charts.add(moistureYear(comparison));
        }
        if (!comparison.dailyOutdoors().isEmpty() && !comparison.dailyIndoors().isEmpty()) {
            charts.add(humidityYear(comparison));
            charts.add(temperatureYear(comparison));
        }
        return charts;
    }

    /** The year's worst edge step of every material. */
    ReportChart ranking(Comparison comparison) {
        List<Ranked> shown = ChosenAnswers.sample(comparison, namedMaterial, MOST_ROWS);
        List<TravelRow> rows = shown.stream().map(ComparisonCharts::row).toList();
        TravelChart chart = new TravelChart(
                "ranking",
                "How far each material travels at the edge",
                "One row a material, best first. Bars to the left of the steel line: scale shy. To the right: scale"
                        + " proud. " + rankingReading(comparison),
                "mm a side, the year's worst",
                ZeroLine.EDGE,
                "unglued",
                rows,
                limitMarks());
        return ReportChart.of(
                chart.id(),
                chart.title(),
                rankingReading(comparison),
                chart::svg,
                chart.fileSvg(),
                ChartNumbers.ranking(comparison));
    }

    /** Edge steps through the year. */
    ReportChart edgeYear(Comparison comparison) {
        List<Ranked> drawn = drawn(comparison);
        List<YearLine> lines = new ArrayList<>();
        for (Ranked answer : drawn) {
            List<Band> days = answer.year().days().edgeOffset();
            boolean first = lines.isEmpty();
            lines.add(new YearLine(
                    AnswerWords.nameOf(answer.year()),
                    millimetres(days, Band::value),
                    first ? millimetres(days, Band::low) : List.of(),
                    first ? millimetres(days, Band::high) : List.of(),
                    OptionalDouble.empty()));
        }
        String reading = ChartReadings.edge(drawn.get(0).year());
        YearChart chart = new YearChart(
                "edge-year",
                "The edge through the year",
                "Lines through the year; above the steel line the scale stands proud, below it lies shy. The shade"
                        + " about the first line is how far it may be off. " + reading,
                "mm a side",
                lines,
                List.of(-0.02, 0.0, 0.02),
                limitMarks(),
                Optional.of(ZeroLine.EDGE),
                1);
        return ReportChart.of(
                chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), ChartNumbers.edgeYear(drawn));
    }

    /** Moisture content through the year. */
    ReportChart moistureYear(Comparison comparison) {
        List<Ranked> drawn = drawn(comparison);
        List<YearLine> lines = drawn.stream()
                .map(answer -> new YearLine(
                        AnswerWords.nameOf(answer.year()),
                        answer.year().days().moisture().stream()
                                .map(fraction -> 100 * fraction)
                                .toList(),
                        List.of(),
                        List.of(),
                        OptionalDouble.of(100 * answer.year().moisture().finish())))
                .toList();
        String reading = ChartReadings.moisture(drawn.get(0).year());
        YearChart chart = new YearChart(
                "moisture-year",
                "How wet the scales are",
                "Moisture content through the year; the marks ahead of January are the moisture at final sanding. "
                        + reading,
                "% of dry weight",
                lines,
                List.of(0.0, 10.0),
                List.of(),
                Optional.empty(),
                1);
        return ReportChart.of(
                chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), ChartNumbers.moistureYear(drawn));
    }

    /** Humidity outdoors and where the knife lives. */
    ReportChart humidityYear(Comparison comparison) {
        ToDoubleFunction<DayOfAir> percent = day -> 100 * day.relativeHumidityFraction();
        String made = AnswerWords.plain(comparison.madeHumidity().percent());
        String reading = ChartReadings.humidity(comparison);
        YearChart chart = new YearChart(
                "humidity-year",
                "How damp the air is",
                "Relative humidity through the year. " + reading,
                "% relative humidity",
                airLines(comparison, percent),
                List.of(0.0, 100.0),
                List.of(new LimitMark(
                        "workshop " + made + " %", comparison.madeHumidity().percent())),
                Optional.empty(),
                AIR_DAYS_TOGETHER);
        return ReportChart.of(
                chart.id(),
                chart.title(),
                reading,
                chart::svg,
                chart.fileSvg(),
                ChartNumbers.air(comparison, percent, "% humidity"));
    }

    /** Temperature outdoors and where the knife lives. */
    ReportChart temperatureYear(Comparison comparison) {
        ToDoubleFunction<DayOfAir> celsius = DayOfAir::temperatureCelsius;
        String reading = ChartReadings.temperature(comparison);
        YearChart chart = new YearChart(
                "temperature-year",
                "How warm the air is",
                "Temperature through the year. " + reading,
                "°C",
                airLines(comparison, celsius),
                List.of(10.0, 30.0),
                List.of(),
                Optional.empty(),
                AIR_DAYS_TOGETHER);
        return ReportChart.of(
                chart.id(),
                chart.title(),
                reading,
                chart::svg,
                chart.fileSvg(),
                ChartNumbers.air(comparison, celsius, "°C"));
    }

    private List<Ranked> drawn(Comparison comparison) {
        return ChosenAnswers.drawn(comparison, namedMaterial, MOST_LINES);
    }

    private static TravelRow row(Ranked answer) {
        HandleYear year = answer.year();
        boolean bonded = EdgeStep.isBonded(year);
        return new TravelRow(
                answer.rank(),
                AnswerWords.nameOf(year),
                answer.verdict().word(),
                year.edge().bonded().shy().times(1000),
                year.edge().bonded().proud().times(1000),
                free(bonded, year.edge().free().shy()),
                free(bonded, year.edge().free().proud()),
                answer.isMovementKnown());
    }

    private static OptionalDouble free(boolean bonded, Band free) {
        return bonded && !new BenchLength(free).isZero()
                ? OptionalDouble.of(1000 * free.value())
                : OptionalDouble.empty();
    }

    private List<LimitMark> limitMarks() {
        return LimitLines.ofEdges(limits.subList(Math.max(0, limits.size() - DRAWN_LIMITS), limits.size()));
    }

    private String rankingReading(Comparison comparison) {
        int all = comparison.ranked().size();
        String sample = all > MOST_ROWS
                ? " Drawn: "
                        + ChosenAnswers.sample(comparison, namedMaterial, MOST_ROWS)
                                .size() + " of " + all + ", evenly down the ranking."
                : "";
        return ChartReadings.ranking(comparison, limits) + sample;
    }

    private static List<Double> millimetres(List<Band> days, ToDoubleFunction<Band> of) {
        return days.stream().map(day -> 1000 * of.applyAsDouble(day)).toList();
    }

    private static List<YearLine> airLines(Comparison comparison, ToDoubleFunction<DayOfAir> of) {
        return List.of(
                YearLine.of("where the knife lives", column(comparison.dailyIndoors(), of)),
                YearLine.of("outdoors", column(comparison.dailyOutdoors(), of)));
    }

    static List<Double> column(List<DayOfAir> days, ToDoubleFunction<DayOfAir> of) {
        return days.stream().map(of::applyAsDouble).toList();
    }
}
