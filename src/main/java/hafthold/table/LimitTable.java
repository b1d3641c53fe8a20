package hafthold.table;

import hafthold.knife.FitLimits;
import hafthold.quantity.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code limits.csv}: classes of work from the strictest to the loosest. */
public final class LimitTable {
    private static final List<String> COLUMNS =
            List.of("class", "shy", "proud", "pin_head", "gap", "unit", "source", "evidence");
    private static final double LARGEST_MILLIMETRES = 10;

    private LimitTable() {}

    /**
     * All classes, strictest first.
     *
     * @throws InvalidTableException when a limit is tighter than that of the class before it
     */
    public static List<FitLimits> read(TableSet tables) {
        Map<String, FitLimits> classes = new LinkedHashMap<>();
        for (CsvTable table : tables.read("limits.csv", COLUMNS)) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                if (!row.text("unit").equals("mm")) {
                    throw row.fault("unit", "mm");
                }
                String name = keys.once(row, "class", row.required("class"));
                classes.put(
                        name,
                        new FitLimits(
                                name,
                                length(row, "shy"),
                                length(row, "proud"),
                                length(row, "pin_head"),
                                length(row, "gap")));
            }
        }
        List<FitLimits> ordered = new ArrayList<>(classes.values());
        for (int i = 1; i < ordered.size(); i++) {
            if (ordered.get(i).shy().metres() < ordered.get(i - 1).shy().metres()) {
                throw new InvalidTableException(
                        "limits.csv",
                        "class " + ordered.get(i).name() + " is tighter than "
                                + ordered.get(i - 1).name() + " before it; expected the strictest class first");
            }
        }
        return ordered;
    }

    private static Length length(CsvRow row, String column) {
        return Length.ofMillimetres(row.number(column, 0, LARGEST_MILLIMETRES));
    }
}
