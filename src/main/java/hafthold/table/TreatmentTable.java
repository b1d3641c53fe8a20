package hafthold.table;

import hafthold.source.Figure;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Reads {@code treatments.csv}: one row a property of a treatment. */
final class TreatmentTable {
    private static final List<TreatmentProperty> NEEDED =
            List.of(TreatmentProperty.ANTI_SWELLING_EFFICIENCY, TreatmentProperty.EARLY_UPTAKE_RATIO);
    private static final List<String> COLUMNS =
            List.of("treatment", "name", "property", "low", "value", "high", "unit", "source", "locator", "evidence");

    private TreatmentTable() {}

    /** All treatments by id, in table order. */
    static Map<String, Treatment> read(TableSet tables) {
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, Map<TreatmentProperty, Figure>> figures = new LinkedHashMap<>();
        CsvRow last = null;
        for (CsvTable table : tables.read("treatments.csv", COLUMNS)) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                String id = row.required("treatment");
                TreatmentProperty property = row.word(
                        "property",
                        TreatmentProperty::ofWord,
                        Arrays.stream(TreatmentProperty.values())
                                .map(TreatmentProperty::word)
                                .toList());
                keys.once(row, "property", id + " " + property.word());
                if (!row.text("unit").equals(property.unit())) {
                    throw row.fault("unit", property.unit() + " for " + property.word());
                }
                names.put(id, row.required("name"));
                figures.computeIfAbsent(id, key -> new LinkedHashMap<>()).put(property, row.figure(property.toSi()));
                last = row;
            }
        }
        Map<String, Treatment> treatments = new LinkedHashMap<>();
        for (Map.Entry<String, Map<TreatmentProperty, Figure>> entry : figures.entrySet()) {
            String id = entry.getKey();
            if (!entry.getValue().keySet().containsAll(NEEDED)) {
                throw last.fault(
                        "property",
                        "rows " + NEEDED.stream().map(TreatmentProperty::word).collect(Collectors.joining(" and "))
                                + " for treatment " + id);
            }
            treatments.put(id, new Treatment(id, names.get(id), entry.getValue()));
        }
        return treatments;
    }
}
