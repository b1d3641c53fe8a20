package hafthold.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Who rests on which source: every table row that names one, in words. */
public final class SourceUse {
    private SourceUse() {}

    /** Uses by source key, in table order. */
    public static Map<String, List<String>> read(TableSet tables) {
        Map<String, List<String>> uses = new LinkedHashMap<>();
        collect(uses, tables, "properties.csv", "source", "material", "property", "axis");
        collect(uses, tables, "alternatives.csv", "source", "material", "property", "axis");
        collect(uses, tables, "treatments.csv", "source", "treatment", "property");
        collect(uses, tables, "hybrids.csv", "source", "hybrid", "part");
        collect(uses, tables, "wood-names.csv", "source", "name", "wood_class");
        collect(uses, tables, "finishes.csv", "source", "id");
        collect(uses, tables, "events.csv", "source", "id");
        collect(uses, tables, "limits.csv", "source", "class");
        collect(uses, tables, "season.csv", "source", "limit");
        collect(uses, tables, "places.csv", "temperature_source", "id");
        collect(uses, tables, "places.csv", "humidity_source", "id");
        return uses;
    }

    private static void collect(
            Map<String, List<String>> uses, TableSet tables, String table, String sourceColumn, String... what) {
        for (CsvTable file : tables.read(table, List.of(sourceColumn))) {
            for (CsvRow row : file.rows()) {
                List<String> words = new ArrayList<>();
                words.add(table.replace(".csv", "") + ":");
                for (String column : what) {
                    words.add(row.text(column));
                }
                uses.computeIfAbsent(row.text(sourceColumn), key -> new ArrayList<>())
                        .add(String.join(" ", words));
            }
        }
    }
}
