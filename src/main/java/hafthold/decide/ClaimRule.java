package hafthold.decide;

import hafthold.simulate.Cause;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How chances become a verdict; every threshold is a judgement. */
final class ClaimRule {
    /** From there on a cause is named. */
    private static final double NAMED = 0.6;

    /** And only where it is so many times as likely as the next, the weather aside. */
    private static final double TIMES_THE_NEXT = 4;

    /** From there on the weather is what it is, where it is consistent too. */
    private static final double RATHER = 0.5;

    /** Or from there on, where what was measured spoke for it: events that are suspected and leave no trace do not count. */
    private static final double LIKELIEST = 0.4;

    /** Readings that the causes leave further off than that, in errors of measuring, do not go together. */
    private static final double APART = 1.6;

    /** Effective draws below which what they leave over may be for want of draws. */
    private static final double FEWEST_DRAWS = 10;

    private static final Cause.Kind BOTH = Cause.Kind.FINISH_AND_PLACE;

    private static final Set<Cause.Kind> ALIKE = EnumSet.of(Cause.Kind.FINISH, Cause.Kind.PLACE);

    private ClaimRule() {}

    /**
     * Whose affair it is.
     *
     * @param rows what was measured
     * @param chances every cause
     * @param onlyAtHome whether nothing was measured at rest on the bench: then a finish that is off and a home that is look
     *     alike, and none of them is named
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
        boolean spokeForIt = weather >= LIKELIEST
                && weather
                        >= chances.stream()
                                .filter(chance -> chance.cause().kind() == Cause.Kind.WEATHER)
                                .mapToDouble(CauseChance::before)
                                .sum();
        if (rows.stream().allMatch(ClaimRow::consistent) && (weather >= RATHER || spokeForIt)) {
            return ClaimVerdict.WEATHER;
        }
        double finish = chance(chances, Cause.Kind.FINISH);
        double place = chance(chances, Cause.Kind.PLACE);
        double both = chance(chances, BOTH);
        double use = chance(chances, Cause.Kind.USE);
        if (isNamed(chances, Cause.Kind.USE, use, finish + place + both)) {
            return ClaimVerdict.USE;
        }
        if (onlyAtHome) {
            return ClaimVerdict.OPEN;
        }
        if (isNamed(chances, BOTH, both, Math.max(use, Math.max(finish, place)))) {
            return ClaimVerdict.FINISH_AND_PLACE;
        }
        if (isNamed(chances, Cause.Kind.FINISH, finish + both, Math.max(use, place))) {
            return ClaimVerdict.FINISH;
        }
        return isNamed(chances, Cause.Kind.PLACE, place + both, Math.max(use, finish))
                ? ClaimVerdict.PLACE
                : ClaimVerdict.OPEN;
    }

    /** Whether a cause is likely enough, so much likelier than the next, and explains what was measured. */
    private static boolean isNamed(List<CauseChance> chances, Cause.Kind kind, double chance, double next) {
        boolean fits = chances.stream()
                .filter(one -> one.cause().kind() == kind
                        || (ALIKE.contains(kind) && one.cause().kind() == BOTH))
                .anyMatch(CauseChance::fits);
        return fits && chance >= NAMED && chance >= TIMES_THE_NEXT * next;
    }

    /** Chance of the cause that the verdict names, alone or with another; 0 where it names none. */
    static double sure(ClaimVerdict verdict, List<CauseChance> chances) {
        return switch (verdict) {
            case OPEN, NOT_EXPLAINED -> 0;
            case FINISH, PLACE -> chance(chances, Cause.Kind.valueOf(verdict.name())) + chance(chances, BOTH);
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
