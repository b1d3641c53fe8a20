package hafthold.table;

import hafthold.material.Family;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Materials by the words people use: "red deer" for antler-red-deer, "linen laminate" for two grades of it. A word counts
 * where it stands in a row's id, name or family; what a row says in detail can only make a name doubtful. Woods have rules
 * of their own ({@link WoodNames}).
 */
final class SpokenNames {
    private static final Set<Family> OTHER_RULES = Set.of(Family.WOOD, Family.TREATED_WOOD, Family.HYBRID);
    private static final Set<String> SCALES = Set.of("scale", "class");
    /** Shorter ones tell too little by themselves, unless they hold a figure, as g10 does. */
    private static final int TELLING_WORD = 4;

    private static final int MOST_NAMED = 4;

    private final Collection<MaterialRow> rows;
    private List<Spoken> spoken = List.of();

    private record Spoken(MaterialRow row, Set<String> name, Set<String> detail) {
        static Spoken of(MaterialRow row) {
            return new Spoken(
                    row, words(row.id() + " " + row.name() + " " + row.family().word()), words(row.detail()));
        }

        boolean isNamed(Set<String> said) {
            return name.containsAll(said);
        }

        boolean isMeant(Set<String> said) {
            return said.stream().allMatch(word -> name.contains(word) || detail.contains(word));
        }
    }

    /** Reads the rows when it is first asked. */
    SpokenNames(Collection<MaterialRow> rows) {
        this.rows = rows;
    }

    /** The one scale material that is named by all the words typed; empty where others may be meant. */
    Optional<MaterialRow> only(String typed) {
        List<MaterialRow> found = meant(typed);
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** Which of a few may be meant, as a clause of a message; empty where none is named so, or too many are. */
    Optional<String> hint(String typed) {
        List<MaterialRow> found = meant(typed);
        return found.isEmpty() || found.size() > MOST_NAMED
                ? Optional.empty()
                : Optional.of(found.stream()
                        .map(row -> row.id() + " (" + row.name() + ")")
                        .collect(Collectors.joining(" or ", "; did you mean ", "?")));
    }

    /** Everything that has all the words; nothing where none is named by them, or something that is no scale is. */
    private List<MaterialRow> meant(String typed) {
        Set<String> said = words(typed);
        if (said.stream().noneMatch(SpokenNames::isTelling)) {
            return List.of();
        }
        List<Spoken> found =
                spoken().stream().filter(words -> words.isMeant(said)).toList();
        List<Spoken> named = found.stream().filter(words -> words.isNamed(said)).toList();
        return named.isEmpty()
                        || !named.stream()
                                .allMatch(words -> SCALES.contains(words.row().role()))
                ? List.of()
                : found.stream().map(Spoken::row).toList();
    }

    private synchronized List<Spoken> spoken() {
        if (spoken.isEmpty()) {
            spoken = rows.stream()
                    .filter(row -> !OTHER_RULES.contains(row.family()))
                    .map(Spoken::of)
                    .toList();
        }
        return spoken;
    }

    private static boolean isTelling(String word) {
        return word.length() >= TELLING_WORD || word.chars().anyMatch(Character::isDigit);
    }

    private static Set<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toUnmodifiableSet());
    }
}
