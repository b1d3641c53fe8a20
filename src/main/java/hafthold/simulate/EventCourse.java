package hafthold.simulate;

import java.util.List;

/**
 * A scale through years with events, hour by hour, and in finer steps about each event. Moisture contents are kg/kg.
 *
 * @param normal mean of each hour of the year without events
 * @param mean mean of each hour of all years with events
 * @param face at the face, likewise
 * @param back at the tang, likewise
 * @param layers equal layers from the tang outwards, each hour by hour
 * @param windows one an event, in order
 */
record EventCourse(
        double[] normal, double[] mean, double[] face, double[] back, double[][] layers, List<EventWindow> windows) {

    EventCourse {
        windows = List.copyOf(windows);
    }

    /** How much wetter an hour is than without events. */
    double above(int hour) {
        return mean[hour] - normal[hour % normal.length];
    }

    /** The same between hours, on straight lines. */
    double above(double hour) {
        int before = (int) Math.min(mean.length - 1.0, Math.floor(hour));
        int after = Math.min(mean.length - 1, before + 1);
        return above(before) + (hour - before) * (above(after) - above(before));
    }
}
