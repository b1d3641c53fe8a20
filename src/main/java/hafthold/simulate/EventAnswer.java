package hafthold.simulate;

import hafthold.air.Event;
import hafthold.quantity.Band;
import java.util.Optional;

/**
 * What one event does to a scale: the worst of all times it happens. Moisture contents are kg/kg, movements metres, both
 * during the event and in the hour or two after it; bands from the speed of water in the scale only.
 *
 * @param event what happens
 * @param times how often
 * @param faceWettest highest moisture content at the face
 * @param faceDriest lowest moisture content at the face
 * @param meanGain by how much the mean of the scale rises above that just before, zero or more
 * @param meanLoss by how much it falls below that, zero or more
 * @param edgeShy steel proud of the scale, a side
 * @param edgeProud scale proud of the steel, a side
 * @param pinCrackUse tension beside the pins over strength; empty where the strength is not known
 * @param hottestCelsius hottest face, by the range of the event's temperature
 * @param coldestCelsius coldest face
 * @param backHours from the start until nine tenths of the change of the mean are gone, hours; infinity where the next event
 *     or the end of the year comes first, zero where it hardly changes
 * @param leftBeforeSecond how much wetter the scale is just before the second time than without events
 * @param leftBeforeLast the same just before the last time: what has built up
 * @param endGrainMetres how far liquid water gets in by the pores of the end grain, zero where nothing is known of them
 */
public record EventAnswer(
        Event event,
        int times,
        double faceWettest,
        double faceDriest,
        Band meanGain,
        Band meanLoss,
        Band edgeShy,
        Band edgeProud,
        Optional<Band> pinCrackUse,
        Band hottestCelsius,
        double coldestCelsius,
        double backHours,
        double leftBeforeSecond,
        double leftBeforeLast,
        Band endGrainMetres) {

    /** True where nine tenths of the change of the mean are gone before the next event. */
    public boolean isBack() {
        return Double.isFinite(backHours);
    }
}
