package hafthold.decide;

import hafthold.simulate.BlankYear.Week;
import hafthold.simulate.HandleYear;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What comes of a scale that is sanded flush in one week.
 *
 * @param blank the blank it is made of
 * @param year the customer's year
 * @param verdict on that year
 * @param reasons what decides it, the deciding one first
 * @param use largest movement over the limit that asks for a change, 1 is the limit
 * @param keeps share of sampled years that need no change of the build, 0 to 1; empty where that is not known
 * @param allowance how far to leave the edges off flush
 */
public record SeasonWeek(
        Week blank,
        HandleYear year,
        Verdict verdict,
        List<Reason> reasons,
        double use,
        OptionalDouble keeps,
        Allowance allowance) {

    /** Keeps its own copy. */
    public SeasonWeek {
        reasons = List.copyOf(reasons);
    }

    /** True where no change of the build is asked for. */
    public boolean holds() {
        return verdict.compareTo(Verdict.CARE) <= 0;
    }
}
