package hafthold.table;

import hafthold.knife.SizeRange;
import hafthold.knife.UnfitBuildException;
import hafthold.quantity.Length;
import hafthold.quantity.QuantityFormatException;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** One table of a TOML file; every getter names file, line and key when a value is not what was expected. */
final class TomlSection {
    private final String file;
    private final String path;
    private final TomlTable table;
    private final int line;
    private final List<Finding> findings;

    /**
     * Takes a table.
     *
     * @param file file name shown in messages
     * @param path key of the table, with a dot behind it; empty for the outermost
     * @param line where the table starts
     * @param findings takes up every default that is used
     */
    TomlSection(String file, String path, TomlTable table, int line, List<Finding> findings) {
        this.file = file;
        this.path = path;
        this.table = table;
        this.line = line;
        this.findings = findings;
    }

    /** Rejects the first key that is not on the list. */
    void allows(List<String> keys) {
        for (String key : table.keySet()) {
            if (!keys.contains(key)) {
                throw unknown(key, NearestWord.oneOf(key, keys));
            }
        }
    }

    /** What is wrong with a key that should not be here. */
    InvalidTableException unknown(String key, String expectation) {
        String here = path.isEmpty()
                ? "a key of a build file: "
                : "a key of [" + path.substring(0, path.length() - 1) + "]: ";
        return new InvalidTableException(file, lineOf(key), path + key, key, here + expectation);
    }

    /** True where the file has this key. */
    boolean has(String key) {
        return table.keySet().contains(key);
    }

    /** A table inside this one; without any key where the file has none. */
    TomlSection section(String key) {
        Object value = value(key);
        if (value == null) {
            return new TomlSection(file, path + key + ".", Toml.parse(""), line, findings);
        }
        if (!(value instanceof TomlTable inner)) {
            throw fault(key, "a table: a line [" + path + key + "] with its keys below");
        }
        return new TomlSection(file, path + key + ".", inner, lineOf(key), findings);
    }

    /** A list of tables inside this one; empty where the file has none. */
    List<TomlSection> sections(String key) {
        Object value = value(key);
        if (value == null) {
            return List.of();
        }
        List<TomlSection> sections = new ArrayList<>();
        if (value instanceof TomlArray list) {
            for (int i = 0; i < list.size(); i++) {
                String name = path + key + "[" + (i + 1) + "]";
                int at = list.inputPositionOf(i).line();
                if (!(list.get(i) instanceof TomlTable inner)) {
                    throw new InvalidTableException(
                            file, at, name, shown(list.get(i)), "a table, such as { key = \"value\" }");
                }
                sections.add(new TomlSection(file, name + ".", inner, at, findings));
            }
            return sections;
        }
        throw fault(key, "a list of tables: a line [[" + path + key + "]] for each, with its keys below");
    }

    /** A text that is not blank. */
    Optional<String> text(String key) {
        Object value = value(key);
        if (value == null) {
            return Optional.empty();
        }
        if (!(value instanceof String text)) {
            throw fault(key, "a text in quotes");
        }
        if (text.isBlank()) {
            throw fault(key, "a text that is not empty; leave the line out to say nothing");
        }
        return Optional.of(text);
    }

    /** One of a list of words. */
    <T> Optional<T> word(String key, Collection<T> meanings, Function<T, String> wordOf) {
        List<String> words = meanings.stream().map(wordOf).toList();
        return text(key)
                .map(typed -> meanings.stream()
                        .filter(meaning -> wordOf.apply(meaning).equals(typed))
                        .findFirst()
                        .orElseThrow(() -> fault(key, NearestWord.oneOf(typed, words))));
    }

    /** True or false. */
    Optional<Boolean> flag(String key) {
        Object value = value(key);
        if (value != null && !(value instanceof Boolean)) {
            throw fault(key, "true or false, without quotes");
        }
        return Optional.ofNullable((Boolean) value);
    }

    /** A quantity with its unit. */
    <T> Optional<T> quantity(String key, QuantityForm<T> form) {
        Object value = value(key);
        if (value == null) {
            return Optional.empty();
        }
        if (value instanceof Number) {
            throw fault(key, form.expectation() + "; the unit is missing");
        }
        if (!(value instanceof String typed)) {
            throw fault(key, form.expectation());
        }
        try {
            return Optional.of(form.parse().apply(typed));
        } catch (QuantityFormatException e) {
            throw fault(key, form.expectationInsteadOf(typed));
        } catch (IllegalArgumentException e) {
            throw fault(key, form.expectation());
        }
    }

    /** A quantity that passes a test; a number that would pass in another unit is pointed out. */
    <T> Optional<T> quantity(String key, QuantityForm<T> form, Predicate<T> passes, String words) {
        Optional<T> quantity = quantity(key, form);
        if (quantity.isPresent() && !passes.test(quantity.get())) {
            throw fault(
                    key,
                    words
                            + form.otherUnit(shown(value(key)), passes)
                                    .map(text -> "; did you mean \"" + text + "\"?")
                                    .orElse(""));
        }
        return quantity;
    }

    /** A length inside a range. */
    Optional<Length> length(String key, SizeRange range) {
        return quantity(key, QuantityForm.LENGTH, range::allows, range.words());
    }

    /** What must be in the file. */
    <T> T required(String key, Optional<T> given, String expectation) {
        return given.orElseThrow(() -> fault(key, expectation + "; it is missing"));
    }

    /** What the file says, or else a default, which is noted. */
    <T> T or(String key, Optional<T> given, T fallback, String what, String taken) {
        return orNone(key, given, what, taken).orElse(fallback);
    }

    /** What the file says, if anything; silence is noted with what it is taken to mean. */
    <T> Optional<T> orNone(String key, Optional<T> given, String what, String taken) {
        if (given.isEmpty()) {
            findings.add(new Finding(
                    Finding.Kind.DEFAULT,
                    path + key,
                    "The file says nothing of " + what + ", so " + taken + " is taken."));
        }
        return given;
    }

    /** The length the file gives, or else a default, which is noted. */
    Length or(String key, SizeRange range, Length fallback, String what) {
        return or(key, length(key, range), fallback, what, SizeRange.millimetres(fallback));
    }

    /** Builds a part of the knife from this table; what does not fit is named with its line. */
    <T> T build(Supplier<T> part) {
        try {
            return part.get();
        } catch (UnfitBuildException e) {
            throw faultAt(e.key(), e.value(), e.expectation());
        }
    }

    /** What is wrong with the value of a key of this table. */
    InvalidTableException fault(String key, String expectation) {
        return new InvalidTableException(file, lineOf(key), path + key, shown(value(key)), expectation);
    }

    /** What is wrong at a path below this table, such as {@code pins[2].along}. */
    InvalidTableException faultAt(String keyPath, String value, String expectation) {
        TomlPlace place = TomlPlace.find(table, line, keyPath);
        return new InvalidTableException(
                file,
                place.line(),
                path + keyPath,
                place.value().map(TomlSection::shown).orElse(value),
                expectation);
    }

    private Object value(String key) {
        return table.get(List.of(key));
    }

    private int lineOf(String key) {
        return TomlPlace.find(table, line, key).line();
    }

    private static String shown(Object value) {
        if (value instanceof TomlTable) {
            return "a table";
        }
        return value instanceof TomlArray ? "a list" : Objects.toString(value, "");
    }
}
