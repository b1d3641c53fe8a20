package hafthold.report;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * School grade of a text after Kincaid, Fishburne, Rogers and Chissom 1975, "Derivation of new readability formulas for
 * Navy enlisted personnel", Research Branch Report 8-75: 0.39 words a sentence + 11.8 syllables a word - 15.59 (the
 * coefficients from memory).
 *
 * <p>Syllables are counted as groups of vowels, less a silent e at the end, ia and ua apart; a number in figures counts as one.
 */
record FleschKincaid(int sentences, int words, int syllables) {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\d][\\p{L}\\d.,'’-]*");
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    static FleschKincaid of(String text) {
        int words = 0;
        int syllables = 0;
        for (Matcher word = WORD.matcher(text); word.find(); ) {
            words++;
            syllables += syllables(word.group());
        }
        int sentences =
                (int) Pattern.compile("[.!?:](?=\\s|$)").matcher(text).results().count();
        return new FleschKincaid(Math.max(1, sentences), words, syllables);
    }

    double grade() {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    static int syllables(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        if (plain.length() > 3 && plain.matches(".*[^aeiouytdl](es|ed)")) {
            plain = plain.substring(0, plain.length() - 2);
        } else if (plain.length() > 2 && plain.matches(".*[^aeiouyl]e")) {
            plain = plain.substring(0, plain.length() - 1);
        }
        long apart = Pattern.compile("(?<!q)ua|ia").matcher(plain).results().count();
        return Math.max(1, (int) (VOWELS.matcher(plain).results().count() + apart));
    }
}
