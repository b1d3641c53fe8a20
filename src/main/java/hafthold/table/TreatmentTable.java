package hafthold.table;

import hafthold.source.Figure;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code treatments.csv}: one row a property of a treatment. */
final class TreatmentTable {
    private static final String ANTI_SWELLING = "anti_swelling_efficiency";
    private static final String EARLY_UPTAKE = "early_uptake_ratio";
    private static final Map<String, Double> FACTORS =
            Map.of(ANTI_SWELLING, 0.01, EARLY_UPTAKE, 1.0, Treatment.WEIGHT_GAIN, 0.01, Treatment.STIFFNESS_RATIO, 1.0);
    private static final List<String> COLUMNS =
            List.of("treatment", "name", "property", "low", "value", "high", "unit", "source", "locator", "evidence");

    private TreatmentTable() {}

    /** All treatments by id, in table order. */
    static Map<String, Treatment> read(TableSet tables) {
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, Map<String, Figure>> figures = new LinkedHashMap<>();
        CsvRow last = null;
        for (CsvTable table : tables.read("treatments.csv", COLUMNS)) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                String id = row.required("treatment");
                String property = row.word(
                        "property",
                        text -> FACTORS.keySet().stream().filter(text::equals).findFirst(),
                        FACTORS.keySet().stream().sorted().toList());
                keys.once(row, "property", id + " " + property);
                names.put(id, row.required("name"));
                figures.computeIfAbsent(id, key -> new LinkedHashMap<>())
                        .put(property, row.figure(FACTORS.get(property)));
                last = row;
            }
        }
        Map<String, Treatment> treatments = new LinkedHashMap<>();
        for (Map.Entry<String, Map<String, Figure>> entry : figures.entrySet()) {
            String id = entry.getKey();
            Map<String, Figure> own = entry.getValue();
            if (!own.containsKey(ANTI_SWELLING) || !own.containsKey(EARLY_UPTAKE)) {
                throw last.fault("property", "rows " + ANTI_SWELLING + " and " + EARLY_UPTAKE + " for treatment " + id);
            }
            treatments.put(id, new Treatment(id, names.get(id), own.get(ANTI_SWELLING), own.get(EARLY_UPTAKE), own));
        }
        return treatments;
    }
}
