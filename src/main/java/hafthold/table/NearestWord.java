package hafthold.table;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds what was probably meant by a word that is not on the list. */
public final class NearestWord {
    private static final int LONG_WORD = 8;
    private static final int MEANT_WORD = 4;

    private NearestWord() {}

    /**
     * The word of a list with the fewest letters to change, ties in alphabetical order; empty when more than half of
     * the letters would change.
     */
    public static Optional<String> of(String typed, Collection<String> words) {
        String wanted = typed.toLowerCase(Locale.ROOT).replace(' ', '-');
        return words.stream()
                .min(Comparator.comparingInt((String word) -> distance(wanted, word))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(word -> (word.contains(wanted) && !wanted.isEmpty())
                        || distance(wanted, word) <= Math.max(wanted.length(), word.length()) / 2);
    }

    /**
     * The id of a long list that was probably meant: one with no more than a third of its letters to change, or one that
     * holds what was typed; else one with the most words in common. Empty rather than something far off.
     */
    public static Optional<String> among(String typed, Collection<String> ids) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        Comparator<String> nearest =
                Comparator.comparingInt((String id) -> distance(wanted, id)).thenComparing(Comparator.naturalOrder());
        return ids.stream()
                .min(nearest)
                .filter(id -> id.contains(wanted) || distance(wanted, id) <= Math.max(1, wanted.length() / 3))
                .or(() -> ids.stream()
                        .filter(id -> common(wanted, id) > 0)
                        .min(Comparator.comparingLong((String id) -> -common(wanted, id))
                                .thenComparing(nearest)));
    }

    /** Words of at least four letters that both have. */
    private static long common(String one, String other) {
        List<String> words = List.of(other.split("[-+]", -1));
        return Arrays.stream(one.split("[-+]", -1))
                .filter(word -> word.length() >= MEANT_WORD && words.contains(word))
                .count();
    }

    /**
     * True where a word is most likely a slip of the pen beside one of a list, or a part of one: two letters changed, one
     * in a word of fewer than eight.
     */
    static boolean isSlip(String typed, Collection<String> words) {
        String wanted = typed.toLowerCase(Locale.ROOT).replace(' ', '-');
        return words.stream()
                .anyMatch(word -> (word + '-').startsWith(wanted + '-')
                        || ('-' + word).endsWith('-' + wanted)
                        || letters(wanted, word) <= (Math.min(wanted.length(), word.length()) < LONG_WORD ? 1 : 2)
                        || (word.indexOf('-') > 0 && letters(wanted, word.substring(0, word.indexOf('-'))) <= 1));
    }

    /** "one of a, b, c", and what was probably meant. */
    static String oneOf(String typed, List<String> words) {
        String list = "one of " + String.join(", ", words);
        return of(typed, words)
                .map(near -> list + "; did you mean " + near + "?")
                .orElse(list);
    }

    /**
     * Letters to insert, drop or replace; an ending, or a part of a kebab-case word, that was left out costs a quarter
     * of its letters.
     */
    private static int distance(String from, String to) {
        int nearest = to.startsWith(from) ? (to.length() - from.length()) / 4 : letters(from, to);
        for (int dash = to.indexOf('-'); dash >= 0; dash = to.indexOf('-', dash + 1)) {
            nearest = Math.min(nearest, letters(from, to.substring(0, dash)) + (to.length() - dash) / 4);
            nearest = Math.min(nearest, letters(from, to.substring(dash + 1)) + dash / 4);
        }
        return nearest;
    }

    /** Levenshtein distance. */
    private static int letters(String from, String to) {
        int[] above = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int[] row = new int[to.length() + 1];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int replace = above[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replace, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[to.length()];
    }
}
