package hafthold.simulate;

import hafthold.quantity.Band;
import java.util.List;

/**
 * The year day by day; where the knife moves from place to place, the year that repeats.
 *
 * @param edgeOffset mean edge offset of each day, metres, positive proud
 * @param moisture mean moisture content of each day, fraction of dry mass
 */
public record HandleDays(List<Band> edgeOffset, List<Double> moisture) {

    /** No day at all. */
    public static final HandleDays NONE = new HandleDays(List.of(), List.of());

    /** Keeps its own copies. */
    public HandleDays {
        edgeOffset = List.copyOf(edgeOffset);
        moisture = List.copyOf(moisture);
    }
}
