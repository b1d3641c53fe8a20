package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.knife.FitLimits;
import hafthold.knife.FullTangBuild;
import hafthold.knife.Pin;
import hafthold.knife.SizeRange;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.report.chart.LimitMark;
import hafthold.report.chart.SectionDrawing;
import hafthold.report.chart.SectionPanel;
import hafthold.report.chart.TravelChart;
import hafthold.report.chart.TravelRow;
import hafthold.report.chart.YearChart;
import hafthold.report.chart.YearLine;
import hafthold.report.chart.ZeroLine;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.PinYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.simulate.SectionPose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;

/**
 * The pictures of one full-tang knife.
 *
 * @param limits classes of work, strictest first
 */
public record FullTangCharts(List<FitLimits> limits) {
    private static final ZeroLine PIN = new ZeroLine("touch", "tight", "gap");

    /** Keeps its own copy. */
    public FullTangCharts {
        limits = List.copyOf(limits);
    }

    /** All pictures in the order they are read; pins are left out where there are none. */
    public List<ReportChart> of(FullTangFit fit) {
        List<ReportChart> charts = new ArrayList<>(List.of(section(fit), edgeYear(fit)));
        if (!fit.year().pins().isEmpty()) {
            charts.add(pins(fit));
        }
        charts.add(stressYear(fit));
        stays(fit).ifPresent(charts::add);
        return charts;
    }

    /** The edge stay by stay; none where the knife goes to one place. */
    Optional<ReportChart> stays(FullTangFit fit) {
        return StayCharts.of(
                fit.whole(), LimitLines.from(limits, fit.knife().build().order().workClass()));
    }

    /** The widest section, dry and wet. */
    ReportChart section(FullTangFit fit) {
        FullTangBuild build = fit.knife().build();
        List<SideYear> sides = fit.year().sides();
        boolean twins = sides.size() == 1;
        SideYear left = sides.get(0);
        SideYear right = sides.get(sides.size() - 1);
        String reading = FullTangReadings.section(fit);
        String scale = "scale " + SizeRange.millimetres(build.scales().thickness());
        Length between = new Length(left.dryPose().betweenThickness());
        SectionDrawing drawing = new SectionDrawing(
                "section",
                "The handle cut across, dry and damp",
                "The widest section of the handle at both ends of its year. The dotted lines are where everything was"
                        + " level at final sanding, the dashed line where the edge would stand unglued. " + reading,
                List.of(
                        new SectionPanel(
                                heading("Lowest", left.dryPose(), right.dryPose()), left.dryPose(), right.dryPose()),
                        new SectionPanel(
                                heading("Highest", left.wetPose(), right.wetPose()), left.wetPose(), right.wetPose())),
                twins ? scale : "left: " + AdviceWords.cutWord(left.cut()),
                twins ? scale : "right: " + AdviceWords.cutWord(right.cut()),
                "tang " + SizeRange.millimetres(new Length(left.dryPose().tangThickness()))
                        + (build.liners().isEmpty() ? ", glue " : ", liners and glue ")
                        + SizeRange.millimetres(between));
        return ReportChart.of(
                drawing.id(), drawing.title(), reading, drawing::svg, drawing.fileSvg(), FullTangNumbers.section(fit));
    }

    private static String heading(String word, SectionPose left, SectionPose right) {
        String first = DayWord.ofHour(left.hour());
        String second = DayWord.ofHour(right.hour());
        return word + (first.equals(second) ? ", " + first : ": left " + first + ", right " + second);
    }

    /** The edge from glued to unglued through the year. */
    ReportChart edgeYear(FullTangFit fit) {
        FitYear year = fit.year();
        List<Band> glued = year.days().edge();
        List<Band> free = year.days().freeEdge();
        String reading = FullTangReadings.edge(year);
        YearChart chart = new YearChart(
                "edge-year",
                "The edge through the year",
                "Above the steel line the scale stands proud, below it lies shy. The shade runs from the glued edge half"
                        + " way up the scale to where the edge would stand unglued. " + reading,
                "mm a side, mean of the day",
                List.of(
                        new YearLine(
                                "glued, half way up",
                                millimetres(glued, free, (edge, loose) -> edge),
                                millimetres(glued, free, Math::min),
                                millimetres(glued, free, Math::max),
                                OptionalDouble.empty()),
                        YearLine.of("if it were not glued", millimetres(free, glued, (loose, edge) -> loose))),
                List.of(-0.02, 0.0, 0.02),
                LimitLines.ofEdges(
                        LimitLines.from(limits, fit.knife().build().order().workClass())),
                Optional.of(ZeroLine.EDGE),
                1);
        return ReportChart.of(
                chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), FullTangNumbers.edgeYear(year));
    }

    /** Gap and squeeze of every pin along and across the handle. */
    ReportChart pins(FullTangFit fit) {
        List<TravelRow> rows = new ArrayList<>();
        for (int i = 0; i < fit.year().pins().size(); i++) {
            Pin pin = fit.knife().build().pins().get(i);
            PinYear year = fit.year().pins().get(i);
            rows.add(row(i + 1, size(pin) + ", across", pin, year.squeezeAcross(), year.gapAcross()));
            rows.add(row(0, "along the handle", pin, year.squeezeAlong(), year.gapAlong()));
        }
        String reading = FullTangReadings.pins(fit);
        TravelChart chart = new TravelChart(
                "pins",
                "Pins in their holes",
                "Two bars a pin, across and along the handle. Bars to the left: the hole closes on the pin. To the"
                        + " right: a gap opens. " + reading,
                "mm of diameter, the year's worst",
                PIN,
                "as drilled",
                rows,
                LimitLines.of(
                        firstAndLast(LimitLines.from(
                                limits, fit.knife().build().order().workClass())),
                        FitLimits::gap,
                        1));
        return ReportChart.of(
                chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), FullTangNumbers.pins(fit));
    }

    /** Two at most, for more words than that do not fit over the rows. */
    private static List<FitLimits> firstAndLast(List<FitLimits> classes) {
        return classes.size() < 2 ? classes : List.of(classes.get(0), classes.get(classes.size() - 1));
    }

    private static TravelRow row(int rank, String label, Pin pin, Band squeeze, Band gap) {
        double room = pin.openClearance().millimetres();
        return new TravelRow(
                rank,
                label,
                "",
                squeeze.times(1000),
                gap.times(1000),
                OptionalDouble.empty(),
                room > 0 ? OptionalDouble.of(room) : OptionalDouble.empty(),
                true);
    }

    private static String size(Pin pin) {
        return SizeRange.millimetres(pin.diameter()) + " in " + SizeRange.millimetres(pin.hole())
                + switch (pin.fill()) {
                    case OPEN -> ", open";
                    case HARD_EPOXY -> ", hard";
                    case FLEXIBLE -> ", soft";
                };
    }

    /** Use of strength through the year. */
    ReportChart stressYear(FullTangFit fit) {
        List<YearLine> lines = StrengthUse.of(fit).stream()
                .map(use -> YearLine.of(
                        use.name(),
                        use.daily().stream().map(share -> 100 * share).toList()))
                .toList();
        String reading = FullTangReadings.stress(fit);
        YearChart chart = new YearChart(
                "stress-year",
                "How hard glue and wood are worked",
                "Use of strength through the year; at 100 % it gives way. " + reading,
                "% of what it bears, the day's highest",
                lines,
                List.of(0.0, 110.0),
                List.of(new LimitMark("100 %: gives way", 100)),
                Optional.empty(),
                1);
        return ReportChart.of(
                chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), FullTangNumbers.stressYear(fit));
    }

    private static List<Double> millimetres(List<Band> one, List<Band> other, ToDoubleBiFunction<Double, Double> of) {
        return IntStream.range(0, one.size())
                .mapToObj(day -> 1000
                        * of.applyAsDouble(one.get(day).value(), other.get(day).value()))
                .toList();
    }
}
