package hafthold.table;

import hafthold.material.Finish;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code finishes.csv}. */
public final class FinishTable {
    private static final List<String> COLUMNS =
            List.of("id", "name", "coats", "low", "value", "high", "unit", "source", "locator", "evidence");
    private static final String UNIT = "1e9 m2 s Pa/kg";
    private static final double TO_SI = 1e9;
    private static final int MOST_COATS = 20;

    private final Map<String, Finish> finishes;

    private FinishTable(Map<String, Finish> finishes) {
        this.finishes = finishes;
    }

    /** Reads the table. */
    public static FinishTable read(TableSet tables) {
        Map<String, Finish> finishes = new LinkedHashMap<>();
        for (CsvTable table : tables.read("finishes.csv", COLUMNS)) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                if (!row.text("unit").equals(UNIT)) {
                    throw row.fault("unit", UNIT);
                }
                String id = keys.once(row, "id", row.required("id"));
                int coats = (int) row.number("coats", 0, MOST_COATS);
                finishes.put(id, new Finish(id, row.required("name"), coats, row.figure(TO_SI)));
            }
        }
        return new FinishTable(finishes);
    }

    /** All finishes in table order. */
    public List<Finish> all() {
        return List.copyOf(finishes.values());
    }

    /**
     * One finish.
     *
     * @throws UnknownIdException when the table has no such id
     */
    public Finish find(String id) {
        Finish finish = finishes.get(id);
        if (finish == null) {
            throw new UnknownIdException(
                    "finish", id, finishes.keySet(), "hafthold materials --finishes lists them all");
        }
        return finish;
    }
}
