package hafthold.decide;

import hafthold.decide.ClaimTrials.Truth;
import hafthold.simulate.Cause.Kind;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Counts of verdicts on knives whose truth is known. */
final class ClaimTally {
    private static final double CERTAIN = 0.95;
    private static final double VERY_LIKELY = 0.8;

    private final Map<String, Integer> verdicts = new TreeMap<>();
    private final Map<String, int[]> bySureness = new TreeMap<>();
    private int wrong;
    private int wrongAndAsGoodAsCertain;
    private int tooFew;
    private double foretoldWrong;

    void add(Truth truth, WeighedClaim claim) {
        boolean inPart = ClaimRule.inPart(claim.verdict(), claim.chances());
        verdicts.merge(word(claim, inPart), 1, Integer::sum);
        Set<Kind> named = named(claim.verdict());
        if (named.isEmpty()) {
            return;
        }
        boolean right = truth.acted().containsAll(named);
        int[] counts = bySureness.computeIfAbsent(sureness(claim.sure()), any -> new int[2]);
        counts[right ? 0 : 1]++;
        foretoldWrong += 1 - claim.sure();
        if (!right) {
            wrong++;
            wrongAndAsGoodAsCertain += claim.sure() >= CERTAIN ? 1 : 0;
        } else if (!inPart && truth.acted().size() > named.size()) {
            tooFew++;
        }
    }

    private static String word(WeighedClaim claim, boolean inPart) {
        return claim.verdict().word() + (inPart ? " in part" : "");
    }

    private static String sureness(double sure) {
        return sure >= CERTAIN ? "as good as certain" : sure >= VERY_LIKELY ? "very likely" : "likely";
    }

    private static Set<Kind> named(ClaimVerdict verdict) {
        Set<Kind> named = EnumSet.noneOf(Kind.class);
        for (Kind kind : new Kind[] {Kind.FINISH, Kind.PLACE, Kind.USE}) {
            if (verdict.name().contains(kind.name())) {
                named.add(kind);
            }
        }
        return named;
    }

    /** Verdicts that name one that did not act. */
    int wrong() {
        return wrong;
    }

    /** The same, said to be as good as certain. */
    int wrongAndAsGoodAsCertain() {
        return wrongAndAsGoodAsCertain;
    }

    /** How many of them are wrong by the chances they state. */
    double foretoldWrong() {
        return foretoldWrong;
    }

    /** Verdicts said to be as good as certain. */
    int asGoodAsCertain() {
        int[] counts = bySureness.getOrDefault("as good as certain", new int[2]);
        return counts[0] + counts[1];
    }

    /** Verdicts that name one or two. */
    int named() {
        return bySureness.values().stream()
                .mapToInt(counts -> counts[0] + counts[1])
                .sum();
    }

    /** Verdicts that name one of two and do not say that it may be part of it only. */
    int tooFew() {
        return tooFew;
    }

    /** Verdicts of a kind. */
    int of(ClaimVerdict verdict) {
        return verdicts.entrySet().stream()
                .filter(entry ->
                        entry.getKey().equals(verdict.word()) || entry.getKey().equals(verdict.word() + " in part"))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(verdicts.toString());
        bySureness.forEach((sure, counts) ->
                text.append(String.format(Locale.ROOT, "; %s: %d right, %d wrong", sure, counts[0], counts[1])));
        text.append(String.format(Locale.ROOT, "; wrong %d, by their own chances %.1f", wrong, foretoldWrong));
        return text.append("; one of two without a word of the other: ")
                .append(tooFew)
                .toString();
    }
}
