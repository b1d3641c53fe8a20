package hafthold.decide;

import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import java.util.List;
import java.util.Optional;

/**
 * Where one movement or use of strength stands among the classes of work, counted from 0, the strictest.
 *
 * @param kind what it is
 * @param size how far; empty where it could not be judged
 * @param leastIndex as {@code index}, for the low end of a movement
 * @param index strictest class kept, the number of classes where none is
 * @param mostIndex as {@code index}, for the high end of a movement
 * @param use size over the seasonal limit
 */
record Standing(Reason.Kind kind, Optional<Band> size, int leastIndex, int index, int mostIndex, double use) {
    /** What keeps no stricter class asks for care. */
    static final int CARE_CLASS = 2;

    /** What keeps no stricter class asks for a change. */
    static final int CHANGE_CLASS = 3;

    /** True where the strength is not known that it would be held against. */
    boolean isOpen() {
        return size.isEmpty();
    }

    /** What is open comes after what asks for a change and before what asks for care, as it does in the verdict. */
    int weight() {
        return isOpen() ? 2 * CHANGE_CLASS - 1 : 2 * index;
    }

    /**
     * For telling it: with the limit that is exceeded where it asks for a change, else with the one that is kept.
     *
     * @param asksForChange whether it does, for the work in question
     */
    Reason reason(List<FitLimits> classes, boolean asksForChange) {
        boolean exceeds = index >= classes.size() || (asksForChange && index > 0);
        return new Reason(kind, size, classes.get(exceeds ? index - 1 : index), !exceeds);
    }
}
