package hafthold.simulate;

import java.util.Arrays;

/**
 * When samples are taken about an event.
 *
 * @param stepSeconds time between samples; longer in phases of days
 */
record EventClock(double stepSeconds) {
    static final double HOUR = 3600;

    private static final int FEWEST_STEPS = 6;

    /** Equal steps through a span, the last at its end, s. */
    double[] times(double seconds) {
        double step = seconds > 24 * HOUR
                ? Math.max(stepSeconds, 6 * HOUR)
                : seconds > 6 * HOUR ? Math.max(stepSeconds, HOUR / 2) : stepSeconds;
        int count = Math.max(stepSeconds < 60 ? 1 : FEWEST_STEPS, (int) Math.round(seconds / step));
        double[] times = new double[count];
        Arrays.setAll(times, i -> seconds * (i + 1) / count);
        return times;
    }

    /** The hour at which the knife has been out of an event for an hour or two. */
    static int afterwards(double endSeconds) {
        return (int) Math.ceil(endSeconds / HOUR - 1e-9) + 1;
    }
}
