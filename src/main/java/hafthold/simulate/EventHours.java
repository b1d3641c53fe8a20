package hafthold.simulate;

import hafthold.simulate.EventWindow.Sample;
import hafthold.transport.MoistureHistory;
import java.util.List;

/** Moisture of a scale in the hours of the years with events, as they fill; kg/kg. */
final class EventHours {
    final double[] mean;
    final double[] face;
    final double[] back;
    final double[][] layers;

    EventHours(int hours) {
        mean = new double[hours];
        face = new double[hours];
        back = new double[hours];
        layers = new double[LayerMoisture.LAYERS][hours];
    }

    int size() {
        return mean.length;
    }

    /** An hour without events. */
    void take(int hour, MoistureHistory history, int sample) {
        mean[hour] = history.meanFraction(sample);
        face[hour] = history.surfaceFraction(sample);
        back[hour] = history.backFraction(sample);
        int each = EventProfiles.FINE_LAYERS / LayerMoisture.LAYERS;
        for (int k = 0; k < layers.length; k++) {
            double sum = 0;
            for (int j = 0; j < each; j++) {
                sum += history.layerFraction(k * each + j, sample);
            }
            layers[k][hour] = sum / each;
        }
    }

    /** The hours of an event, from the last sample before each. */
    void take(int first, int next, double startSeconds, List<Sample> samples) {
        int at = 0;
        for (int hour = first; hour < Math.min(next, size()); hour++) {
            double seconds = hour * EventClock.HOUR - startSeconds;
            while (at + 1 < samples.size() && samples.get(at + 1).seconds() <= seconds) {
                at++;
            }
            Sample sample = samples.get(at);
            mean[hour] = sample.mean();
            face[hour] = sample.face();
            back[hour] = sample.back();
            for (int k = 0; k < layers.length; k++) {
                layers[k][hour] = sample.layers()[k];
            }
        }
    }
}
