package hafthold.simulate;

import hafthold.quantity.Band;
import java.util.Optional;

/**
 * What one event does to a bonded knife, besides what it does to the scale by itself: the worst of all times.
 *
 * @param scale its moisture, and its edges as glued
 * @param glueUse glue stress over strength at the temperature of the moment
 * @param splitUse tension across the grain of the scale, in its middle or at its glued edge, over strength; empty
 *     where the strength is not known
 * @param pinUse the same beside the pins
 */
public record BondedEventAnswer(EventAnswer scale, Band glueUse, Optional<Band> splitUse, Optional<Band> pinUse) {}
