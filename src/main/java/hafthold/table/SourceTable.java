package hafthold.table;

import hafthold.source.Source;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code sources.csv}. */
public final class SourceTable {
    private static final List<String> COLUMNS = List.of("key", "type", "authors", "year", "title", "locator", "seen");

    private SourceTable() {}

    /** All sources by key, in table order. */
    public static Map<String, Source> read(TableSet tables) {
        Map<String, Source> sources = new LinkedHashMap<>();
        for (CsvTable table : tables.read("sources.csv", COLUMNS)) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                String key = keys.once(row, "key", row.required("key"));
                sources.put(
                        key,
                        new Source(
                                key,
                                row.required("type"),
                                row.text("authors"),
                                row.text("year"),
                                row.required("title"),
                                row.text("locator"),
                                row.required("seen")));
            }
        }
        return sources;
    }
}
