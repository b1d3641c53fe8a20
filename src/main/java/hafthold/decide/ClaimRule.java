package hafthold.decide;

import hafthold.simulate.Cause.Kind;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

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

    /** A second cause less likely than that is not said to add to the one that is named. */
    private static final double MAY_ADD = 0.05;

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
        double weather = chance(chances, Kind.WEATHER);
        boolean spokeForIt = weather >= LIKELIEST
                && weather
                        >= chances.stream()
                                .filter(chance -> chance.cause().kind() == Kind.WEATHER)
                                .mapToDouble(CauseChance::before)
                                .sum();
        if (rows.stream().allMatch(ClaimRow::consistent) && (weather >= RATHER || spokeForIt)) {
            return ClaimVerdict.WEATHER;
        }
        // Two at once come first: each of the two would be named by itself.
        return (onlyAtHome ? Stream.of(Kind.USE) : Arrays.stream(Kind.values()))
                .filter(kind -> kind != Kind.WEATHER && isNamed(chances, kind))
                .max(Comparator.<Kind>comparingInt(kind -> kind.both().size())
                        .thenComparing(kind -> including(chances, kind)))
                .map(ClaimVerdict::naming)
                .orElse(ClaimVerdict.OPEN);
    }

    /**
     * Whether a cause is likely enough, alone or with another, so much likelier than the next that does without it, and
     * explains what was measured.
     */
    private static boolean isNamed(List<CauseChance> chances, Kind kind) {
        double chance = including(chances, kind);
        double next = Arrays.stream(Kind.values())
                .filter(other -> other != Kind.WEATHER && !other.includes(kind))
                .mapToDouble(other -> chance(chances, other))
                .max()
                .orElse(0);
        boolean fits = chances.stream()
                .filter(one -> one.cause().kind().includes(kind))
                .anyMatch(CauseChance::fits);
        return fits && chance >= NAMED && chance >= TIMES_THE_NEXT * next;
    }

    /** Chance of the cause that the verdict names, alone or with another; 0 where it names none. */
    static double sure(ClaimVerdict verdict, List<CauseChance> chances) {
        return verdict.kind().map(kind -> including(chances, kind)).orElse(0.0);
    }

    /** What may have acted besides the one that a verdict names, with the chance of both; none where it names two. */
    static Map<Kind, Double> besides(ClaimVerdict verdict, List<CauseChance> chances) {
        Map<Kind, Double> besides = new EnumMap<>(Kind.class);
        verdict.kind().ifPresent(named -> {
            for (Kind two : Kind.values()) {
                if (two.both().contains(named)) {
                    two.both().stream()
                            .filter(other -> other != named)
                            .forEach(other -> besides.put(other, chance(chances, two)));
                }
            }
        });
        return besides;
    }

    /** Whether what the verdict names may be part of the truth only. */
    static boolean inPart(ClaimVerdict verdict, List<CauseChance> chances) {
        return besides(verdict, chances).values().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum()
                >= MAY_ADD;
    }

    private static double including(List<CauseChance> chances, Kind kind) {
        return Arrays.stream(Kind.values())
                .filter(other -> other.includes(kind))
                .mapToDouble(other -> chance(chances, other))
                .sum();
    }

    private static double chance(List<CauseChance> chances, Kind kind) {
        return chances.stream()
                .filter(chance -> chance.cause().kind() == kind)
                .mapToDouble(CauseChance::after)
                .sum();
    }
}
