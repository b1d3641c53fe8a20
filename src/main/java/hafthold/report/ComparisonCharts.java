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
import hafthold.simulate.HandleYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The pictures of a comparison.
 *
 * @param style language and units
 * @param namedMaterial id of a material that is drawn in any case
 * @param limits classes of work, strictest first; the last two are drawn
 */
public record ComparisonCharts(BenchStyle style, Optional<String> namedMaterial, List<FitLimits> limits) {
    private static final int MOST_LINES = 5;
    private static final int MOST_ROWS = 36;
    private static final int DRAWN_LIMITS = 2;
    private static final int AIR_DAYS_TOGETHER = 5;

    private static final double LEAST_REACH = 0.02e-3;

    /** Keeps its own copy. */
    public ComparisonCharts {
        limits = List.copyOf(limits);
    }

    /** All pictures, in the order they are read; those without data are left out. */
    public List<ReportChart> of(Comparison comparison) {
        List<ReportChart> charts = new ArrayList<>();
        charts.add(ranking(comparison));
        new StayCharts(style)
                .of(
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
        List<TravelRow> rows = shown.stream().map(this::row).toList();
        TravelChart chart = new TravelChart(
                "ranking",
                style.say("ranking.title"),
                style.say("ranking.description", "reading", rankingReading(comparison)),
                style.say("ranking.unit", "unit", style.unit()),
                LimitLines.edge(style),
                style.say("unglued"),
                rows,
                limitMarks(),
                style);
        return ReportChart.of(
                chart.id(),
                chart.title(),
                rankingReading(comparison),
                chart::svg,
                chart.fileSvg(),
                new ChartNumbers(style).ranking(comparison));
    }

    /** Edge steps through the year. */
    ReportChart edgeYear(Comparison comparison) {
        List<Ranked> drawn = drawn(comparison);
        List<YearLine> lines = new ArrayList<>();
        for (Ranked answer : drawn) {
            List<Band> days = answer.year().days().edgeOffset();
            boolean first = lines.isEmpty();
            lines.add(new YearLine(
                    new AnswerWords(style).nameOf(answer.year()),
                    shown(days, Band::value),
                    first ? shown(days, Band::low) : List.of(),
                    first ? shown(days, Band::high) : List.of(),
                    OptionalDouble.empty()));
        }
        String reading = new ChartReadings(style).edge(drawn.get(0).year());
        YearChart chart = new YearChart(
                "edge-year",
                style.say("edge-year.title"),
                style.say("edge-year.description", "reading", reading),
                style.say("edge-year.unit", "unit", style.unit()),
                lines,
                List.of(style.shown(-LEAST_REACH), 0.0, style.shown(LEAST_REACH)),
                limitMarks(),
                Optional.of(LimitLines.edge(style)),
                1,
                style);
        return ReportChart.of(
                chart.id(),
                chart.title(),
                reading,
                chart::svg,
                chart.fileSvg(),
                new ChartNumbers(style).edgeYear(drawn));
    }

    /** Moisture content through the year. */
    ReportChart moistureYear(Comparison comparison) {
        List<Ranked> drawn = drawn(comparison);
        List<YearLine> lines = drawn.stream()
                .map(answer -> new YearLine(
                        new AnswerWords(style).nameOf(answer.year()),
                        answer.year().days().moisture().stream()
                                .map(fraction -> 100 * fraction)
                                .toList(),
                        List.of(),
                        List.of(),
                        OptionalDouble.of(100 * answer.year().moisture().finish())))
                .toList();
        String reading = new ChartReadings(style).moisture(drawn.get(0).year());
        YearChart chart = new YearChart(
                "moisture-year",
                style.say("moisture-year.title"),
                style.say("moisture-year.description", "reading", reading),
                style.say("moisture-year.unit"),
                lines,
                List.of(0.0, 10.0),
                List.of(),
                Optional.empty(),
                1,
                style);
        return ReportChart.of(
                chart.id(),
                chart.title(),
                reading,
                chart::svg,
                chart.fileSvg(),
                new ChartNumbers(style).moistureYear(drawn));
    }

    /** Humidity outdoors and where the knife lives. */
    ReportChart humidityYear(Comparison comparison) {
        ToDoubleFunction<DayOfAir> percent = day -> 100 * day.relativeHumidityFraction();
        String reading = new ChartReadings(style).humidity(comparison);
        YearChart chart = new YearChart(
                "humidity-year",
                style.say("humidity-year.title"),
                style.say("humidity-year.description", "reading", reading),
                style.say("humidity-year.unit"),
                airLines(comparison, percent),
                List.of(0.0, 100.0),
                List.of(new LimitMark(
                        style.say(
                                "humidity-year.workshop",
                                "humidity",
                                style.plain(comparison.madeHumidity().percent())),
                        comparison.madeHumidity().percent())),
                Optional.empty(),
                AIR_DAYS_TOGETHER,
                style);
        return ReportChart.of(
                chart.id(),
                chart.title(),
                reading,
                chart::svg,
                chart.fileSvg(),
                new ChartNumbers(style).air(comparison, percent, style.say("humidity-year.short-unit")));
    }

    /** Temperature outdoors and where the knife lives. */
    ReportChart temperatureYear(Comparison comparison) {
        ToDoubleFunction<DayOfAir> celsius = DayOfAir::temperatureCelsius;
        String reading = new ChartReadings(style).temperature(comparison);
        YearChart chart = new YearChart(
                "temperature-year",
                style.say("temperature-year.title"),
                style.say("temperature-year.description", "reading", reading),
                "°C",
                airLines(comparison, celsius),
                List.of(10.0, 30.0),
                List.of(),
                Optional.empty(),
                AIR_DAYS_TOGETHER,
                style);
        return ReportChart.of(
                chart.id(),
                chart.title(),
                reading,
                chart::svg,
                chart.fileSvg(),
                new ChartNumbers(style).air(comparison, celsius, "°C"));
    }

    private List<Ranked> drawn(Comparison comparison) {
        return ChosenAnswers.drawn(comparison, namedMaterial, MOST_LINES);
    }

    private TravelRow row(Ranked answer) {
        HandleYear year = answer.year();
        boolean bonded = EdgeStep.isBonded(year);
        return new TravelRow(
                answer.rank(),
                new AnswerWords(style).nameOf(year),
                style.verdict(answer.verdict()),
                year.edge().bonded().shy().times(style.shown(1)),
                year.edge().bonded().proud().times(style.shown(1)),
                free(bonded, year.edge().free().shy()),
                free(bonded, year.edge().free().proud()),
                answer.isMovementKnown());
    }

    private OptionalDouble free(boolean bonded, Band free) {
        return bonded && !new BenchLength(free).isZero()
                ? OptionalDouble.of(style.shown(free.value()))
                : OptionalDouble.empty();
    }

    private List<LimitMark> limitMarks() {
        return new LimitLines(style).ofEdges(limits.subList(Math.max(0, limits.size() - DRAWN_LIMITS), limits.size()));
    }

    private String rankingReading(Comparison comparison) {
        int all = comparison.ranked().size();
        String reading = new ChartReadings(style).ranking(comparison, limits);
        return all > MOST_ROWS
                ? reading + " "
                        + style.say(
                                "ranking.sample",
                                "count",
                                Integer.toString(ChosenAnswers.sample(comparison, namedMaterial, MOST_ROWS)
                                        .size()),
                                "all",
                                Integer.toString(all))
                : reading;
    }

    private List<Double> shown(List<Band> days, ToDoubleFunction<Band> of) {
        return days.stream().map(day -> style.shown(of.applyAsDouble(day))).toList();
    }

    private List<YearLine> airLines(Comparison comparison, ToDoubleFunction<DayOfAir> of) {
        return List.of(
                YearLine.of(style.say("air.indoors"), column(comparison.dailyIndoors(), of)),
                YearLine.of(style.say("air.outdoors"), column(comparison.dailyOutdoors(), of)));
    }

    static List<Double> column(List<DayOfAir> days, ToDoubleFunction<DayOfAir> of) {
        return days.stream().map(of::applyAsDouble).toList();
    }
}
