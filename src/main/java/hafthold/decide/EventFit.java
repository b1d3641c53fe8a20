package hafthold.decide;

import hafthold.simulate.BondedEventYear;
import java.util.Optional;

/**
 * A knife held against one place and what happens there besides the weather.
 *
 * @param fit movements and verdict by the worse of the year and its events; advice was tried without them
 * @param events what each event does; empty where nothing happens
 */
public record EventFit(KnifeFit fit, Optional<BondedEventYear> events) {

    /** A knife to which nothing happens. */
    public static EventFit quiet(KnifeFit fit) {
        return new EventFit(fit, Optional.empty());
    }
}
