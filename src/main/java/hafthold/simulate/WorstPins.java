package hafthold.simulate;

import hafthold.quantity.Band;
import java.util.Optional;

/**
 * The worst of all pins over the year; lengths in metres, zero or more.
 *
 * @param gap widest opening between pin and hole
 * @param squeeze largest overlap of pin and hole
 * @param crackUse tension that the squeeze puts across the grain over the strength; 1 splits, 0 without squeeze;
 *     empty where it is squeezed and the strength is not known
 * @param headProud pin head above the face
 * @param headSunk pin head below the face
 */
public record WorstPins(Band gap, Band squeeze, Optional<Band> crackUse, Band headProud, Band headSunk) {

    /** No pin. */
    static final WorstPins NONE =
            new WorstPins(Band.exact(0), Band.exact(0), Optional.of(Band.exact(0)), Band.exact(0), Band.exact(0));

    /** The worse of a year and its events. */
    WorstPins worse(WorstPins event) {
        return new WorstPins(
                EventReading.worse(gap, event.gap),
                EventReading.worse(squeeze, event.squeeze),
                EventReading.worse(crackUse, event.crackUse),
                EventReading.worse(headProud, event.headProud),
                EventReading.worse(headSunk, event.headSunk));
    }
}
