package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.Event;
import hafthold.air.EventPhase;
import hafthold.air.EventSchedule;
import hafthold.numeric.GradedGrid;
import hafthold.simulate.EventWindow.Sample;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.TransientMoisture;
import hafthold.transport.coupled.CoupledHistory;
import hafthold.transport.coupled.CoupledProfile;
import hafthold.transport.coupled.Face;
import hafthold.transport.coupled.Surroundings;
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
    private static final double HOUR = 3600;
    /** Layers that hand a profile over from one solver to the other; a multiple of those that strain is worked out in. */
    private static final int FINE_LAYERS = 5 * LayerMoisture.LAYERS;

    private static final int READINGS_A_LAYER = 4;
    private static final int FEWEST_STEPS = 6;
    /** The humidity above gel is renewed this often. */
    private static final double GEL_SECONDS = 1800;

    private final AirSeries air;
    private final AirSeries outdoors;
    private final EventSchedule schedule;
    private final double stepSeconds;

    /**
     * A run.
     *
     * @param stepSeconds time between samples about an event; longer in phases of days
     */
    EventRun(AirSeries air, AirSeries outdoors, EventSchedule schedule, double stepSeconds) {
        this.air = air;
        this.outdoors = outdoors;
        this.schedule = schedule;
        this.stepSeconds = stepSeconds;
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
                for (double time : times(phase.seconds(), steps(phase.seconds()))) {
                    double share = time / phase.seconds();
                    samples.add(still(since + time, course.celsius(share), course.humidity(share)));
                }
                since += phase.seconds();
            }
            double end = start.startSeconds() + since;
            double rest = afterwards(end) * HOUR - end;
            for (double time : times(rest, steps(rest))) {
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

    /** The hour at which the knife has been out of an event for an hour or two. */
    private static int afterwards(double endSeconds) {
        return (int) Math.ceil(endSeconds / HOUR - 1e-9) + 1;
    }

    private int steps(double seconds) {
        double step = seconds > 24 * HOUR
                ? Math.max(stepSeconds, 6 * HOUR)
                : seconds > 6 * HOUR ? Math.max(stepSeconds, HOUR / 2) : stepSeconds;
        return Math.max(stepSeconds < 60 ? 1 : FEWEST_STEPS, (int) Math.round(seconds / step));
    }

    /** One scale on its way. */
    private final class Passage {
        private final EventScale scale;
        private final MoistureHistory normal;
        private final double[] mean;
        private final double[] face;
        private final double[] back;
        private final double[][] layers;
        private final List<EventWindow> windows = new ArrayList<>();
        private int hour;
        private double[] now;
        private double faceNow;
        private boolean disturbed;

        Passage(EventScale scale) {
            this.scale = scale;
            normal = PeriodicMoisture.of(scale.slab(), air, FINE_LAYERS).history();
            int hours = normal.size() * schedule.years();
            mean = new double[hours];
            face = new double[hours];
            back = new double[hours];
            layers = new double[LayerMoisture.LAYERS][hours];
        }

        EventCourse through() {
            for (EventSchedule.Start start : schedule.starts()) {
                rest((int) Math.floor(start.startSeconds() / HOUR));
                pass(start.event(), start.startSeconds());
            }
            rest(mean.length);
            double[] quiet = new double[normal.size()];
            Arrays.setAll(quiet, normal::meanFraction);
            return new EventCourse(quiet, mean, face, back, layers, windows);
        }

        /** On to an hour without events; {@code hour} and {@code now} stand there afterwards. */
        private void rest(int until) {
            int last = Math.min(until, mean.length);
            if (!disturbed) {
                for (int h = hour; h < last; h++) {
                    take(h, normal, h % normal.size());
                }
                start(normal, last % normal.size());
            } else if (last > hour) {
                MoistureHistory history = TransientMoisture.from(scale.slab(), now, slice(hour, last), FINE_LAYERS);
                for (int h = hour; h < last; h++) {
                    take(h, history, h - hour);
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

        private void take(int h, MoistureHistory history, int sample) {
            mean[h] = history.meanFraction(sample);
            face[h] = history.surfaceFraction(sample);
            back[h] = history.backFraction(sample);
            int each = FINE_LAYERS / LayerMoisture.LAYERS;
            for (int k = 0; k < layers.length; k++) {
                double sum = 0;
                for (int j = 0; j < each; j++) {
                    sum += history.layerFraction(k * each + j, sample);
                }
                layers[k][h] = sum / each;
            }
        }

        private void pass(Event event, double startSeconds) {
            disturbed = true;
            int first = hour;
            CoupledProfile profile = profile(EventAir.at(air, first * HOUR));
            List<Sample> samples = new ArrayList<>();
            double from = startSeconds - first * HOUR;
            Surroundings room = Surroundings.of(slice(first, first + 2), EventScale.saturation());
            if (from > 0) {
                profile = through(scale.inAir(EventPhase.Film.STILL, room), profile, from)
                        .last();
            }
            EventAir events = new EventAir(air, outdoors, startSeconds);
            double since = 0;
            samples.add(sample(0, events.roomCelsius(), events.roomHumidity(), profile));
            for (EventPhase phase : event.phases()) {
                profile = phase(phase, events, profile, since, samples);
                since += phase.seconds();
            }
            double end = startSeconds + since;
            int next = afterwards(end);
            double rest = next * HOUR - end;
            AirSeries after = between(end, next * HOUR);
            int count = steps(rest);
            double[] times = times(rest, count);
            CoupledHistory out = through(
                    scale.inAir(EventPhase.Film.STILL, Surroundings.of(after, EventScale.saturation())),
                    profile,
                    times);
            for (int i = 0; i < count; i++) {
                double share = times[i] / rest;
                samples.add(sample(
                        since + times[i],
                        after.temperatureCelsius(0)
                                + share * (after.temperatureCelsius(1) - after.temperatureCelsius(0)),
                        after.relativeHumidityFraction(0)
                                + share * (after.relativeHumidityFraction(1) - after.relativeHumidityFraction(0)),
                        out.profiles().get(i)));
            }
            windows.add(new EventWindow(event, startSeconds, samples));
            fill(first, next, startSeconds, samples);
            now = layersOf(out.last(), FINE_LAYERS);
            faceNow = scale.scale().surfaceFraction(out.last());
            hour = Math.min(next, mean.length);
        }

        private CoupledProfile phase(
                EventPhase phase, EventAir events, CoupledProfile start, double since, List<Sample> samples) {
            EventAir.Course course = events.next(phase);
            int count = steps(phase.seconds());
            double[] times = times(phase.seconds(), count);
            if (phase.around() instanceof EventPhase.ClosedBag bag && bag.gelGrams() > 0) {
                return withGel(bag, phase, course, start, since, times, samples);
            }
            Face front;
            boolean shut = false;
            if (phase.around() instanceof EventPhase.Water) {
                front = scale.inWater(phase.film(), Math.max(0, Math.min(100, course.meanCelsius())));
            } else {
                Surroundings around = Surroundings.of(course.series(), EventScale.saturation());
                shut = phase.around() instanceof EventPhase.ClosedBag bag && bag.packHumidityFraction() == 0;
                front = shut ? scale.shut(phase.film(), around) : scale.inAir(phase.film(), around);
            }
            CoupledHistory history = through(front, start, times);
            for (int i = 0; i < count; i++) {
                double share = times[i] / phase.seconds();
                CoupledProfile profile = history.profiles().get(i);
                double celsius = course.celsius(share);
                samples.add(sample(
                        since + times[i],
                        celsius,
                        shut
                                ? scale.slab()
                                        .isotherm()
                                        .waterActivity(scale.scale().surfaceFraction(profile), celsius)
                                : course.humidity(share),
                        profile));
            }
            return history.last();
        }

        /** The gel takes what the wood gives; its humidity holds from one sample to the next. */
        private CoupledProfile withGel(
                EventPhase.ClosedBag bag,
                EventPhase phase,
                EventAir.Course course,
                CoupledProfile start,
                double since,
                double[] times,
                List<Sample> samples) {
            SilicaGel gel = new SilicaGel(bag.gelGrams() / 1000);
            double atFirst = scale.scale().meanFraction(start);
            CoupledProfile profile = start;
            double before = 0;
            for (double time : times) {
                double humidity = 0;
                double celsius = course.celsius(time / phase.seconds());
                int shorter = (int) Math.ceil((time - before) / GEL_SECONDS);
                for (int i = 0; i < shorter; i++) {
                    double lost = (atFirst - scale.scale().meanFraction(profile)) * scale.dryKilograms();
                    humidity = gel.humidityFraction(Math.max(0, lost));
                    Surroundings bagAir = Surroundings.steady(celsius, humidity, EventScale.saturation());
                    profile = through(scale.inAir(phase.film(), bagAir), profile, (time - before) / shorter)
                            .last();
                }
                before = time;
                samples.add(sample(since + time, celsius, humidity, profile));
            }
            return profile;
        }

        private CoupledHistory through(Face front, CoupledProfile start, double... times) {
            return scale.scale().through(front, start, times);
        }

        private void fill(int first, int next, double startSeconds, List<Sample> samples) {
            int at = 0;
            for (int h = first; h < Math.min(next, mean.length); h++) {
                double seconds = h * HOUR - startSeconds;
                while (at + 1 < samples.size() && samples.get(at + 1).seconds() <= seconds) {
                    at++;
                }
                Sample sample = samples.get(at);
                mean[h] = sample.mean();
                face[h] = sample.face();
                back[h] = sample.back();
                for (int k = 0; k < layers.length; k++) {
                    layers[k][h] = sample.layers()[k];
                }
            }
        }

        private Sample sample(double seconds, double celsius, double humidity, CoupledProfile profile) {
            GradedGrid grid = profile.grid();
            double warmth = 0;
            for (int i = 0; i + 1 < grid.size(); i++) {
                warmth += 0.5
                        * (profile.temperatureCelsius(i) + profile.temperatureCelsius(i + 1))
                        * (grid.position(i + 1) - grid.position(i))
                        / grid.thickness();
            }
            double density = scale.slab().dryDensityKilogramsPerCubicMetre();
            return new Sample(
                    seconds,
                    celsius,
                    humidity,
                    warmth,
                    profile.temperatureCelsius(grid.size() - 1),
                    profile.temperatureCelsius(0),
                    scale.scale().meanFraction(profile),
                    scale.scale().surfaceFraction(profile),
                    profile.waterKilogramsPerCubicMetre(0) / density,
                    layersOf(profile, LayerMoisture.LAYERS));
        }

        private double[] layersOf(CoupledProfile profile, int count) {
            double thickness = scale.slab().thicknessMetres();
            double density = scale.slab().dryDensityKilogramsPerCubicMetre();
            double[] means = new double[count];
            int readings = READINGS_A_LAYER * FINE_LAYERS / count;
            for (int k = 0; k < count; k++) {
                for (int j = 0; j < readings; j++) {
                    means[k] += profile.waterAtKilogramsPerCubicMetre(thickness * (k + (j + 0.5) / readings) / count)
                            / density
                            / readings;
                }
            }
            return means;
        }

        /** Straight lines from middle to middle of the layers, and to the face. */
        private CoupledProfile profile(double celsius) {
            CoupledProfile even = scale.scale().evenly(0, celsius);
            GradedGrid grid = even.grid();
            double density = scale.slab().dryDensityKilogramsPerCubicMetre();
            double[] water = new double[grid.size()];
            double[] temperature = new double[grid.size()];
            Arrays.fill(temperature, celsius);
            for (int i = 0; i < water.length; i++) {
                double place = grid.position(i) / grid.thickness() * FINE_LAYERS - 0.5;
                double moisture;
                if (place <= 0) {
                    moisture = now[0];
                } else if (place >= FINE_LAYERS - 1) {
                    double share = 2 * (place - (FINE_LAYERS - 1));
                    moisture = now[FINE_LAYERS - 1] + share * (faceNow - now[FINE_LAYERS - 1]);
                } else {
                    int below = (int) place;
                    moisture = now[below] + (place - below) * (now[below + 1] - now[below]);
                }
                water[i] = density * moisture;
            }
            return new CoupledProfile(grid, water, temperature);
        }
    }

    private static double[] times(double seconds, int count) {
        double[] times = new double[count];
        Arrays.setAll(times, i -> seconds * (i + 1) / count);
        return times;
    }

    private AirSeries slice(int first, int last) {
        int count = last - first + 1;
        double[] temperature = new double[count];
        double[] humidity = new double[count];
        for (int i = 0; i < count; i++) {
            temperature[i] = air.temperatureCelsius((first + i) % air.size());
            humidity[i] = air.relativeHumidityFraction((first + i) % air.size());
        }
        return new AirSeries(air.stepSeconds(), temperature, humidity);
    }

    private AirSeries between(double from, double to) {
        return new AirSeries(to - from, new double[] {EventAir.at(air, from), EventAir.at(air, to)}, new double[] {
            EventAir.humidityAt(air, from), EventAir.humidityAt(air, to)
        });
    }

    /** The air of an hourly year is what events are counted in. */
    static Optional<String> unfit(AirSeries air) {
        return Math.abs(air.stepSeconds() - HOUR) < 1e-6
                ? Optional.empty()
                : Optional.of("events need air hour by hour, got a step of " + air.stepSeconds() + " s");
    }
}
