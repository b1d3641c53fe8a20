package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.EventPhase;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;

/** Air and water of one event, phase after phase, told from the air of the hour it happens in. */
final class EventAir {
    private static final SaturationPressure SATURATION = new HylandWexlerSaturationPressure();
    private static final double SAMPLE_SECONDS = 300;
    private static final int MOST_SAMPLES = 600;

    private final AirSeries air;
    private final AirSeries outdoors;
    private double seconds;
    private double celsius;

    EventAir(AirSeries air, AirSeries outdoors, double startSeconds) {
        this.air = air;
        this.outdoors = outdoors;
        seconds = startSeconds;
        celsius = at(air, startSeconds);
    }

    double roomCelsius() {
        return at(air, seconds);
    }

    double roomHumidity() {
        return humidityAt(air, seconds);
    }

    /** Temperature of a closed series at a time, on a straight line. */
    static double at(AirSeries series, double seconds) {
        double place = seconds / series.stepSeconds();
        int before = (int) Math.floor(place);
        double share = place - before;
        return (1 - share) * series.temperatureCelsius(before % series.size())
                + share * series.temperatureCelsius((before + 1) % series.size());
    }

    /** Relative humidity of a closed series at a time, on a straight line. */
    static double humidityAt(AirSeries series, double seconds) {
        double place = seconds / series.stepSeconds();
        int before = (int) Math.floor(place);
        double share = place - before;
        return (1 - share) * series.relativeHumidityFraction(before % series.size())
                + share * series.relativeHumidityFraction((before + 1) % series.size());
    }

    /** Whole hours of a closed hourly series, both ends included. */
    static AirSeries slice(AirSeries series, int first, int last) {
        int count = last - first + 1;
        double[] temperature = new double[count];
        double[] humidity = new double[count];
        for (int i = 0; i < count; i++) {
            temperature[i] = series.temperatureCelsius((first + i) % series.size());
            humidity[i] = series.relativeHumidityFraction((first + i) % series.size());
        }
        return new AirSeries(series.stepSeconds(), temperature, humidity);
    }

    /** A straight line from one time of a closed series to another. */
    static AirSeries between(AirSeries series, double from, double to) {
        return new AirSeries(to - from, new double[] {at(series, from), at(series, to)}, new double[] {
            humidityAt(series, from), humidityAt(series, to)
        });
    }

    /**
     * What surrounds the knife through one phase.
     *
     * @param series equal steps from its start to its end
     */
    record Course(AirSeries series) {

        double celsius(double share) {
            return at(series, share * (series.size() - 1) * series.stepSeconds() * (1 - 1e-12));
        }

        double humidity(double share) {
            return humidityAt(series, share * (series.size() - 1) * series.stepSeconds() * (1 - 1e-12));
        }

        double meanCelsius() {
            double sum = 0;
            for (int i = 0; i < series.size(); i++) {
                sum += series.temperatureCelsius(i) / series.size();
            }
            return sum;
        }
    }

    /** The next phase, which starts where the last one ended. */
    Course next(EventPhase phase) {
        int steps = (int) Math.max(1, Math.min(MOST_SAMPLES, Math.round(phase.seconds() / SAMPLE_SECONDS)));
        double[] temperature = new double[steps + 1];
        double[] humidity = new double[steps + 1];
        double before = celsius;
        AirSeries base = phase.counted() == EventPhase.Counted.OUTDOORS ? outdoors : air;
        for (int i = 0; i <= steps; i++) {
            double share = (double) i / steps;
            double time = seconds + share * phase.seconds();
            double aim = phase.celsius().value() + (phase.counted() == EventPhase.Counted.OWN ? 0 : at(base, time));
            temperature[i] = phase.ramp() ? before + share * (aim - before) : aim;
            humidity[i] = humidity(phase.around(), base, time, temperature[i]);
        }
        seconds += phase.seconds();
        celsius = temperature[steps];
        return new Course(new AirSeries(phase.seconds() / steps, temperature, humidity));
    }

    private static double humidity(EventPhase.Around around, AirSeries base, double time, double celsius) {
        if (around instanceof EventPhase.HeldHumidity held) {
            return held.fraction();
        }
        if (around instanceof EventPhase.KeptVapour) {
            double vapour = humidityAt(base, time) * SATURATION.pascals(at(base, time));
            return Math.min(1, vapour / SATURATION.pascals(celsius));
        }
        if (around instanceof EventPhase.ClosedBag bag) {
            return bag.packHumidityFraction();
        }
        return 1;
    }
}
