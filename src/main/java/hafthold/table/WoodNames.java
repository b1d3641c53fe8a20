package hafthold.table;

import hafthold.material.Family;
import hafthold.source.Message;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a name means that is no id: a listed wood by its name for people, or a wood that no table has, under its nearest
 * class.
 *
 * <ol>
 *   <li>CLASS:NAME takes the class; wood:NAME looks for the nearest one.
 *   <li>A name of {@code wood-names.csv} takes the class written there, or is the listed wood written there.
 *   <li>A slip of the pen beside a listed id is no new wood, and is refused.
 *   <li>A name with the kind of a listed wood in it (sessile oak, amboina wood) takes the class that most woods of that
 *       kind have.
 *   <li>Another name that says wood or burl takes the class of any wood; what does not say so is refused.
 * </ol>
 */
final class WoodNames {
    private static final String CLASS_MARK = ":";
    private static final String ANY_WOOD = "wood";
    private static final Set<String> WOOD_WORDS = Set.of("burl", "burr", "timber");
    private static final Message NOTHING_KNOWN = Message.of("wood-class.nothing-known");
    private static final int LONG_WORD = 6;

    private final Map<String, MaterialRow> rows;
    private final Map<String, String> classes = new LinkedHashMap<>();
    private final Map<String, String> otherNames = new LinkedHashMap<>();

    WoodNames(TableSet tables, Map<String, MaterialRow> rows) {
        this.rows = rows;
        for (CsvTable table :
                tables.read("wood-names.csv", List.of("name", "wood_class", "source", "locator", "evidence"))) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                String woodClass = row.required("wood_class");
                String name = keys.once(row, "name", row.required("name"));
                row.evidence();
                if (isListedWood(woodClass)) {
                    otherNames.put(name, woodClass);
                } else if (woodClasses().contains(woodClass)) {
                    classes.put(name, woodClass);
                } else {
                    throw row.fault("wood_class", NearestWord.oneOf(woodClass, List.copyOf(woodClasses())));
                }
            }
        }
    }

    private boolean isListedWood(String id) {
        MaterialRow row = rows.get(id);
        return row != null && row.family() == Family.WOOD && row.role().equals("scale");
    }

    /** The listed wood that people call so: "black walnut", "Walnut, black", "sessile oak" for European oak. */
    Optional<MaterialRow> listed(String typed) {
        String other = otherNames.get(String.join("-", words(typed)));
        if (other != null) {
            return Optional.of(rows.get(other));
        }
        Set<String> words = Set.copyOf(words(typed));
        return rows.values().stream()
                .filter(row -> row.family() == Family.WOOD)
                .filter(row -> row.name().equalsIgnoreCase(typed.strip())
                        || Set.copyOf(words(row.id())).equals(words))
                .findFirst();
    }

    /** The wood that no table has; empty where the name is a slip of the pen or does not say wood. */
    Optional<UnlistedWood> unlisted(String typed) {
        int mark = typed.indexOf(CLASS_MARK);
        if (mark < 0) {
            return known(typed)
                    .or(() -> misspelt(typed)
                            ? Optional.empty()
                            : likeListed(typed).or(() -> saysWood(typed)));
        }
        String woodClass = typed.substring(0, mark).strip();
        String name = typed.substring(mark + 1).strip();
        if (!woodClasses().contains(woodClass)) {
            throw new UnknownIdException(
                    "class of wood", woodClass, woodClasses(), "classes are " + String.join(", ", woodClasses()));
        }
        if (!woodClass.equals(ANY_WOOD)) {
            return Optional.of(wood(typed, name, woodClass, Message.of("wood-class.as-said")));
        }
        return known(name)
                .or(() -> likeListed(name))
                .map(near -> wood(typed, name, near.woodClass().id(), near.why()))
                .or(() -> Optional.of(wood(typed, name, ANY_WOOD, NOTHING_KNOWN)));
    }

    private Optional<UnlistedWood> known(String typed) {
        String id = String.join("-", words(typed));
        Collection<String> words = words(typed);
        return Optional.ofNullable(classes.get(id))
                .or(() -> words.stream()
                        .map(classes::get)
                        .filter(found -> found != null)
                        .findFirst())
                .map(woodClass -> wood(typed, typed, woodClass, Message.of("wood-class.remembered")));
    }

    private Optional<UnlistedWood> likeListed(String typed) {
        Map<String, List<MaterialRow>> kinds = rows.values().stream()
                .filter(row -> row.family() == Family.WOOD && row.role().equals("scale"))
                .collect(Collectors.groupingBy(row -> words(row.id()).get(0), TreeMap::new, Collectors.toList()));
        for (String word : words(typed)) {
            for (Map.Entry<String, List<MaterialRow>> kind : kinds.entrySet()) {
                if (alike(word, kind.getKey())) {
                    return Optional.of(wood(
                            typed,
                            typed,
                            commonest(kind.getValue()),
                            Message.of("wood-class.like", Map.of("kind", Message.verbatim(kind.getKey())))));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<UnlistedWood> saysWood(String typed) {
        return words(typed).stream()
                .filter(word -> word.endsWith(ANY_WOOD) || WOOD_WORDS.contains(word))
                .findFirst()
                .map(word -> wood(typed, typed, ANY_WOOD, NOTHING_KNOWN));
    }

    private UnlistedWood wood(String typed, String name, String woodClass, Message why) {
        String id = typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-");
        return new UnlistedWood(id, String.join(" ", words(name)), rows.get(woodClass), why);
    }

    private boolean misspelt(String typed) {
        return NearestWord.isSlip(String.join("-", words(typed)), rows.keySet());
    }

    private static boolean alike(String word, String kind) {
        return word.equals(kind)
                || (Math.min(word.length(), kind.length()) >= LONG_WORD && NearestWord.isSlip(word, List.of(kind)));
    }

    /** The class that most of these woods have; of equals the first by name. */
    private String commonest(List<MaterialRow> woods) {
        return woods.stream()
                .map(this::classOf)
                .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    private String classOf(MaterialRow wood) {
        MaterialRow row = wood;
        while (!row.role().equals("class")) {
            row = rows.get(row.basedOn());
        }
        return row.id();
    }

    private Set<String> woodClasses() {
        return rows.values().stream()
                .filter(row -> row.family() == Family.WOOD && row.role().equals("class"))
                .map(MaterialRow::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> words(String name) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
