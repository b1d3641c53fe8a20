package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.EventPhase;
import hafthold.air.EventSchedule;
import hafthold.simulate.EventWindow.Sample;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.TransientMoisture;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Leads a scale through years with events.
 *
 * <p>It starts from the year that repeats without any. Between events it is the isothermal slab of that year, from one
 * event on heat and water are solved together until the knife has been out of it for an hour.
 */
final class EventRun {
    private static final int FINE_LAYERS = EventProfiles.FINE_LAYERS;

    private final AirSeries air;
    private final AirSeries outdoors;
    private final EventSchedule schedule;
    private final EventClock clock;

    /**
     * A run.
     *
     * @param stepSeconds time between samples about an event; longer in phases of days
     */
    EventRun(AirSeries air, AirSeries outdoors, EventSchedule schedule, double stepSeconds) {
        this.air = air;
        this.outdoors = outdoors;
        this.schedule = schedule;
        this.clock = new EventClock(stepSeconds);
    }

    /** What takes up no water takes the temperature of its surroundings at once: the worst that can happen to it. */
    EventCourse dry() {
        double[] none = new double[air.size()];
        double[] noYears = new double[air.size() * schedule.years()];
        double[][] noLayers = new double[LayerMoisture.LAYERS][];
        Arrays.fill(noLayers, noYears);
        List<EventWindow> windows = new ArrayList<>();
        for (EventSchedule.Start start : schedule.starts()) {
            EventAir events = new EventAir(air, outdoors, start.startSeconds());
            List<Sample> samples = new ArrayList<>();
            samples.add(still(0, events.roomCelsius(), events.roomHumidity()));
            double since = 0;
            for (EventPhase phase : start.event().phases()) {
                EventAir.Course course = events.next(phase);
                for (double time : clock.times(phase.seconds())) {
                    double share = time / phase.seconds();
                    samples.add(still(since + time, course.celsius(share), course.humidity(share)));
                }
                since += phase.seconds();
            }
            double end = start.startSeconds() + since;
            double rest = EventClock.afterwards(end) * EventClock.HOUR - end;
            for (double time : clock.times(rest)) {
                samples.add(still(since + time, EventAir.at(air, end + time), EventAir.humidityAt(air, end + time)));
            }
            windows.add(new EventWindow(start.event(), start.startSeconds(), samples));
        }
        return new EventCourse(none, noYears, noYears, noYears, noLayers, windows);
    }

    /** A scale that takes up water. */
    EventCourse of(EventScale scale) {
        return new Passage(scale).through();
    }

    private static Sample still(double seconds, double celsius, double humidity) {
        return new Sample(
                seconds, celsius, humidity, celsius, celsius, celsius, 0, 0, 0, new double[LayerMoisture.LAYERS]);
    }

    /** One scale on its way. */
    private final class Passage {
        private final EventScale scale;
        private final EventProfiles profiles;
        private final MoistureHistory normal;
        private final EventHours hours;
        private final List<EventWindow> windows = new ArrayList<>();
        private int hour;
        private double[] now;
        private double faceNow;
        private boolean disturbed;

        Passage(EventScale scale) {
            this.scale = scale;
            profiles = new EventProfiles(scale);
            normal = PeriodicMoisture.of(scale.slab(), air, FINE_LAYERS).history();
            hours = new EventHours(normal.size() * schedule.years());
        }

        EventCourse through() {
            for (EventSchedule.Start start : schedule.starts()) {
                rest((int) Math.floor(start.startSeconds() / EventClock.HOUR));
                pass(start);
            }
            rest(hours.size());
            double[] quiet = new double[normal.size()];
            Arrays.setAll(quiet, normal::meanFraction);
            return new EventCourse(quiet, hours.mean, hours.face, hours.back, hours.layers, windows);
        }

        /** On to an hour without events; {@code hour} and {@code now} stand there afterwards. */
        private void rest(int until) {
            int last = Math.min(until, hours.size());
            if (!disturbed) {
                for (int h = hour; h < last; h++) {
                    hours.take(h, normal, h % normal.size());
                }
                start(normal, last % normal.size());
            } else if (last > hour) {
                MoistureHistory history =
                        TransientMoisture.from(scale.slab(), now, EventAir.slice(air, hour, last), FINE_LAYERS);
                for (int h = hour; h < last; h++) {
                    hours.take(h, history, h - hour);
                }
                start(history, last - hour);
            }
            hour = last;
        }

        private void start(MoistureHistory history, int sample) {
            now = new double[FINE_LAYERS];
            Arrays.setAll(now, k -> history.layerFraction(k, sample));
            faceNow = history.surfaceFraction(sample);
        }

        private void pass(EventSchedule.Start start) {
            disturbed = true;
            int first = hour;
            EventPass pass = new EventPass(
                    scale,
                    clock,
                    air,
                    outdoors,
                    start.startSeconds(),
                    profiles.profile(now, faceNow, EventAir.at(air, first * EventClock.HOUR)));
            EventWindow window = pass.through(start.event());
            windows.add(window);
            int next =
                    EventClock.afterwards(start.startSeconds() + start.event().seconds());
            hours.take(first, next, start.startSeconds(), window.samples());
            now = profiles.layers(pass.profile(), FINE_LAYERS);
            faceNow = scale.scale().surfaceFraction(pass.profile());
            hour = Math.min(next, hours.size());
        }
    }

    /** The air of an hourly year is what events are counted in. */
    static Optional<String> unfit(AirSeries air) {
        return Math.abs(air.stepSeconds() - EventClock.HOUR) < 1e-6
                ? Optional.empty()
                : Optional.of("events need air hour by hour, got a step of " + air.stepSeconds() + " s");
    }
}
