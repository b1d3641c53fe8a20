package hafthold.report;

import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.report.chart.TravelChart;
import hafthold.report.chart.TravelRow;
import hafthold.simulate.HandleYear;
import hafthold.simulate.StaySpan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far the edge travels in each stay of a knife that moves from place to place.
 *
 * @param style language and units
 */
record StayCharts(BenchStyle style) {
    /** The picture of one answer; none where the knife goes to one place. */
    Optional<ReportChart> of(HandleYear year, List<FitLimits> limits) {
        if (year.stays().isEmpty()) {
            return Optional.empty();
        }
        StayWords words = new StayWords(style, false);
        StaySpan worst = StayWords.worst(year);
        String reading = style.say(
                "stays.reading",
                "name",
                new AnswerWords(style).nameOf(year),
                "date",
                worst.worstOn().toString(),
                "stay",
                words.nameOf(worst),
                "step",
                words.stepOf(worst.worstMetres()));
        TravelChart chart = new TravelChart(
                "stays",
                style.say("stays.title"),
                style.say("stays.description", "reading", reading),
                style.say("stays.unit", "unit", style.unit()),
                LimitLines.edge(style),
                "",
                rows(year),
                new LimitLines(style).ofEdges(limits),
                style);
        return Optional.of(
                ReportChart.of(chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), numbers(year)));
    }

    private List<TravelRow> rows(HandleYear year) {
        StayWords words = new StayWords(style, false);
        List<TravelRow> rows = new ArrayList<>();
        for (StaySpan span : year.stays()) {
            rows.add(new TravelRow(
                    rows.size() + 1,
                    words.nameOf(span),
                    words.until(span),
                    Band.exact(style.shown(Math.max(0, -span.lowestMetres()))),
                    Band.exact(style.shown(Math.max(0, span.highestMetres()))),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    true));
        }
        return rows;
    }

    private NumbersTable numbers(HandleYear year) {
        StayWords words = new StayWords(style, false);
        return new NumbersTable(
                style.say("stays.caption", "unit", style.unit()),
                style.heads("stay", "from", "until", "mc", "lowest", "highest", "worst-on"),
                year.stays().stream()
                        .map(span -> List.of(
                                words.nameOf(span),
                                span.from().toString(),
                                words.until(span),
                                words.moisture(span),
                                words.stepOf(span.lowestMetres()),
                                words.stepOf(span.highestMetres()),
                                span.worstOn().toString()))
                        .toList());
    }
}
