package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Picks the answers that get a sentence or a line of their own. */
final class ChosenAnswers {
    private static final int NAMED_LINES = 2;
    private static final int SHORT_LIST = 6;

    private ChosenAnswers() {}

    /** Answers whose movement is known, best first. */
    static List<Ranked> judged(Comparison comparison) {
        return comparison.ranked().stream().filter(Ranked::isMovementKnown).toList();
    }

    /** Every cut of the named material. */
    static List<Ranked> named(Comparison comparison, Optional<String> materialId) {
        return comparison.ranked().stream()
                .filter(answer ->
                        materialId.equals(Optional.of(answer.year().scale().id())))
                .toList();
    }

    /** Answers that get a sentence: the best, the worst that can be judged, the named material; each once. */
    static List<Ranked> spokenOf(Comparison comparison, Optional<String> materialId) {
        List<Ranked> judged = judged(comparison);
        Set<Ranked> spoken = new LinkedHashSet<>();
        if (!judged.isEmpty()) {
            spoken.add(judged.get(0));
            spoken.add(judged.get(judged.size() - 1));
        }
        spoken.addAll(named(comparison, materialId));
        return List.copyOf(spoken);
    }

    /** Answers of a short list that get no sentence: each gets a line with what decides. */
    static List<Ranked> inBrief(Comparison comparison, Optional<String> materialId) {
        List<Ranked> spoken = spokenOf(comparison, materialId);
        return comparison.ranked().size() > SHORT_LIST
                ? List.of()
                : comparison.ranked().stream()
                        .filter(answer -> !spoken.contains(answer))
                        .toList();
    }

    /**
     * Answers that get a line in a picture: the named material first (two cuts at most), then the worst, the best, and
     * others evenly from between; with nothing to judge, the first of all.
     */
    static List<Ranked> drawn(Comparison comparison, Optional<String> materialId, int most) {
        List<Ranked> judged = judged(comparison);
        Set<Ranked> drawn = new LinkedHashSet<>();
        named(comparison, materialId).stream().limit(NAMED_LINES).forEach(drawn::add);
        if (judged.isEmpty()) {
            comparison.ranked().forEach(drawn::add);
        } else {
            drawn.add(judged.get(judged.size() - 1));
            drawn.add(judged.get(0));
            int parts = most - drawn.size() + 1;
            for (int i = parts - 1; i > 0; i--) {
                drawn.add(judged.get(i * (judged.size() - 1) / parts));
            }
        }
        return drawn.stream().limit(most).toList();
    }

    /** All answers where there are no more than so many; else the named material and others evenly down the ranking. */
    static List<Ranked> sample(Comparison comparison, Optional<String> materialId, int most) {
        List<Ranked> all = comparison.ranked();
        if (all.size() <= most) {
            return all;
        }
        Set<Ranked> shown = new LinkedHashSet<>(
                named(comparison, materialId).stream().limit(most / 2).toList());
        int steps = most - shown.size() - 1;
        for (int i = 0; i <= steps; i++) {
            shown.add(all.get((int) ((long) i * (all.size() - 1) / steps)));
        }
        return all.stream().filter(shown::contains).toList();
    }
}
