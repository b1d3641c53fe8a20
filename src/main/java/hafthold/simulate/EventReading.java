package hafthold.simulate;

import hafthold.air.Event;
import hafthold.air.EventPhase;
import hafthold.knife.Handle;
import hafthold.material.Axis;
import hafthold.material.Family;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.quantity.Band;
import hafthold.simulate.EventWindow.Sample;
import hafthold.source.Figure;
import hafthold.transport.CapillaryUptake;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What a course with events says of one event: the worst of all times it happens. */
final class EventReading {
    private static final double NEXT_TO_NOTHING = 2e-4;
    private static final double GONE = 0.1;
    /** A face this near to the stated temperature of a phase owes its own to it. */
    private static final double CLOSE_KELVIN = 5;
    /** Dry mass of a volume of cell wall without pores, kg/m3; Wood Handbook chapter 4, from memory. */
    private static final double CELL_WALL_DENSITY = 1500;

    private static final double WATER_DENSITY = 1000;
    private static final double SATURATED_WALL = 0.3;
    private static final double FEWEST_PORES = 0.1;

    private static final double LEAST_SHARE = 0.5;
    private static final double MOST_SHARE = 2;

    private EventReading() {}

    /** Numbers of the windows of an event. */
    static List<Integer> windowsOf(Event event, EventCourse course) {
        List<Integer> windows = new ArrayList<>();
        for (int i = 0; i < course.windows().size(); i++) {
            if (course.windows().get(i).event().id().equals(event.id())) {
                windows.add(i);
            }
        }
        if (windows.isEmpty()) {
            throw new OutsideModelsException(
                    "event " + event.id() + " is not over before the year ends; start it earlier");
        }
        return windows;
    }

    /** The samples of some windows. */
    static List<Sample> samples(EventCourse course, List<Integer> windows) {
        return EventWindow.samples(
                windows.stream().map(i -> course.windows().get(i)).toList());
    }

    /**
     * The answer.
     *
     * @param bySpeed courses by the speed of water in the scale, its value first
     */
    static EventAnswer answer(
            Event event,
            List<EventCourse> bySpeed,
            Band edgeShy,
            Band edgeProud,
            Optional<Band> pinCrackUse,
            Band endGrainMetres) {
        EventCourse course = bySpeed.get(0);
        List<Integer> windows = windowsOf(event, course);
        List<Sample> samples = samples(course, windows);
        return new EventAnswer(
                event,
                windows.size(),
                most(samples, Sample::face),
                -most(samples, sample -> -sample.face()),
                band(bySpeed, one -> change(one, windows, 1)),
                band(bySpeed, one -> change(one, windows, -1)),
                edgeShy,
                edgeProud,
                pinCrackUse,
                hottest(event, most(samples, Sample::faceCelsius)),
                -most(samples, sample -> -sample.faceCelsius()),
                // The last time may be cut off by the end of the year.
                windows.stream()
                        .limit(Math.max(1, windows.size() - 1))
                        .mapToDouble(i -> backHours(course, i))
                        .max()
                        .orElseThrow(),
                left(course, windows, Math.min(1, windows.size() - 1)),
                left(course, windows, windows.size() - 1),
                endGrainMetres);
    }

    private static double left(EventCourse course, List<Integer> windows, int which) {
        EventWindow window = course.windows().get(windows.get(which));
        return course.above(Math.floor(window.startSeconds() / EventClock.HOUR));
    }

    /** The temperature of an event is stated with a range; the face follows it. */
    private static Band hottest(Event event, double celsius) {
        Comparator<EventPhase> warmer = Comparator.comparing(
                        (EventPhase phase) -> phase.counted() == EventPhase.Counted.OWN)
                .thenComparingDouble(phase -> phase.temperature().value());
        boolean warmth = event.phases().stream()
                .anyMatch(phase -> phase.counted() == EventPhase.Counted.OWN
                        && phase.temperature().value() > celsius - CLOSE_KELVIN);
        EventPhase warmest = event.phases().stream()
                .filter(phase -> warmth || phase.counted() != EventPhase.Counted.OWN)
                .max(warmer)
                .orElse(event.phases().get(0));
        Band stated = warmest.temperature();
        return new Band(celsius - (stated.value() - stated.low()), celsius, celsius + (stated.high() - stated.value()));
    }

    static double most(List<Sample> samples, ToDoubleFunction<Sample> of) {
        return samples.stream().mapToDouble(of).max().orElseThrow();
    }

    /** Largest change of the mean from just before, in one direction, zero or more. */
    private static double change(EventCourse course, List<Integer> windows, int sign) {
        double largest = 0;
        for (int i : windows) {
            List<Sample> samples = course.windows().get(i).samples();
            double before = samples.get(0).mean();
            largest = Math.max(largest, most(samples, sample -> sign * (sample.mean() - before)));
        }
        return largest;
    }

    private static double backHours(EventCourse course, int index) {
        EventWindow window = course.windows().get(index);
        double before = course.above(Math.floor(window.startSeconds() / EventClock.HOUR));
        double peak = 0;
        for (Sample sample : window.samples()) {
            double change =
                    sample.mean() - course.normal()[(int) (window.hour(sample) % course.normal().length)] - before;
            peak = Math.abs(change) > Math.abs(peak) ? change : peak;
        }
        if (Math.abs(peak) < NEXT_TO_NOTHING) {
            return 0;
        }
        int from = (int) Math.ceil((window.startSeconds() + window.event().seconds()) / EventClock.HOUR);
        int until = index + 1 < course.windows().size()
                ? (int) (course.windows().get(index + 1).startSeconds() / EventClock.HOUR)
                : course.mean().length - 1;
        for (int hour = from; hour <= until; hour++) {
            if (Math.abs(course.above(hour) - before) <= GONE * Math.abs(peak)) {
                return hour - window.startSeconds() / EventClock.HOUR;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Water in the pores of the end grain: phases add as times, and it fills what the cell walls leave. */
    static Band endGrain(Event event, Material material, Handle handle, double madeCelsius) {
        Optional<Figure> known = material.sheet().figure(Property.WATER_ABSORPTION, Axis.ALONG);
        boolean open = material.family() == Family.WOOD && material.water().isPresent();
        if (known.isEmpty() || !open || !event.isWet()) {
            return Band.exact(0);
        }
        double density = material.water().orElseThrow().dryDensity().value();
        double pores =
                Math.max(FEWEST_PORES, 1 - density / CELL_WALL_DENSITY - SATURATED_WALL * density / WATER_DENSITY);
        Band figure = known.get().band();
        double half = handle.length().metres() / 2;
        return new Band(
                Math.min(half, depth(event, figure.low(), pores, madeCelsius)),
                Math.min(half, depth(event, figure.value(), pores, madeCelsius)),
                Math.min(half, depth(event, figure.high(), pores, madeCelsius)));
    }

    private static double depth(Event event, double coefficient, double pores, double madeCelsius) {
        CapillaryUptake uptake = new CapillaryUptake(coefficient);
        double squared = 0;
        for (EventPhase phase : event.phases()) {
            if (phase.around() instanceof EventPhase.Water) {
                double celsius = phase.counted() == EventPhase.Counted.OWN
                        ? phase.celsius().value()
                        : madeCelsius;
                squared += Math.pow(uptake.coefficient(celsius), 2) * phase.seconds();
            }
        }
        return Math.sqrt(squared) / WATER_DENSITY / pores;
    }

    /** Value of the first, low and high of all. */
    static <T> Band band(List<T> all, ToDoubleFunction<T> of) {
        double value = of.applyAsDouble(all.get(0));
        double low = all.stream().mapToDouble(of).min().orElseThrow();
        double high = all.stream().mapToDouble(of).max().orElseThrow();
        return new Band(low, value, high);
    }

    /**
     * The worse of a year and its events. An event is worked out under one doubt only, so where it is the worse, the year's
     * other doubts are taken over in proportion, from half to twice the value.
     */
    static Band worse(Band year, Band event) {
        if (event.value() <= year.value()) {
            return new Band(year.low(), year.value(), Math.max(year.high(), event.value()));
        }
        double low = year.value() > 0 ? Math.max(LEAST_SHARE, year.low() / year.value()) : LEAST_SHARE;
        double high = year.value() > 0 ? Math.min(MOST_SHARE, year.high() / year.value()) : MOST_SHARE;
        return new Band(
                Math.min(event.low(), low * event.value()),
                event.value(),
                Math.max(event.high(), high * event.value()));
    }

    /** Likewise, of uses of strength; not known where either is not. */
    static Optional<Band> worse(Optional<Band> year, Optional<Band> event) {
        return year.flatMap(use -> event.map(other -> worse(use, other)));
    }

    /** The larger of both, end by end. */
    static Band larger(Band one, Band other) {
        return new Band(
                Math.max(one.low(), other.low()),
                Math.max(one.value(), other.value()),
                Math.max(one.high(), other.high()));
    }
}
