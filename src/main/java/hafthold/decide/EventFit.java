package hafthold.decide;

import hafthold.simulate.BondedEventYear;
import java.util.List;
import java.util.Optional;

/**
 * A knife held against one place and what happens there besides the weather.
 *
 * @param fit movements and verdict by the worse of the year and its events; advice was sought without them
 * @param events what each event does; empty where nothing happens
 * @param remedied the knife after the first advice, with the events; empty where nothing happens or is advised
 */
public record EventFit(KnifeFit fit, Optional<BondedEventYear> events, Optional<Remedied> remedied) {

    /**
     * A changed knife with the events.
     *
     * @param verdict by the worse of the year and its events
     * @param reasons for it, what decides first
     */
    public record Remedied(Verdict verdict, List<Reason> reasons) {

        /** Keeps its own copy. */
        public Remedied {
            reasons = List.copyOf(reasons);
        }
    }

    /** A knife to which nothing happens. */
    public static EventFit quiet(KnifeFit fit) {
        return new EventFit(fit, Optional.empty(), Optional.empty());
    }
}
