package hafthold.decide;

import hafthold.knife.Knife;
import java.util.List;

/**
 * A change that was tried by running the engine with it, and what it did.
 *
 * @param change what to do
 * @param knife the knife with the change made
 * @param effects what it does to each thing that was out of limit, and to what it made worse
 * @param verdict on the changed knife
 */
public record Advice(Change change, Knife knife, List<Effect> effects, Verdict verdict) {

    /** Keeps its own copy. */
    public Advice {
        effects = List.copyOf(effects);
    }

    /** True where the changed knife needs nothing more than care. */
    public boolean isEnough() {
        return verdict.compareTo(Verdict.CARE) <= 0;
    }

    /**
     * One thing before and after.
     *
     * @param kind what moves or bears
     * @param before without the change, metres or use of strength
     * @param after with it
     */
    public record Effect(Reason.Kind kind, double before, double after) {}
}
