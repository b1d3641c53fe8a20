package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
        Picked spoken = new Picked();
        if (!judged.isEmpty()) {
            spoken.add(judged.get(0));
            spoken.add(judged.get(judged.size() - 1));
        }
        named(comparison, materialId).forEach(spoken::add);
        return spoken.inOrder();
    }

    /** Answers of a short list that get no sentence: each gets a line with what decides. */
    static List<Ranked> inBrief(Comparison comparison, Optional<String> materialId) {
        if (comparison.ranked().size() > SHORT_LIST) {
            return List.of();
        }
        Picked spoken = new Picked();
        spokenOf(comparison, materialId).forEach(spoken::add);
        return comparison.ranked().stream()
                .filter(answer -> !spoken.has(answer))
                .toList();
    }

    /**
     * Answers that get a line in a picture: the named material first (two cuts at most), then the worst, the best, and
     * others evenly from between; with nothing to judge, the first of all.
     */
    static List<Ranked> drawn(Comparison comparison, Optional<String> materialId, int most) {
        List<Ranked> judged = judged(comparison);
        Picked drawn = new Picked();
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
        return drawn.inOrder().stream().limit(most).toList();
    }

    /** All answers where there are no more than so many; else the named material and others evenly down the ranking. */
    static List<Ranked> sample(Comparison comparison, Optional<String> materialId, int most) {
        List<Ranked> all = comparison.ranked();
        if (all.size() <= most) {
            return all;
        }
        Picked shown = new Picked();
        named(comparison, materialId).stream().limit(most / 2).forEach(shown::add);
        int steps = most - shown.size() - 1;
        for (int i = 0; i <= steps; i++) {
            shown.add(all.get((int) ((long) i * (all.size() - 1) / steps)));
        }
        return all.stream().filter(shown::has).toList();
    }

    /** Answers of one comparison, each once: two are the same where they have the same rank. */
    private static final class Picked {
        private final Map<Integer, Ranked> byRank = new LinkedHashMap<>();

        void add(Ranked answer) {
            byRank.putIfAbsent(answer.rank(), answer);
        }

        boolean has(Ranked answer) {
            return byRank.containsKey(answer.rank());
        }

        int size() {
            return byRank.size();
        }

        List<Ranked> inOrder() {
            return List.copyOf(byRank.values());
        }
    }
}
