package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.simulate.EventWindow.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One scale through years with events: every hour, and finer moments about each event. */
public final class EventTrace {
    private static final double SECONDS_AN_HOUR = 3600;
    private static final double SAME_HOURS = 1e-6;

    private final Conditions conditions;
    private final List<EventCourse> courses;
    private final List<PartMotion> parts;
    private final Optional<double[]> gluedHours;
    private final Optional<double[]> gluedSamples;

    /**
     * A trace.
     *
     * @param gluedHours offset of the glued edge at each hour, m; empty where it is not glued
     * @param gluedSamples the same at each sample of all windows in order
     */
    EventTrace(
            Conditions conditions,
            List<EventCourse> courses,
            List<PartMotion> parts,
            Optional<double[]> gluedHours,
            Optional<double[]> gluedSamples) {
        this.gluedHours = gluedHours;
        this.gluedSamples = gluedSamples;
        this.conditions = conditions;
        this.courses = courses;
        this.parts = parts;
    }

    /**
     * A moment and the scale then.
     *
     * @param hour hours since the first midnight, with a fraction
     * @param state state of the scale
     */
    public record Moment(double hour, ScaleTrace.Hour state) {}

    /** Whether the scale is glued; if not, both offsets are the same. */
    public boolean isGlued() {
        return gluedHours.isPresent();
    }

    /** All moments in order. */
    public List<Moment> moments() {
        List<Moment> moments = new ArrayList<>();
        EventCourse leading = courses.get(0);
        AirSeries air = conditions.destination().air();
        int hour = 0;
        int taken = 0;
        for (int w = 0; w < leading.windows().size(); w++) {
            EventWindow window = leading.windows().get(w);
            double start = window.startSeconds() / SECONDS_AN_HOUR;
            for (; hour < start - SAME_HOURS; hour++) {
                moments.add(hourly(hour, air));
            }
            double last = start;
            for (int i = 0; i < window.samples().size(); i++) {
                Sample sample = window.samples().get(i);
                double at = window.hour(sample);
                int index = taken++;
                moments.add(new Moment(at, state(w, i, sample, gluedSamples.map(offsets -> offsets[index]))));
                last = at;
            }
            hour = (int) Math.floor(last + SAME_HOURS) + 1;
        }
        for (; hour < leading.mean().length; hour++) {
            moments.add(hourly(hour, air));
        }
        return moments;
    }

    private Moment hourly(int hour, AirSeries air) {
        EventCourse leading = courses.get(0);
        double celsius = air.temperatureCelsius(hour % air.size());
        double[] wetter = new double[parts.size()];
        for (int p = 0; p < wetter.length; p++) {
            wetter[p] = parts.get(p).moistureChange(hour);
        }
        return new Moment(
                hour,
                state(
                        celsius,
                        air.relativeHumidityFraction(hour % air.size()),
                        leading.mean()[hour],
                        leading.face()[hour],
                        leading.back()[hour],
                        celsius,
                        wetter,
                        gluedHours.map(offsets -> offsets[hour])));
    }

    private ScaleTrace.Hour state(int window, int index, Sample sample, Optional<Double> glued) {
        double[] wetter = new double[parts.size()];
        for (int p = 0; p < wetter.length; p++) {
            List<Sample> own = courses.get(p).windows().get(window).samples();
            double mean = own.get(Math.min(index, own.size() - 1)).mean();
            wetter[p] = Math.min(mean, parts.get(p).stillAboveFraction())
                    - parts.get(p).finishFraction();
        }
        return state(
                sample.airCelsius(),
                sample.airHumidity(),
                sample.mean(),
                sample.face(),
                sample.back(),
                sample.meanCelsius(),
                wetter,
                glued);
    }

    private ScaleTrace.Hour state(
            double airCelsius,
            double humidity,
            double mean,
            double face,
            double back,
            double scaleCelsius,
            double[] wetter,
            Optional<Double> glued) {
        double warmer = scaleCelsius - conditions.madeTemperature().celsius();
        double width = 0;
        double thickness = 0;
        double length = 0;
        for (int p = 0; p < wetter.length; p++) {
            PartMotion part = parts.get(p);
            width += part.share() * part.width().strain(wetter[p], warmer);
            thickness += part.share() * part.thickness().strain(wetter[p], warmer);
            length += part.share() * part.length().strain(wetter[p], warmer);
        }
        double offset = conditions.handle().tangWidth().metres()
                / 2
                * (width - conditions.tangExpansion().value() * warmer);
        return new ScaleTrace.Hour(
                airCelsius, humidity, mean, face, back, width, thickness, length, glued.orElse(offset), offset);
    }

    /** A closed year, so many times over. */
    static AirSeries repeated(AirSeries air, int years) {
        double[] temperature = new double[air.size() * years];
        double[] humidity = new double[temperature.length];
        for (int i = 0; i < temperature.length; i++) {
            temperature[i] = air.temperatureCelsius(i % air.size());
            humidity[i] = air.relativeHumidityFraction(i % air.size());
        }
        return new AirSeries(air.stepSeconds(), temperature, humidity);
    }
}
