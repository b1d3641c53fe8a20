package hafthold.decide;

import hafthold.simulate.Cause;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** How chances become a verdict; every threshold is a judgement. */
final class ClaimRule {
    /** From there on one cause is named alone. */
    private static final double NAMED_ALONE = 0.6;

    /** And only where it is so many times as likely as the next, the weather aside. */
    private static final double TIMES_THE_NEXT = 4;

    /** From there on the weather is what it is, where it is consistent too. */
    private static final double RATHER = 0.5;

    /** Readings that the causes leave further off than that, in errors of measuring, do not go together. */
    private static final double APART = 1.6;

    /** Effective draws below which what they leave over may be for want of draws. */
    private static final double FEWEST_DRAWS = 10;

    private static final Set<Cause.Kind> ALIKE = EnumSet.of(Cause.Kind.FINISH, Cause.Kind.PLACE);

    private ClaimRule() {}

    /**
     * Whose affair it is.
     *
     * @param rows what was measured
     * @param chances every cause
     * @param onlyAtHome whether nothing was measured at rest on the bench: then a finish that is off and a home that is look
     *     alike, and neither is named
     * @param draws effective draws that the answer rests on; where they are few, what is left over tells nothing
     */
    static ClaimVerdict verdict(List<ClaimRow> rows, List<CauseChance> chances, boolean onlyAtHome, double draws) {
        boolean apart = draws >= FEWEST_DRAWS
                && rows.stream()
                        .anyMatch(row -> Math.abs(row.of(ClaimRow.Part.REST).value())
                                > APART * row.measured().error().metres());
        if (apart || chances.stream().noneMatch(CauseChance::fits)) {
            return ClaimVerdict.NOT_EXPLAINED;
        }
        double weather = chance(chances, Cause.Kind.WEATHER);
        if (rows.stream().allMatch(ClaimRow::consistent) && weather >= RATHER) {
            return ClaimVerdict.WEATHER;
        }
        List<Cause.Kind> others = Stream.of(Cause.Kind.values())
                .filter(kind -> kind != Cause.Kind.WEATHER)
                .sorted(Comparator.comparingDouble((Cause.Kind kind) -> -chance(chances, kind)))
                .toList();
        double first = chance(chances, others.get(0));
        boolean fits = chances.stream().anyMatch(chance -> chance.cause().kind() == others.get(0) && chance.fits());
        boolean alone = fits && first >= NAMED_ALONE && first >= TIMES_THE_NEXT * chance(chances, others.get(1));
        boolean alike = onlyAtHome && ALIKE.contains(others.get(0));
        return alone && !alike ? ClaimVerdict.valueOf(others.get(0).name()) : ClaimVerdict.OPEN;
    }

    /** Chance of the cause that the verdict names; 0 where it names none. */
    static double sure(ClaimVerdict verdict, List<CauseChance> chances) {
        return switch (verdict) {
            case OPEN, NOT_EXPLAINED -> 0;
            default -> chance(chances, Cause.Kind.valueOf(verdict.name()));
        };
    }

    private static double chance(List<CauseChance> chances, Cause.Kind kind) {
        return chances.stream()
                .filter(chance -> chance.cause().kind() == kind)
                .mapToDouble(CauseChance::after)
                .sum();
    }
}
