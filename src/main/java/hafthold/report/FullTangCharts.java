package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.knife.FitLimits;
import hafthold.knife.FullTangBuild;
import hafthold.knife.Pin;
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
 * @param style language and units
 * @param limits classes of work, strictest first
 */
public record FullTangCharts(BenchStyle style, List<FitLimits> limits) {

    private static final double LEAST_REACH = 0.02e-3;

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
        return new StayCharts(style)
                .of(
                        fit.whole(),
                        LimitLines.from(limits, fit.knife().build().order().workClass()));
    }

    /** The widest section, dry and wet. */
    ReportChart section(FullTangFit fit) {
        FullTangBuild build = fit.knife().build();
        List<SideYear> sides = fit.year().sides();
        boolean twins = sides.size() == 1;
        SideYear left = sides.get(0);
        SideYear right = sides.get(sides.size() - 1);
        String reading = new FullTangReadings(style).section(fit);
        String scale =
                style.say("section.scale", "size", style.size(build.scales().thickness()));
        Length between = new Length(left.dryPose().betweenThickness());
        SectionDrawing drawing = new SectionDrawing(
                "section",
                style.say("section.title"),
                style.say("section.description", "reading", reading),
                List.of(
                        new SectionPanel(
                                heading("section.lowest", left.dryPose(), right.dryPose()),
                                left.dryPose(),
                                right.dryPose()),
                        new SectionPanel(
                                heading("section.highest", left.wetPose(), right.wetPose()),
                                left.wetPose(),
                                right.wetPose())),
                twins ? scale : style.say("section.left", "cut", style.cut(left.cut())),
                twins ? scale : style.say("section.right", "cut", style.cut(right.cut())),
                style.say(
                        build.liners().isEmpty() ? "section.between" : "section.between.liners",
                        "tang",
                        style.size(new Length(left.dryPose().tangThickness())),
                        "size",
                        style.size(between)),
                style);
        return ReportChart.of(
                drawing.id(),
                drawing.title(),
                reading,
                drawing::svg,
                drawing.fileSvg(),
                new FullTangNumbers(style).section(fit));
    }

    private String heading(String key, SectionPose left, SectionPose right) {
        String first = style.dayOfHour(left.hour());
        String second = style.dayOfHour(right.hour());
        return first.equals(second)
                ? style.say(key, "day", first)
                : style.say(key + ".sides", "left", first, "right", second);
    }

    /** The edge from glued to unglued through the year. */
    ReportChart edgeYear(FullTangFit fit) {
        FitYear year = fit.year();
        List<Band> glued = year.days().edge();
        List<Band> free = year.days().freeEdge();
        String reading = new FullTangReadings(style).edge(year);
        YearChart chart = new YearChart(
                "edge-year",
                style.say("edge-year.title"),
                style.say("fit-edge.description", "reading", reading),
                style.say("fit-edge.unit", "unit", style.unit()),
                List.of(
                        new YearLine(
                                style.say("fit-edge.glued"),
                                shown(glued, free, (edge, loose) -> edge),
                                shown(glued, free, Math::min),
                                shown(glued, free, Math::max),
                                OptionalDouble.empty()),
                        YearLine.of(style.say("fit-edge.free"), shown(free, glued, (loose, edge) -> loose))),
                inSight(),
                new LimitLines(style)
                        .ofEdges(LimitLines.from(
                                limits, fit.knife().build().order().workClass())),
                Optional.of(LimitLines.edge(style)),
                1,
                style);
        return ReportChart.of(
                chart.id(),
                chart.title(),
                reading,
                chart::svg,
                chart.fileSvg(),
                new FullTangNumbers(style).edgeYear(year));
    }

    /** Gap and squeeze of every pin along and across the handle. */
    ReportChart pins(FullTangFit fit) {
        List<TravelRow> rows = new ArrayList<>();
        for (int i = 0; i < fit.year().pins().size(); i++) {
            Pin pin = fit.knife().build().pins().get(i);
            PinYear year = fit.year().pins().get(i);
            rows.add(row(
                    i + 1,
                    style.say("pins.row.across", "pin", size(pin)),
                    pin,
                    year.squeezeAcross(),
                    year.gapAcross()));
            rows.add(row(0, style.say("pins.row.along"), pin, year.squeezeAlong(), year.gapAlong()));
        }
        String reading = new FullTangReadings(style).pins(fit);
        TravelChart chart = new TravelChart(
                "pins",
                style.say("pins.title"),
                style.say("pins.description", "reading", reading),
                style.say("pins.unit", "unit", style.unit()),
                new ZeroLine(style.say("zero.touch"), style.say("zero.tight"), style.say("zero.gap")),
                style.say("pins.drilled"),
                rows,
                new LimitLines(style)
                        .of(
                                firstAndLast(LimitLines.from(
                                        limits, fit.knife().build().order().workClass())),
                                FitLimits::gap,
                                1),
                style);
        return ReportChart.of(
                chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), new FullTangNumbers(style).pins(fit));
    }

    /** Two at most, for more words than that do not fit over the rows. */
    private static List<FitLimits> firstAndLast(List<FitLimits> classes) {
        return classes.size() < 2 ? classes : List.of(classes.get(0), classes.get(classes.size() - 1));
    }

    private TravelRow row(int rank, String label, Pin pin, Band squeeze, Band gap) {
        double room = style.shown(pin.openClearance().metres());
        return new TravelRow(
                rank,
                label,
                "",
                squeeze.times(style.shown(1)),
                gap.times(style.shown(1)),
                OptionalDouble.empty(),
                room > 0 ? OptionalDouble.of(room) : OptionalDouble.empty(),
                true);
    }

    private String size(Pin pin) {
        return style.say(
                "pins.row",
                "pin",
                style.size(pin.diameter()),
                "hole",
                style.size(pin.hole()),
                "fill",
                style.named("pins.row.fill", pin.fill().name()));
    }

    /** Hardly anything that moves fills the whole height. */
    private List<Double> inSight() {
        return List.of(style.shown(-LEAST_REACH), 0.0, style.shown(LEAST_REACH));
    }

    /** Use of strength through the year. */
    ReportChart stressYear(FullTangFit fit) {
        List<YearLine> lines = StrengthUse.of(fit, style).stream()
                .map(use -> YearLine.of(
                        use.name(),
                        use.daily().stream().map(share -> 100 * share).toList()))
                .toList();
        String reading = new FullTangReadings(style).stress(fit);
        YearChart chart = new YearChart(
                "stress-year",
                style.say("stress.title"),
                style.say("stress.description", "reading", reading),
                style.say("stress.unit"),
                lines,
                List.of(0.0, 110.0),
                List.of(new LimitMark(style.say("stress.limit"), 100)),
                Optional.empty(),
                1,
                style);
        return ReportChart.of(
                chart.id(),
                chart.title(),
                reading,
                chart::svg,
                chart.fileSvg(),
                new FullTangNumbers(style).stressYear(fit));
    }

    private List<Double> shown(List<Band> one, List<Band> other, ToDoubleBiFunction<Double, Double> of) {
        return IntStream.range(0, one.size())
                .mapToObj(day -> style.shown(
                        of.applyAsDouble(one.get(day).value(), other.get(day).value())))
                .toList();
    }
}
