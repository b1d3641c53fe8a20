package hafthold.table;

import hafthold.knife.SizeRange;
import hafthold.knife.UnfitBuildException;
import hafthold.quantity.Length;
import hafthold.quantity.QuantityFormatException;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** One table of a TOML file; every getter names file, line and key when a value is not what was expected. */
final class TomlSection extends TomlKeys {

    TomlSection(String file, String path, TomlTable table, int line, List<Finding> findings) {
        super(file, path, table, line, findings);
    }

    /** A table inside this one; without any key where the file has none. */
    TomlSection section(String key) {
        if (!has(key)) {
            return inside(key, Toml.parse(""), lineOf(key));
        }
        if (!(value(key) instanceof TomlTable inner)) {
            throw fault(key, "a table: a line [" + key + "] with its keys below");
        }
        return inside(key, inner, lineOf(key));
    }

    /** A list of tables inside this one; empty where the file has none. */
    List<TomlSection> sections(String key) {
        if (!has(key)) {
            return List.of();
        }
        if (!(value(key) instanceof TomlArray list)) {
            throw fault(key, "a list of tables: a line [[" + key + "]] for each, with its keys below");
        }
        List<TomlSection> sections = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            if (!(list.get(i) instanceof TomlTable inner)) {
                throw faultIn(key, list, i, "a table, such as { key = \"value\" }");
            }
            sections.add(inside(
                    key + "[" + (i + 1) + "]", inner, list.inputPositionOf(i).line()));
        }
        return sections;
    }

    /** Likewise where one table alone may stand for the list. */
    List<TomlSection> oneOrMore(String key) {
        return value(key) instanceof TomlTable inner ? List.of(inside(key, inner, lineOf(key))) : sections(key);
    }

    /** A list of texts; empty where the file has none. */
    List<String> texts(String key) {
        if (!has(key)) {
            return List.of();
        }
        if (!(value(key) instanceof TomlArray list)) {
            throw fault(key, "a list of words in quotes, such as [\"soak\", \"dishwasher\"]");
        }
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            if (!(list.get(i) instanceof String text)) {
                throw faultIn(key, list, i, "a word in quotes");
            }
            texts.add(text);
        }
        return texts;
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

    /** A day. */
    Optional<LocalDate> day(String key) {
        Object value = value(key);
        if (value == null || value instanceof LocalDate) {
            return Optional.ofNullable((LocalDate) value);
        }
        try {
            return Optional.of(LocalDate.parse(shown(value)));
        } catch (DateTimeException e) {
            throw fault(key, "a day written as year-month-day, such as 2026-08-10" + DayHint.of(shown(value)));
        }
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
        Optional<String> withUnit = form.withUnit(shown(value));
        if (withUnit.isPresent() && !(value instanceof Boolean)) {
            throw problem(key, "the unit is missing, write \"" + withUnit.get() + "\"");
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
    <T> T or(String key, Optional<T> given, T fallback, Message taken) {
        return orNone(key, given, taken).orElse(fallback);
    }

    /** What the file says, if anything; silence is noted with what it is taken to mean. */
    <T> Optional<T> orNone(String key, Optional<T> given, Message taken) {
        if (given.isEmpty()) {
            note(key, taken);
        }
        return given;
    }

    /** The id the file gives, or else a usual one, which is noted. */
    String or(String key, String usual) {
        return or(key, text(key), usual, Message.verbatim(usual));
    }

    /** The length the file gives, or else a default, which is noted. */
    Length or(String key, SizeRange range, Length fallback) {
        return or(key, length(key, range), fallback, Message.size(fallback));
    }

    /** Builds a part of the knife from this table; what does not fit is named with its line. */
    <T> T build(Supplier<T> part) {
        try {
            return part.get();
        } catch (UnfitBuildException e) {
            throw faultAt(e.key(), e.value(), e.expectation());
        }
    }
}
