package hafthold.table;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/**
 * Where a key path leads in a TOML file: as far as the file goes.
 *
 * @param line line of the last step that the file has
 * @param reached whether the file goes all the way
 * @param value the single value at the end; empty where the path ends early, or at a table or list
 */
record TomlPlace(int line, boolean reached, Optional<Object> value) {
    private static final Pattern STEP = Pattern.compile("([^\\[]+)(?:\\[([0-9]+)])?");

    /** Follows a path such as {@code pins[2].along}, lists counted from 1, from a table that starts at a line. */
    static TomlPlace find(TomlTable table, int line, String keyPath) {
        Object here = table;
        int at = line;
        for (String step : keyPath.split("\\.", -1)) {
            Matcher form = STEP.matcher(step);
            if (!form.matches() || !(here instanceof TomlTable inside)) {
                return new TomlPlace(at, false, Optional.empty());
            }
            List<String> key = List.of(form.group(1));
            here = inside.get(key);
            if (here == null) {
                return new TomlPlace(at, false, Optional.empty());
            }
            at = inside.inputPositionOf(key).line();
            if (form.group(2) != null && here instanceof TomlArray list) {
                int index = Integer.parseInt(form.group(2)) - 1;
                if (index < 0 || index >= list.size()) {
                    return new TomlPlace(at, false, Optional.empty());
                }
                at = list.inputPositionOf(index).line();
                here = list.get(index);
            }
        }
        boolean single = !(here instanceof TomlTable) && !(here instanceof TomlArray);
        return new TomlPlace(at, true, single ? Optional.of(here) : Optional.empty());
    }
}
