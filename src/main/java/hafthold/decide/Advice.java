package hafthold.decide;

import hafthold.knife.Knife;
import java.util.List;
import java.util.Optional;

/**
 * A change that was tried by running the engine with it, and what it did.
 *
 * @param change what to do
 * @param knife the knife with the change made
 * @param effects what it does to each thing that was out of limit, and to what it made worse
 * @param press what it does to the press of a stack in the damp; empty for anything else
 * @param verdict on the changed knife
 */
public record Advice(Change change, Knife knife, List<Effect> effects, Optional<Press> press, Verdict verdict) {

    /** Keeps its own copy. */
    public Advice {
        effects = List.copyOf(effects);
    }

    /** Of a handle that is no stack. */
    public Advice(Change change, Knife knife, List<Effect> effects, Verdict verdict) {
        this(change, knife, effects, Optional.empty(), verdict);
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

    /**
     * How hard a stack presses in the damp, without the change and with it.
     *
     * @param growthBefore most that its parts want to be longer than the steel, metres
     * @param growthAfter with the change
     * @param newtonsBefore largest load on its joints
     * @param newtonsAfter with the change
     */
    public record Press(double growthBefore, double growthAfter, double newtonsBefore, double newtonsAfter) {}
}
