package hafthold.report;

import hafthold.air.CommonYear;
import hafthold.decide.DaySpan;
import hafthold.decide.Season;
import hafthold.decide.SeasonAnswer;
import hafthold.decide.SeasonWeek;
import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.report.chart.LimitMark;
import hafthold.report.chart.MarkedYearChart;
import hafthold.report.chart.YearChart;
import hafthold.report.chart.YearLine;
import hafthold.simulate.BlankYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The pictures of a season: the blank at the bench through the year, and what comes of each week of sanding.
 *
 * @param style language and units
 * @param season the plan
 * @param limits classes of work, strictest first
 * @param workClass the class that was asked for
 */
record SeasonCharts(BenchStyle style, Season season, List<FitLimits> limits, String workClass) {
    private static final double PERCENT = 100;

    /** What the blank holds through the year of the workshop. */
    ReportChart bench(SeasonAnswer answer, int number) {
        SeasonWords words = new SeasonWords(style, season, answer);
        List<LimitMark> target = answer.conditioning()
                .map(air -> List.of(new LimitMark(
                        style.say("season.chart.target", "moisture", style.percent(air.moistureFraction())),
                        PERCENT * air.moistureFraction())))
                .orElse(List.of());
        MonthlyMeans months = MonthlyMeans.of(answer.blank().dailyMean());
        String reading = style.say(
                "season.chart.bench.reading",
                "low",
                style.percent(months.of(months.lowestMonth())),
                "low-month",
                style.month(months.lowestMonth()),
                "high",
                style.percent(months.of(months.highestMonth())),
                "high-month",
                style.month(months.highestMonth()),
                "best",
                answer.anyWeek() ? style.say("season.chart.any") : words.spans(answer.best()));
        String ahead = season.stock().reading().isPresent() ? " " + style.say("season.year.note.read") : "";
        YearChart year = new YearChart(
                "season-bench-" + number,
                style.say("season.chart.bench.title", "material", words.material()),
                reading,
                style.say("season.chart.bench.unit"),
                List.of(
                        YearLine.of(
                                style.say("season.chart.mean"),
                                percent(answer.blank().dailyMean())),
                        YearLine.of(
                                style.say("season.chart.surface"),
                                percent(answer.blank().dailySurface()))),
                List.of(),
                target,
                Optional.empty(),
                1,
                style);
        return chart(answer, year, reading + ahead, benchNumbers(answer));
    }

    /** The year's worst at the customer's by the week of sanding. */
    ReportChart steps(SeasonAnswer answer, int number) {
        SeasonWords words = new SeasonWords(style, season, answer);
        SeasonTables tables = new SeasonTables(style, season);
        SeasonWeek best = answer.bestWeek();
        String reading = style.say(
                "season.chart.steps.reading",
                "best",
                answer.anyWeek() ? style.say("season.chart.any") : words.spans(answer.best()),
                "edges",
                tables.edges(best.year()),
                "worst",
                tables.edges(answer.worstWeek().year()),
                "unit",
                style.unit());
        YearChart year = new YearChart(
                "season-steps-" + number,
                style.say("season.chart.steps.title", "material", words.material()),
                reading,
                style.say("season.chart.steps.unit", "unit", style.unit()),
                List.of(
                        line(
                                style.say("season.chart.shy"),
                                answer,
                                week -> week.year().edge().bonded().shy(),
                                -1),
                        line(
                                style.say("season.chart.proud"),
                                answer,
                                week -> week.year().edge().bonded().proud(),
                                1)),
                List.of(style.shown(-0.02e-3), style.shown(0.02e-3)),
                new LimitLines(style).ofEdges(LimitLines.from(limits, workClass)),
                Optional.of(LimitLines.edge(style)),
                1,
                style);
        return chart(answer, year, reading, stepNumbers(answer));
    }

    private ReportChart chart(SeasonAnswer answer, YearChart year, String reading, NumbersTable numbers) {
        MarkedYearChart marked = new MarkedYearChart(
                year,
                answer.best().stream().flatMap(span -> pieces(span).stream()).toList(),
                style.say(answer.anyWeek() ? "season.chart.mark.any" : "season.chart.mark"),
                season.day() + 0.5,
                style.say("season.chart.today"));
        return ReportChart.of(year.id(), year.title(), reading, marked::svg, marked.fileSvg(), numbers);
    }

    /** A span over New Year in two pieces. */
    private static List<double[]> pieces(DaySpan span) {
        return span.firstDay() <= span.lastDay()
                ? List.of(new double[] {span.firstDay(), span.lastDay() + 1.0})
                : List.of(new double[] {span.firstDay(), CommonYear.DAYS}, new double[] {0, span.lastDay() + 1.0});
    }

    private YearLine line(String name, SeasonAnswer answer, Function<SeasonWeek, Band> of, int side) {
        ToDoubleFunction<Band> near = side < 0 ? Band::high : Band::low;
        ToDoubleFunction<Band> far = side < 0 ? Band::low : Band::high;
        return new YearLine(
                name,
                daily(answer, week -> side * of.apply(week).value()),
                daily(answer, week -> side * near.applyAsDouble(of.apply(week))),
                daily(answer, week -> side * far.applyAsDouble(of.apply(week))),
                OptionalDouble.empty());
    }

    /** Straight lines between the middles of the weeks. */
    private List<Double> daily(SeasonAnswer answer, ToDoubleFunction<SeasonWeek> of) {
        return IntStream.range(0, CommonYear.DAYS)
                .mapToObj(day -> {
                    double weeks = (double) day * BlankYear.WEEKS / CommonYear.DAYS - 0.5;
                    int before = Math.floorMod((int) Math.floor(weeks), BlankYear.WEEKS);
                    int after = (before + 1) % BlankYear.WEEKS;
                    double share = weeks - Math.floor(weeks);
                    return style.shown(
                            (1 - share) * of.applyAsDouble(answer.weeks().get(before))
                                    + share * of.applyAsDouble(answer.weeks().get(after)));
                })
                .toList();
    }

    private static List<Double> percent(List<Double> fractions) {
        return fractions.stream().map(fraction -> PERCENT * fraction).toList();
    }

    private NumbersTable benchNumbers(SeasonAnswer answer) {
        MonthlyMeans mean = MonthlyMeans.of(answer.blank().dailyMean());
        MonthlyMeans surface = MonthlyMeans.of(answer.blank().dailySurface());
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= CommonYear.MONTHS; month++) {
            rows.add(List.of(style.month(month), style.percent(mean.of(month)), style.percent(surface.of(month))));
        }
        return new NumbersTable(
                style.say(
                        "season.chart.bench.caption", "material", answer.scale().name()),
                List.of(style.say("head.month"), style.say("season.chart.mean"), style.say("season.chart.surface")),
                rows);
    }

    private NumbersTable stepNumbers(SeasonAnswer answer) {
        SeasonTables tables = new SeasonTables(style, season);
        return new NumbersTable(
                style.say("season.caption.year", "material", answer.scale().name(), "unit", style.unit()),
                tables.yearHead(),
                tables.weeks(answer));
    }
}
