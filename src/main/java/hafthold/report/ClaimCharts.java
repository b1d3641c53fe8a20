package hafthold.report;

import hafthold.air.CommonYear;
import hafthold.decide.Claim;
import hafthold.knife.FitLimits;
import hafthold.knife.MeasuringPoint;
import hafthold.quantity.Band;
import hafthold.report.chart.MeasuredYearChart;
import hafthold.report.chart.MeasuredYearChart.Reading;
import hafthold.report.chart.YearChart;
import hafthold.report.chart.YearLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * The picture of a judged claim: what was measured against the course.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 */
record ClaimCharts(BenchStyle style, List<FitLimits> limits) {

    /** The edge through the year where the knife lives, as usual, and the readings of edges taken there. */
    ReportChart course(Claim claim) {
        List<Reading> readings = readings(claim);
        String reading = reading(claim, readings.isEmpty() ? "unmarked" : "marked");
        List<Double> inSight = new ArrayList<>(List.of(style.shown(-0.02e-3), style.shown(0.02e-3)));
        readings.forEach(one -> {
            inSight.add(one.value() - one.error());
            inSight.add(one.value() + one.error());
        });
        MeasuredYearChart chart = new MeasuredYearChart(
                new YearChart(
                        "claim-course",
                        style.say("claim.course.title"),
                        style.say("claim.course.description", "reading", reading),
                        style.say("claim.course.unit", "unit", style.unit()),
                        List.of(new YearLine(
                                style.say("claim.course.line"),
                                shown(claim, Band::value),
                                shown(claim, Band::low),
                                shown(claim, Band::high),
                                OptionalDouble.empty())),
                        inSight,
                        new LimitLines(style)
                                .ofEdges(LimitLines.from(
                                        limits, claim.knife().build().order().workClass())),
                        Optional.of(LimitLines.edge(style)),
                        1,
                        style),
                readings);
        return ReportChart.of(
                chart.year().id(), chart.year().title(), reading, chart::svg, chart.fileSvg(), numbers(claim));
    }

    private List<Reading> readings(Claim claim) {
        ClaimWords words = new ClaimWords(style, claim);
        return claim.history().measured().stream()
                .filter(step -> !claim.history().isAtBench(step) && step.point().isEdge())
                .map(step -> new Reading(
                        Math.min(CommonYear.DAYS, step.on().getDayOfYear()) - 0.5,
                        style.shown(step.step().metres()),
                        style.shown(step.error().metres()),
                        words.step(step)))
                .toList();
    }

    private String reading(Claim claim, String marks) {
        MonthlyMeans months =
                MonthlyMeans.of(claim.course().stream().map(Band::value).toList());
        ClaimWords words = new ClaimWords(style, claim);
        return style.say(
                "claim.course.reading." + marks,
                "low",
                words.step(MeasuringPoint.EDGES, months.of(months.lowestMonth())),
                "low-month",
                style.month(months.lowestMonth()),
                "high",
                words.step(MeasuringPoint.EDGES, months.of(months.highestMonth())),
                "high-month",
                style.month(months.highestMonth()));
    }

    private List<Double> shown(Claim claim, ToDoubleFunction<Band> of) {
        return claim.course().stream()
                .map(day -> style.shown(of.applyAsDouble(day)))
                .toList();
    }

    private NumbersTable numbers(Claim claim) {
        List<MonthlyMeans> columns = Stream.<ToDoubleFunction<Band>>of(Band::value, Band::low, Band::high)
                .map(of -> MonthlyMeans.of(
                        claim.course().stream().map(of::applyAsDouble).toList()))
                .toList();
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= CommonYear.MONTHS; month++) {
            List<String> row = new ArrayList<>(List.of(style.month(month)));
            for (MonthlyMeans column : columns) {
                row.add(style.thousandths(column.of(month)));
            }
            rows.add(row);
        }
        return new NumbersTable(
                style.say("claim.course.caption", "unit", style.unit()),
                style.heads("month", "expected", "low", "high"),
                rows);
    }
}
