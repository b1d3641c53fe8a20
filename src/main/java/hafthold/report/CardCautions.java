package hafthold.report;

import hafthold.source.Finding;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Which of a material's cautions concern whoever owns the knife, from the words of the table's rows: the table speaks to
 * the bench, the card says the same to the customer.
 */
enum CardCautions {
    /** Something that comes loose. */
    LOOSE("loose handle"),
    /** Food and what soaks it up. */
    FOOD("food"),
    /** Protected species, ivory, export. */
    PROTECTED("\\blaws?\\b(?<!food law)|papers|rules|export"),
    /** Softens or lets go in heat. */
    HEAT("soften|dishwasher"),
    /** Skin that does not bear a metal. */
    NICKEL("nickel"),
    /** Lead in brass. */
    LEAD("\\blead\\b"),
    /** Dust, for one who sands it himself. */
    DUST("dust|mask|spores");

    private final Pattern words;

    CardCautions(String words) {
        this.words = Pattern.compile(words);
    }

    /** Key of its text. */
    String key() {
        return "caution." + name().toLowerCase(Locale.ROOT);
    }

    /** Those that a list of cautions touches, in the order of this list. */
    static List<CardCautions> among(List<Finding> findings) {
        return Arrays.stream(values())
                .filter(caution -> findings.stream()
                        .filter(finding -> finding.kind() == Finding.Kind.CAUTION)
                        .anyMatch(finding -> caution.words
                                .matcher(BenchStyle.ENGLISH
                                        .tell(finding.message())
                                        .toLowerCase(Locale.ROOT))
                                .find()))
                .toList();
    }
}
