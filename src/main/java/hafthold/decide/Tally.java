package hafthold.decide;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How many answers got which verdict.
 *
 * @param counts of every verdict, zero included
 */
public record Tally(Map<Verdict, Integer> counts) {

    /** Keeps its own copy. */
    public Tally {
        Map<Verdict, Integer> all = new EnumMap<>(Verdict.class);
        for (Verdict verdict : Verdict.values()) {
            all.put(verdict, counts.getOrDefault(verdict, 0));
        }
        counts = Collections.unmodifiableMap(all);
    }

    /** Counts answers. */
    public static Tally of(List<Atlas.Cell> cells) {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        cells.forEach(cell -> counts.merge(cell.verdict(), 1, Integer::sum));
        return new Tally(counts);
    }

    /** Number of a verdict. */
    public int of(Verdict verdict) {
        return counts.get(verdict);
    }

    /** Number of all. */
    public int all() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Share of a verdict, 0 to 1; 0 of nothing. */
    public double share(Verdict verdict) {
        return all() == 0 ? 0 : (double) of(verdict) / all();
    }

    /** The best verdict that more than half of the answers keep; unknown counts as the worst. */
    public Verdict usual() {
        int kept = 0;
        for (Verdict verdict : Verdict.values()) {
            kept += of(verdict);
            if (2 * kept > all()) {
                return verdict;
            }
        }
        return Verdict.UNKNOWN;
    }
}
