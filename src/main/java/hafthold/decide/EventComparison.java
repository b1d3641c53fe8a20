package hafthold.decide;

import hafthold.simulate.EventYear;
import java.util.List;

/**
 * Materials held against one place and what happens there besides the weather.
 *
 * @param comparison ranked by the worse of the year and its events
 * @param events what each event does, in the order of the ranks
 */
public record EventComparison(Comparison comparison, List<EventYear> events) {

    /** Keeps its own copy. */
    public EventComparison {
        events = List.copyOf(events);
    }

    /** A comparison in which nothing happens. */
    public static EventComparison quiet(Comparison comparison) {
        return new EventComparison(comparison, List.of());
    }
}
