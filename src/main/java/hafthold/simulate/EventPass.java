package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.Event;
import hafthold.air.EventPhase;
import hafthold.simulate.EventWindow.Sample;
import hafthold.transport.coupled.CoupledHistory;
import hafthold.transport.coupled.CoupledProfile;
import hafthold.transport.coupled.Face;
import hafthold.transport.coupled.Surroundings;
import java.util.ArrayList;
import java.util.List;

/** One scale through one event, phase by phase, until it has been out of it for an hour or two. */
final class EventPass {
    /** The humidity above gel is renewed this often. */
    private static final double GEL_SECONDS = 1800;

    private final EventScale scale;
    private final EventProfiles profiles;
    private final EventClock clock;
    private final AirSeries air;
    private final EventAir events;
    private final double startSeconds;
    private final List<Sample> samples = new ArrayList<>();
    private CoupledProfile profile;

    /**
     * A pass through an event.
     *
     * @param air where the knife is otherwise
     * @param profile of the scale at the whole hour before the event
     */
    EventPass(
            EventScale scale,
            EventClock clock,
            AirSeries air,
            AirSeries outdoors,
            double startSeconds,
            CoupledProfile profile) {
        this.scale = scale;
        this.profiles = new EventProfiles(scale);
        this.clock = clock;
        this.air = air;
        this.events = new EventAir(air, outdoors, startSeconds);
        this.startSeconds = startSeconds;
        this.profile = profile;
    }

    /** Samples from the start of the event on. */
    EventWindow through(Event event) {
        int hour = (int) Math.floor(startSeconds / EventClock.HOUR);
        double lead = startSeconds - hour * EventClock.HOUR;
        if (lead > 0) {
            Surroundings room = Surroundings.of(EventAir.slice(air, hour, hour + 2), EventScale.saturation());
            profile = scale.scale()
                    .through(scale.inAir(EventPhase.Film.STILL, room), profile, lead)
                    .last();
        }
        samples.add(profiles.sample(0, events.roomCelsius(), events.roomHumidity(), profile));
        double since = 0;
        for (EventPhase phase : event.phases()) {
            phase(phase, since);
            since += phase.seconds();
        }
        rest(since);
        return new EventWindow(event, startSeconds, samples);
    }

    /** Where the scale stands now. */
    CoupledProfile profile() {
        return profile;
    }

    /** Out of it again. */
    private void rest(double since) {
        double end = startSeconds + since;
        double until = EventClock.afterwards(end) * EventClock.HOUR;
        double rest = until - end;
        AirSeries after = EventAir.between(air, end, until);
        double[] times = clock.times(rest);
        CoupledHistory out = scale.scale()
                .through(
                        scale.inAir(EventPhase.Film.STILL, Surroundings.of(after, EventScale.saturation())),
                        profile,
                        times);
        for (int i = 0; i < times.length; i++) {
            double share = times[i] / rest;
            samples.add(profiles.sample(
                    since + times[i],
                    after.temperatureCelsius(0) + share * (after.temperatureCelsius(1) - after.temperatureCelsius(0)),
                    after.relativeHumidityFraction(0)
                            + share * (after.relativeHumidityFraction(1) - after.relativeHumidityFraction(0)),
                    out.profiles().get(i)));
        }
        profile = out.last();
    }

    private void phase(EventPhase phase, double since) {
        EventAir.Course course = events.next(phase);
        double[] times = clock.times(phase.seconds());
        if (phase.around() instanceof EventPhase.ClosedBag bag && bag.gelGrams() > 0) {
            withGel(bag, phase, course, since, times);
            return;
        }
        boolean shut = phase.around() instanceof EventPhase.ClosedBag bag && bag.packHumidityFraction() == 0;
        CoupledHistory history = scale.scale().through(front(phase, course, shut), profile, times);
        for (int i = 0; i < times.length; i++) {
            double share = times[i] / phase.seconds();
            CoupledProfile then = history.profiles().get(i);
            double celsius = course.celsius(share);
            double humidity = shut
                    ? scale.slab().isotherm().waterActivity(scale.scale().surfaceFraction(then), celsius)
                    : course.humidity(share);
            samples.add(profiles.sample(since + times[i], celsius, humidity, then));
        }
        profile = history.last();
    }

    private Face front(EventPhase phase, EventAir.Course course, boolean shut) {
        if (phase.around() instanceof EventPhase.Water) {
            return scale.inWater(phase.film(), Math.max(0, Math.min(100, course.meanCelsius())));
        }
        Surroundings around = Surroundings.of(course.series(), EventScale.saturation());
        return shut ? scale.shut(phase.film(), around) : scale.inAir(phase.film(), around);
    }

    /** The gel takes what the wood gives; its humidity holds from one sample to the next. */
    private void withGel(
            EventPhase.ClosedBag bag, EventPhase phase, EventAir.Course course, double since, double[] times) {
        SilicaGel gel = new SilicaGel(bag.gelGrams() / 1000);
        double atFirst = scale.scale().meanFraction(profile);
        double before = 0;
        for (double time : times) {
            double humidity = 0;
            double celsius = course.celsius(time / phase.seconds());
            int shorter = (int) Math.ceil((time - before) / GEL_SECONDS);
            for (int i = 0; i < shorter; i++) {
                double lost = (atFirst - scale.scale().meanFraction(profile)) * scale.dryKilograms();
                humidity = gel.humidityFraction(Math.max(0, lost));
                Surroundings bagAir = Surroundings.steady(celsius, humidity, EventScale.saturation());
                profile = scale.scale()
                        .through(scale.inAir(phase.film(), bagAir), profile, (time - before) / shorter)
                        .last();
            }
            before = time;
            samples.add(profiles.sample(since + time, celsius, humidity, profile));
        }
    }
}
