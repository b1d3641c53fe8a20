package hafthold.simulate;

import hafthold.quantity.Band;
import java.util.List;
import java.util.function.Supplier;

/**
 * The year day by day; where the knife moves from place to place, the year that repeats. Worked out when it is asked for:
 * of a whole rack hardly any are drawn.
 */
public final class HandleDays {
    /** No day at all. */
    public static final HandleDays NONE = new HandleDays(List.of(), List.of());

    private final Once<List<Band>> edgeOffset;
    private final Once<List<Double>> moisture;

    /**
     * Days that are known, 1 January first.
     *
     * @param edgeOffset metres, positive proud, one a day
     * @param moisture kg/kg, one a day
     */
    public HandleDays(List<Band> edgeOffset, List<Double> moisture) {
        this(() -> edgeOffset, () -> moisture);
    }

    /** Days that are worked out at most once. */
    HandleDays(Supplier<List<Band>> edgeOffset, Supplier<List<Double>> moisture) {
        this.edgeOffset = Once.from(() -> List.copyOf(edgeOffset.get()));
        this.moisture = Once.from(() -> List.copyOf(moisture.get()));
    }

    /**
     * Mean edge offset of each day, metres, positive proud. The value is the mean of all samples of the day; the band is that
     * of the day's mean moisture, which differs only where a scale is at its fibre saturation or bone dry.
     */
    public List<Band> edgeOffset() {
        return edgeOffset.get();
    }

    /** Mean moisture content of each day, fraction of dry mass. */
    public List<Double> moisture() {
        return moisture.get();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof HandleDays days && edgeOffset.equals(days.edgeOffset) && moisture.equals(days.moisture);
    }

    /** One for all: days are not worked out only to tell them apart. */
    @Override
    public int hashCode() {
        return 1;
    }

    @Override
    public String toString() {
        return "HandleDays[" + edgeOffset().size() + " days]";
    }
}
