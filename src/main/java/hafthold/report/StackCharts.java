package hafthold.report;

import hafthold.decide.StackFit;
import hafthold.knife.FitLimits;
import hafthold.knife.SizeRange;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.report.chart.TravelChart;
import hafthold.report.chart.TravelRow;
import hafthold.report.chart.YearChart;
import hafthold.report.chart.YearLine;
import hafthold.report.chart.ZeroLine;
import hafthold.simulate.StackYear;
import hafthold.simulate.StackYear.PartYear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The pictures of one stack on a tang.
 *
 * @param limits classes of work, strictest first
 */
public record StackCharts(List<FitLimits> limits) {
    private static final ZeroLine PART = new ZeroLine("as made", "shrinks", "grows");
    private static final ZeroLine STACK = new ZeroLine("steel", "short: loose", "long: presses");

    /** Keeps its own copy. */
    public StackCharts {
        limits = List.copyOf(limits);
    }

    /** All pictures in the order they are read. */
    public List<ReportChart> of(StackFit fit) {
        return List.of(parts(fit.year()), year(fit));
    }

    /** What each part contributes. */
    ReportChart parts(StackYear year) {
        List<TravelRow> rows = new ArrayList<>();
        for (int i = 0; i < year.parts().size(); i++) {
            PartYear part = year.parts().get(i);
            rows.add(new TravelRow(
                    i + 1,
                    SizeRange.millimetres(new Length(part.length())) + " " + part.name(),
                    "",
                    part.shrinks().times(1000),
                    part.grows().times(1000),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    true));
        }
        String reading = partsReading(year);
        TravelChart chart = new TravelChart(
                "stack-parts",
                "What each part contributes",
                "One row a part, from the guard to the nut. Bars to the left: shorter than the steel along it. To the"
                        + " right: longer. " + reading,
                "mm along the tang against the steel, the year's most",
                PART,
                "",
                rows,
                List.of());
        return ReportChart.of(
                chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), StackNumbers.parts(year));
    }

    private static String partsReading(StackYear year) {
        PartYear most = year.parts().stream()
                .max(Comparator.comparingDouble(
                        part -> Math.max(part.shrinks().value(), part.grows().value())))
                .orElseThrow();
        BenchLength shrinks = new BenchLength(most.shrinks());
        BenchLength grows = new BenchLength(most.grows());
        if (shrinks.isZero() && grows.isZero()) {
            return "No part moves far enough to speak of.";
        }
        String name = most.name().substring(0, 1).toUpperCase(Locale.ROOT)
                + most.name().substring(1);
        return name + " moves most: it shrinks by " + shrinks.hundredths(LengthUnits.MM) + " and grows by "
                + grows.hundredths(LengthUnits.MM) + " in the year.";
    }

    /** Length of the parts against the steel through the year, and the room that opens. */
    ReportChart year(StackFit fit) {
        StackYear year = fit.year();
        String reading = yearReading(year);
        YearChart chart = new YearChart(
                "stack-year",
                "The stack through the year",
                "Above the steel line the parts want to be longer than the steel between guard and nut and press; below"
                        + " it they are shorter. The shade is how far that may be off. " + reading,
                "mm between guard and nut",
                List.of(
                        YearLine.of("room that opens", millimetres(year.dailyGap(), -1)),
                        new YearLine(
                                "all parts against the steel, if nothing presses",
                                millimetres(
                                        year.dailyLength().stream()
                                                .map(Band::value)
                                                .toList(),
                                        1),
                                millimetres(
                                        year.dailyLength().stream()
                                                .map(Band::low)
                                                .toList(),
                                        1),
                                millimetres(
                                        year.dailyLength().stream()
                                                .map(Band::high)
                                                .toList(),
                                        1),
                                OptionalDouble.empty())),
                List.of(-0.05, 0.05),
                LimitLines.of(
                        LimitLines.from(limits, fit.knife().build().order().workClass()), FitLimits::gap, -1),
                Optional.of(STACK),
                1);
        return ReportChart.of(chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), StackNumbers.year(year));
    }

    private static String yearReading(StackYear year) {
        BenchLength gap = new BenchLength(year.gap());
        BenchLength growth = new BenchLength(year.growth());
        String loose = gap.isZero()
                ? "The stack stays tight all year"
                : "The stack is loosest in " + MonthWord.of(year.gapMonth()) + ", by " + gap.hundredths(LengthUnits.MM);
        return loose
                + (growth.isZero()
                        ? "."
                        : "; in the damp its parts want to be " + growth.hundredths(LengthUnits.MM)
                                + " longer than the steel.");
    }

    private static List<Double> millimetres(List<Double> metres, int sign) {
        return metres.stream().map(length -> sign * 1000 * length + 0.0).toList();
    }
}
