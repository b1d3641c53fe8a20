package hafthold.table;

import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** The keys of one table of a TOML file: which there are, on which line, and what to say of one that is wrong. */
class TomlKeys {
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
    TomlKeys(String file, String path, TomlTable table, int line, List<Finding> findings) {
        this.file = file;
        this.path = path;
        this.table = table;
        this.line = line;
        this.findings = findings;
    }

    /** Rejects the first key that is not on the list. */
    final void allows(List<String> keys) {
        for (String key : table.keySet()) {
            if (!keys.contains(key)) {
                throw unknown(key, NearestWord.oneOf(key, keys));
            }
        }
    }

    /** What is wrong with a key that should not be here. */
    final InvalidTableException unknown(String key, String expectation) {
        String here = path.isEmpty()
                ? "a key of a build file: "
                : "a key of [" + path.substring(0, path.length() - 1) + "]: ";
        return InvalidTableException.atKey(file, lineOf(key), path + key, key, here + expectation);
    }

    /** The keys the file has, in its order. */
    final List<String> keys() {
        return List.copyOf(table.keySet());
    }

    /** True where the file has this key. */
    final boolean has(String key) {
        return table.keySet().contains(key);
    }

    /** What is wrong with the value of a key of this table. */
    final InvalidTableException fault(String key, String expectation) {
        return InvalidTableException.atKey(file, lineOf(key), path + key, shown(value(key)), expectation);
    }

    /** What is wrong with the value of a key of this table, in a sentence of its own. */
    final InvalidTableException problem(String key, String problem) {
        return InvalidTableException.atKey(file, lineOf(key), path + key, problem);
    }

    /**
     * What is wrong at a path below this table.
     *
     * @param keyPath such as {@code pins[2].along}
     * @param value what was taken there, shown where the file has no single value
     */
    final InvalidTableException faultAt(String keyPath, String value, String expectation) {
        TomlPlace place = TomlPlace.find(table, line, keyPath);
        boolean byDefault = !place.reached() && !value.isEmpty();
        return InvalidTableException.atKey(
                file,
                place.line(),
                path + keyPath,
                place.value().map(TomlKeys::shown).orElse(value),
                expectation + (byDefault ? "; it was taken because the file says nothing of it" : ""));
    }

    /** What is wrong with one entry of a list, counted from 0. */
    final InvalidTableException faultIn(String key, TomlArray list, int index, String expectation) {
        return InvalidTableException.atKey(
                file,
                list.inputPositionOf(index).line(),
                path + key + "[" + (index + 1) + "]",
                shown(list.get(index)),
                expectation);
    }

    /** Notes a default; what the file says nothing of goes by the name of the key. */
    final void note(String key, Message taken) {
        String named = (path + key).replaceAll("\\[\\d+]", "").replace('_', '-');
        findings.add(new Finding(
                Finding.Kind.DEFAULT,
                path + key,
                Message.of("note.silent", Map.of("what", Message.of("build-file." + named), "taken", taken))));
    }

    /** A table inside this one. */
    final TomlSection inside(String key, TomlTable inner, int at) {
        return new TomlSection(file, path + key + ".", inner, at, findings);
    }

    /** What the file has for a key; null where it has nothing. */
    final Object value(String key) {
        return table.get(List.of(key));
    }

    /** Line of a key, or of the table where it has no such key. */
    final int lineOf(String key) {
        return has(key) ? table.inputPositionOf(List.of(key)).line() : line;
    }

    /** A value as a message shows it. */
    static String shown(Object value) {
        if (value instanceof TomlTable) {
            return "a table";
        }
        return value instanceof TomlArray ? "a list" : Objects.toString(value, "");
    }
}
