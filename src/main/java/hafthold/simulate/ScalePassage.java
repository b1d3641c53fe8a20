package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.WorkState;
import hafthold.material.Hybrid;
import hafthold.quantity.Band;
import hafthold.simulate.EventWindow.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** All parts of a scale on their way through the years with events, under one speed of water. */
final class ScalePassage {
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
        return sections.map(handle ->
                GluedEdge.offsets(hourlyMotions(), handle, order.at(repeated()).warmer()));
    }

    /** Edge of the glued scale in the samples of every event. */
    Optional<double[]> offsetsAboutEvents() {
        List<Integer> all = all();
        return sections.map(handle -> GluedEdge.offsets(
                motionsAbout(all),
                handle,
                order.at(with(EventReading.samples(leadingCourse(), all))).warmer()));
    }

    /** Motions of all parts in every hour. */
    List<PartMotion> hourlyMotions() {
        return motions(course -> new MoistureCourse(course.mean(), course.moments()));
    }

    private List<PartMotion> motionsAbout(List<Integer> windows) {
        return motions(course -> {
            List<Sample> samples = EventReading.samples(course, windows);
            return new MoistureCourse(
                    samples.stream().mapToDouble(Sample::mean).toArray(),
                    samples.stream()
                            .mapToDouble(sample -> EventCourse.moment(sample.layers()))
                            .toArray());
        });
    }

    private List<PartMotion> motions(Function<EventCourse, MoistureCourse> moistureOf) {
        List<PartMotion> motions = new ArrayList<>();
        for (int p = 0; p < parts.size(); p++) {
            Hybrid.Part part = parts.get(p);
            motions.add(PartMotion.of(
                    new GrainLie(part.material(), part.cut()),
                    part.share().value(),
                    moisture.stockFraction(part.material(), made(), Doubt.NONE),
                    moistureOf.apply(courses.get(p)),
                    PinCrack.perStrain(part.material(), part.cut()).orElse(0.0),
                    Doubt.NONE));
        }
        return motions;
    }

    /** What it does in the samples of some windows. */
    Movement about(List<Integer> windows) {
        return movement(motionsAbout(windows), order.at(with(EventReading.samples(leadingCourse(), windows))));
    }

    /** What it does in every hour. */
    Movement hours() {
        return movement(hourlyMotions(), order.at(repeated()));
    }

    private Movement movement(List<PartMotion> motions, Conditions conditions) {
        return Movement.of(motions, sections, conditions, conditions.warmer());
    }

    /** Every window. */
    List<Integer> all() {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < leadingCourse().windows().size(); i++) {
            all.add(i);
        }
        return all;
    }

    /** Stress over strength about the events: what has lasted for weeks before each has eased, the event has not. */
    Optional<HandleYear.Load> load() {
        List<Integer> all = all();
        return sections.map(handle -> {
            List<PartMotion> hourly = hourlyMotions();
            double[][] whole = GluedEdge.changes(hourly, order.at(repeated()).warmer());
            double[][] eased = GluedLoad.relaxed(hourly, order.at(repeated()));
            List<PartMotion> motions = motionsAbout(all);
            List<Sample> samples = EventReading.samples(leadingCourse(), all);
            double[][] series =
                    GluedEdge.changes(motions, order.at(with(samples)).warmer());
            for (int d = 0; d < series.length; d++) {
                EasedBefore.takeOff(
                        series[d], whole[d], eased[d], leadingCourse().windows());
            }
            AirSeries tang = new AirSeries(
                    EventClock.HOUR,
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

    /** The destination with the scale's own temperature for air, sample by sample: what strain is worked out from. */
    private Destination with(List<Sample> samples) {
        return order.destination()
                .in(new AirSeries(
                        EventClock.HOUR,
                        samples.stream().mapToDouble(Sample::meanCelsius).toArray(),
                        samples.stream().mapToDouble(Sample::airHumidity).toArray()));
    }

    private Destination repeated() {
        return order.destination().in(EventTrace.repeated(order.destination().air(), years));
    }
}
