package hafthold.simulate;

import hafthold.air.Event;
import java.util.ArrayList;
import java.util.List;

/**
 * A scale from the start of an event until the knife has been out of it for an hour or two, sample by sample.
 *
 * @param event what happened
 * @param startSeconds when, seconds after the first midnight of the first year
 * @param samples the first at the start
 */
record EventWindow(Event event, double startSeconds, List<Sample> samples) {

    EventWindow {
        samples = List.copyOf(samples);
    }

    /**
     * One moment. Moisture contents are kg/kg, all zero for what takes up no water.
     *
     * @param seconds since the start
     * @param airCelsius air or water about the knife
     * @param airHumidity relative humidity of it; 1 for water
     * @param meanCelsius scale, mean over its thickness
     * @param faceCelsius scale at its face
     * @param backCelsius scale at the tang, and the tang itself
     * @param layers equal layers from the tang outwards
     */
    record Sample(
            double seconds,
            double airCelsius,
            double airHumidity,
            double meanCelsius,
            double faceCelsius,
            double backCelsius,
            double mean,
            double face,
            double back,
            double[] layers) {}

    /** Hour of the first year, with a fraction, of a sample. */
    double hour(Sample sample) {
        return (startSeconds + sample.seconds()) / 3600;
    }

    /** All samples of several windows. */
    static List<Sample> samples(List<EventWindow> windows) {
        List<Sample> all = new ArrayList<>();
        windows.forEach(window -> all.addAll(window.samples()));
        return all;
    }
}
