package hafthold.report;

import hafthold.decide.StackFit;
import hafthold.knife.FitLimits;
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
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The pictures of one stack on a tang.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 */
public record StackCharts(BenchStyle style, List<FitLimits> limits) {
    private static final double LEAST_REACH = 0.05e-3;

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
                    style.size(new Length(part.length())) + " " + part.name(),
                    "",
                    part.shrinks().times(style.shown(1)),
                    part.grows().times(style.shown(1)),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    true));
        }
        String reading = partsReading(year);
        TravelChart chart = new TravelChart(
                "stack-parts",
                style.say("parts.title"),
                style.say("parts.description", "reading", reading),
                style.say("parts.unit", "unit", style.unit()),
                new ZeroLine(style.say("zero.made"), style.say("zero.shrinks"), style.say("zero.grows")),
                "",
                rows,
                List.of(),
                style);
        return ReportChart.of(
                chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), new StackNumbers(style).parts(year));
    }

    private String partsReading(StackYear year) {
        PartYear most = year.parts().stream()
                .max(Comparator.comparingDouble(
                        part -> Math.max(part.shrinks().value(), part.grows().value())))
                .orElseThrow();
        BenchLength shrinks = new BenchLength(most.shrinks());
        BenchLength grows = new BenchLength(most.grows());
        if (shrinks.isZero() && grows.isZero()) {
            return style.say("parts.none");
        }
        return style.say(
                "parts.reading",
                "name",
                BenchStyle.capital(most.name()),
                "shrinks",
                shrinks.hundredths(style),
                "grows",
                grows.hundredths(style));
    }

    /** Length of the parts against the steel through the year, and the room that opens. */
    ReportChart year(StackFit fit) {
        StackYear year = fit.year();
        String reading = yearReading(year);
        YearChart chart = new YearChart(
                "stack-year",
                style.say("stack-year.title"),
                style.say("stack-year.description", "reading", reading),
                style.say("stack-year.unit", "unit", style.unit()),
                List.of(
                        YearLine.of(style.say("stack-year.room"), shown(year.dailyGap(), -1)),
                        new YearLine(
                                style.say("stack-year.parts"),
                                shown(
                                        year.dailyLength().stream()
                                                .map(Band::value)
                                                .toList(),
                                        1),
                                shown(year.dailyLength().stream().map(Band::low).toList(), 1),
                                shown(
                                        year.dailyLength().stream()
                                                .map(Band::high)
                                                .toList(),
                                        1),
                                OptionalDouble.empty())),
                List.of(style.shown(-LEAST_REACH), style.shown(LEAST_REACH)),
                new LimitLines(style)
                        .of(LimitLines.from(limits, fit.knife().build().order().workClass()), FitLimits::gap, -1),
                Optional.of(new ZeroLine(style.say("zero.steel"), style.say("zero.loose"), style.say("zero.presses"))),
                1,
                style);
        return ReportChart.of(
                chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), new StackNumbers(style).year(year));
    }

    private String yearReading(StackYear year) {
        BenchLength gap = new BenchLength(year.gap());
        BenchLength growth = new BenchLength(year.growth());
        List<String> parts = new ArrayList<>();
        parts.add(
                gap.isZero()
                        ? style.say("stack-year.tight")
                        : style.say(
                                "stack-year.loosest",
                                "month",
                                style.month(year.gapMonth()),
                                "size",
                                gap.hundredths(style)));
        if (!growth.isZero()) {
            parts.add(style.say("stack-year.longer", "size", growth.hundredths(style)));
        }
        return style.say("sentence", "text", style.joined("semicolon", parts));
    }

    private List<Double> shown(List<Double> metres, int sign) {
        return metres.stream().map(length -> sign * style.shown(length) + 0.0).toList();
    }
}
