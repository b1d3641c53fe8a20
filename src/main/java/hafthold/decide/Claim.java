package hafthold.decide;

import hafthold.knife.FullTangKnife;
import hafthold.knife.KnifeHistory;
import hafthold.quantity.Band;
import hafthold.simulate.Cause;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.source.Finding;
import java.util.List;
import java.util.Map;

/**
 * A returned knife, judged.
 *
 * @param knife the knife
 * @param home where it lived, its year as it repeats
 * @param history what became of it
 * @param verdict whose affair it is
 * @param sure chance of the cause that the verdict names; 0 where it names none
 * @param rows every measured step
 * @param chances every cause that was tried, the likeliest first
 * @param retrue how to true it up
 * @param year what the knife does in that place with everything at its value: for what may have let go
 * @param course the edge through the year where it lives: lowest, usual and highest of nine in ten samples as usual
 * @param thinsOverFree how far the glued scale thins over what the free movement of its thickness makes
 * @param samples how many draws were made for each cause
 * @param effectiveSamples how many of all draws the answer rests on
 * @param findings choices that it rests on
 */
public record Claim(
        FullTangKnife knife,
        Destination home,
        KnifeHistory history,
        ClaimVerdict verdict,
        double sure,
        List<ClaimRow> rows,
        List<CauseChance> chances,
        ReTrue retrue,
        FitYear year,
        List<Band> course,
        double thinsOverFree,
        int samples,
        double effectiveSamples,
        List<Finding> findings) {

    /** A step that is smaller is none where it may be misread by as much, m (a judgement). */
    private static final double CALIPER = 0.05e-3;

    /** Causes less likely than that are not named. */
    public static final double WORTH_NAMING = 0.15;

    /** Keeps its own copies. */
    public Claim {
        rows = List.copyOf(rows);
        chances = List.copyOf(chances);
        course = List.copyOf(course);
        findings = List.copyOf(findings);
    }

    /** Whether the weather alone explains every step. */
    public boolean consistent() {
        return rows.stream().allMatch(ClaimRow::consistent);
    }

    /** True where the verdict says what it was. */
    public boolean namesACause() {
        return verdict.namesACause();
    }

    /** What may have acted besides the one that the verdict names, with the chance that it did; none where it names two. */
    public Map<Cause.Kind, Double> besides() {
        return ClaimRule.besides(verdict, chances);
    }

    /** Whether what the verdict names may be part of the truth only, another cause having acted too. */
    public boolean mayBeInPart() {
        return ClaimRule.inPart(verdict, chances);
    }

    /** Whether what was measured lies at the edge of what the weather does, not far beyond. */
    public boolean isBorderline() {
        return rows.stream().allMatch(row -> row.asFarOut() >= ClaimRows.UNHEARD_OF / rows.size());
    }

    /** True where someone or something but the weather is named or in question. */
    public boolean isInQuestion() {
        return verdict == ClaimVerdict.OPEN || (verdict.namesACause() && verdict != ClaimVerdict.WEATHER);
    }

    /** True where the weather explains what was measured, and no step is larger than a good caliper may misread it by. */
    public boolean isFlush() {
        return verdict == ClaimVerdict.WEATHER
                && rows.stream()
                        .map(ClaimRow::measured)
                        .allMatch(step -> Math.abs(step.step().metres())
                                <= Math.min(CALIPER, step.error().metres()));
    }

    /** Ids of events that were suspected and would not show in what was measured. */
    public List<String> suspectedInVain() {
        List<String> shown =
                events().stream().map(event -> event.cause().event()).toList();
        return history.suspected().stream()
                .distinct()
                .filter(id -> !shown.contains(id))
                .toList();
    }

    /** Whether its edge hardly goes anywhere in that place. */
    public boolean isStill() {
        return retrue.shyAfter().value() + retrue.proudAfter().value() < ReTrueAdviser.HARDLY;
    }

    /** The likelier causes: those that the verdict stands on. */
    public List<CauseChance> leading() {
        return chances.stream().filter(chance -> chance.after() >= WORTH_NAMING).toList();
    }

    /** Every event by itself, with the chance that it happened, whatever else was off; the likeliest first. */
    public List<CauseChance> events() {
        return CauseChance.events(chances);
    }

    /** The row that people ask about: the step furthest out for its error. */
    public ClaimRow main() {
        return rows.stream().max((a, b) -> Double.compare(weight(a), weight(b))).orElseThrow();
    }

    private static double weight(ClaimRow row) {
        return Math.abs(row.measured().step().metres()) / row.measured().deviationMetres();
    }
}
