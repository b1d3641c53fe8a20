package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.WorkState;
import hafthold.material.Hybrid;
import hafthold.quantity.Band;
import hafthold.simulate.EventWindow.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All parts of a scale on their way through the years with events, under one speed of water. */
final class ScalePassage {
    private static final double SECONDS_AN_HOUR = 3600;

    private final Conditions order;
    private final int years;
    private final LayerMoisture moisture;
    private final List<Hybrid.Part> parts;
    private final List<EventCourse> courses;
    private final Optional<GluedSections.Readings> sections;

    /**
     * Sends the parts through the years with events.
     *
     * @param order the handle and where it goes
     * @param years with events
     * @param moisture what the stock held when it was made
     * @param parts what the scale consists of
     * @param courses moisture of each part
     * @param sections of scale and glue; empty where it is not bonded
     */
    ScalePassage(
            Conditions order,
            int years,
            LayerMoisture moisture,
            List<Hybrid.Part> parts,
            List<EventCourse> courses,
            Optional<GluedSections.Readings> sections) {
        this.order = order;
        this.years = years;
        this.moisture = moisture;
        this.parts = parts;
        this.courses = courses;
        this.sections = sections;
    }

    List<EventCourse> courses() {
        return courses;
    }

    List<Hybrid.Part> parts() {
        return parts;
    }

    /** Moisture of the first part. */
    EventCourse leadingCourse() {
        return courses.get(0);
    }

    /** Edge of the glued scale in every hour; empty where it is not bonded. */
    Optional<double[]> hourlyOffsets() {
        return sections.map(handle -> GluedEdge.offsets(
                motions(List.of()), handle, order.at(repeated()).warmer()));
    }

    /** Edge of the glued scale in the samples of every event. */
    Optional<double[]> offsetsAboutEvents() {
        List<Integer> all = all();
        return sections.map(handle -> GluedEdge.offsets(
                motions(all),
                handle,
                order.at(with(samples(leadingCourse(), all))).warmer()));
    }

    /** Motions of all parts over the samples of some windows, then, where none is named, every hour. */
    List<PartMotion> motions(List<Integer> windows) {
        List<PartMotion> motions = new ArrayList<>();
        for (int p = 0; p < parts.size(); p++) {
            Hybrid.Part part = parts.get(p);
            EventCourse course = courses.get(p);
            List<Sample> samples = samples(course, windows);
            double[] values = windows.isEmpty()
                    ? course.mean()
                    : samples.stream().mapToDouble(Sample::mean).toArray();
            double[] moments = windows.isEmpty()
                    ? course.moments()
                    : samples.stream()
                            .mapToDouble(sample -> EventCourse.moment(sample.layers()))
                            .toArray();
            motions.add(PartMotion.of(
                    new GrainLie(part.material(), part.cut()),
                    part.share().value(),
                    moisture.stockFraction(part.material(), made(), Doubt.NONE),
                    new MoistureCourse(values, moments),
                    PinCrack.perStrain(part.material(), part.cut()).orElse(0.0),
                    Doubt.NONE));
        }
        return motions;
    }

    /** What it does in the samples of some windows. */
    Movement about(List<Integer> windows) {
        return movement(motions(windows), order.at(with(samples(courses.get(0), windows))));
    }

    /** What it does in every hour. */
    Movement hours() {
        return movement(motions(List.of()), order.at(repeated()));
    }

    private Movement movement(List<PartMotion> motions, Conditions conditions) {
        return Movement.of(motions, sections, conditions, conditions.warmer());
    }

    /** Every window. */
    List<Integer> all() {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < courses.get(0).windows().size(); i++) {
            all.add(i);
        }
        return all;
    }

    /** Stress over strength about the events: what has lasted for weeks before each has eased, the event has not. */
    Optional<HandleYear.Load> load() {
        List<Integer> all = all();
        return sections.map(handle -> {
            List<PartMotion> hourly = motions(List.of());
            double[][] whole = GluedEdge.changes(hourly, order.at(repeated()).warmer());
            double[][] eased = GluedLoad.relaxed(hourly, order.at(repeated()));
            List<PartMotion> motions = motions(all);
            List<Sample> samples = samples(courses.get(0), all);
            double[][] series =
                    GluedEdge.changes(motions, order.at(with(samples)).warmer());
            for (int d = 0; d < series.length; d++) {
                int at = 0;
                for (EventWindow window : courses.get(0).windows()) {
                    int hour = (int) (window.startSeconds() / SECONDS_AN_HOUR);
                    for (int i = 0; i < window.samples().size(); i++) {
                        series[d][at] -= whole[d][hour] - eased[d][hour];
                        at++;
                    }
                }
            }
            AirSeries tang = new AirSeries(
                    SECONDS_AN_HOUR,
                    samples.stream().mapToDouble(Sample::backCelsius).toArray(),
                    samples.stream().mapToDouble(Sample::airHumidity).toArray());
            GluedLoad load = GluedLoad.of(parts, motions, handle, order.bond().orElseThrow(), tang, series);
            return new HandleYear.Load(
                    Band.exact(load.glue()), load.split().map(Band::exact).flatMap(ScaleStrength.of(parts)::use));
        });
    }

    private WorkState made() {
        return new WorkState.SettledAir(order.madeHumidity(), order.madeTemperature());
    }

    static List<Sample> samples(EventCourse course, List<Integer> windows) {
        return EventWindow.samples(
                windows.stream().map(i -> course.windows().get(i)).toList());
    }

    /** The destination with the scale's own temperature for air, sample by sample: what strain is worked out from. */
    private Destination with(List<Sample> samples) {
        return order.destination()
                .in(new AirSeries(
                        SECONDS_AN_HOUR,
                        samples.stream().mapToDouble(Sample::meanCelsius).toArray(),
                        samples.stream().mapToDouble(Sample::airHumidity).toArray()));
    }

    private Destination repeated() {
        return order.destination().in(EventTrace.repeated(order.destination().air(), years));
    }
}
