package hafthold.table;

import hafthold.air.SaturatedSalt;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads {@code salts.csv}: one row a salt and temperature. */
public final class SaltTable {
    private static final List<String> COLUMNS = List.of(
            "salt", "name", "use", "temperature_c", "low", "value", "high", "unit", "source", "locator", "evidence");
    private static final String UNIT = "%";
    private static final String HARMLESS = "harmless";

    private SaltTable() {}

    /** All salts in table order. */
    public static List<SaturatedSalt> read(TableSet tables) {
        Map<String, TreeMap<Double, Band>> humidity = new LinkedHashMap<>();
        Map<String, CsvRow> last = new LinkedHashMap<>();
        for (CsvTable table : tables.read("salts.csv", COLUMNS)) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                String id = row.required("salt");
                double celsius = row.number("temperature_c", -20, 80);
                keys.once(row, "temperature_c", id + " " + celsius);
                if (!row.text("unit").equals(UNIT)) {
                    throw row.fault("unit", UNIT);
                }
                row.number("value", 1, 99);
                humidity.computeIfAbsent(id, key -> new TreeMap<>())
                        .put(celsius, row.figure(0.01).band());
                last.put(id, row);
            }
        }
        List<SaturatedSalt> salts = new ArrayList<>();
        humidity.forEach((id, points) -> salts.add(new SaturatedSalt(
                id, last.get(id).required("name"), last.get(id).required("use").equals(HARMLESS), points)));
        return salts;
    }
}
