package hafthold.report;

import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.report.chart.TravelChart;
import hafthold.report.chart.TravelRow;
import hafthold.report.chart.ZeroLine;
import hafthold.simulate.HandleYear;
import hafthold.simulate.StaySpan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How far the edge travels in each stay of a knife that moves from place to place. */
final class StayCharts {
    private StayCharts() {}

    /** The picture of one answer; none where the knife goes to one place. */
    static Optional<ReportChart> of(HandleYear year, List<FitLimits> limits) {
        if (year.stays().isEmpty()) {
            return Optional.empty();
        }
        StaySpan worst = StayWords.worst(year);
        String reading = AnswerWords.nameOf(year) + " is furthest from flush on " + worst.worstOn() + ", "
                + StayWords.nameOf(worst) + ": " + StayWords.edgeOf(worst.worstMetres()) + ".";
        TravelChart chart = new TravelChart(
                "stays",
                "Stay by stay at the edge, with the day each ends",
                "One row a stay, in their order. Bars to the left of the steel line: scale shy. To the"
                        + " right: scale proud. " + reading,
                "mm a side, means of days, at the value",
                ZeroLine.EDGE,
                "",
                rows(year),
                LimitLines.ofEdges(limits));
        return Optional.of(
                ReportChart.of(chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), numbers(year)));
    }

    private static List<TravelRow> rows(HandleYear year) {
        List<TravelRow> rows = new ArrayList<>();
        for (StaySpan span : year.stays()) {
            rows.add(new TravelRow(
                    rows.size() + 1,
                    StayWords.nameOf(span),
                    StayWords.until(span),
                    Band.exact(1000 * Math.max(0, -span.lowestMetres())),
                    Band.exact(1000 * Math.max(0, span.highestMetres())),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    true));
        }
        return rows;
    }

    private static NumbersTable numbers(HandleYear year) {
        return new NumbersTable(
                "moisture content in %, edge in mm a side",
                List.of("Stay", "From", "Until", "MC", "Lowest", "Highest", "Worst on"),
                year.stays().stream()
                        .map(span -> List.of(
                                StayWords.nameOf(span),
                                span.from().toString(),
                                StayWords.until(span),
                                StayWords.moisture(span),
                                StayWords.edgeOf(span.lowestMetres()),
                                StayWords.edgeOf(span.highestMetres()),
                                span.worstOn().toString()))
                        .toList());
    }
}
