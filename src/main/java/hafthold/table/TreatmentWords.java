package hafthold.table;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A treatment that people put before the name of a wood: "stabilised walnut", "oiled olive" (words of the trade, common
 * practice, no source).
 *
 * @param word as it was typed
 * @param treatment id of the treatment that it means
 * @param wood the rest of the name
 */
record TreatmentWords(String word, String treatment, String wood) {
    private static final Map<String, String> TREATMENTS = Map.of(
            "stabilised", "lumen-resin",
            "stabilized", "lumen-resin",
            "acetylated", "acetylated",
            "furfurylated", "furfurylated",
            "oiled", "oil-soaked");

    /** The first such word in a name; empty where there is none, or nothing beside it. */
    static Optional<TreatmentWords> in(String typed) {
        String[] words = typed.strip().toLowerCase(Locale.ROOT).split("[\\s-]+");
        return Arrays.stream(words)
                .filter(TREATMENTS::containsKey)
                .findFirst()
                .map(word -> new TreatmentWords(
                        word,
                        TREATMENTS.get(word),
                        Arrays.stream(words)
                                .filter(other -> !other.equals(word))
                                .collect(Collectors.joining(" "))))
                .filter(found -> !found.wood().isEmpty());
    }

    /** How it is written, for a message. */
    String written(String woodId) {
        return "; " + word + " wood is written WOOD+" + treatment + ", such as " + woodId + "+" + treatment;
    }
}
