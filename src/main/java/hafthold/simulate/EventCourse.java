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

    /** First moment of each hour, kg/kg, see {@link hafthold.transport.MoistureHistory}. */
    double[] moments() {
        double[] moments = new double[mean.length];
        double[] now = new double[layers.length];
        for (int hour = 0; hour < moments.length; hour++) {
            for (int k = 0; k < now.length; k++) {
                now[k] = layers[k][hour];
            }
            moments[hour] = moment(now);
        }
        return moments;
    }

    /** First moment of equal layers. */
    static double moment(double[] layers) {
        double sum = 0;
        for (int k = 0; k < layers.length; k++) {
            sum += 12.0 / layers.length * layers[k] * ((k + 0.5) / layers.length - 0.5);
        }
        return sum;
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
