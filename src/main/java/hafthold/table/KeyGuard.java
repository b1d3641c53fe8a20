package hafthold.table;

import java.util.HashSet;
import java.util.Set;

/** Lets every key of one file pass once. */
final class KeyGuard {
    private final Set<String> seen = new HashSet<>();

    /** Returns the key, or fails naming the second row that carries it. */
    String once(CsvRow row, String column, String key) {
        if (!seen.add(key)) {
            throw row.fault(column, "each " + key.replace('\u001f', ' ') + " once in this file; it was listed above");
        }
        return key;
    }
}
