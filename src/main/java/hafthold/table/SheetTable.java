package hafthold.table;

import hafthold.material.Axis;
import hafthold.material.Property;
import hafthold.material.PropertySheet.Entry;
import hafthold.source.Figure;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code properties.csv}: one row a figure of a material. */
final class SheetTable {
    static final List<String> COLUMNS = List.of(
            "material",
            "property",
            "axis",
            "low",
            "value",
            "high",
            "unit",
            "condition",
            "source",
            "locator",
            "evidence");

    private SheetTable() {}

    /** Own figures of every material, converted to SI, in table order. */
    static Map<String, Map<Entry, Figure>> read(TableSet tables) {
        Map<String, Map<Entry, Figure>> sheets = new LinkedHashMap<>();
        for (CsvTable table : tables.read("properties.csv", COLUMNS)) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                Property property = row.word(
                        "property",
                        Property::ofWord,
                        Arrays.stream(Property.values()).map(Property::word).toList());
                Axis axis = row.word(
                        "axis",
                        Axis::ofWord,
                        Arrays.stream(Axis.values()).map(Axis::word).toList());
                if (!row.text("unit").equals(property.unit())) {
                    throw row.fault("unit", property.unit() + " for " + property.word());
                }
                String material = row.required("material");
                keys.once(row, "property", material + " " + property.word() + " " + axis.word());
                sheets.computeIfAbsent(material, key -> new LinkedHashMap<>())
                        .put(new Entry(property, axis), row.figure(property.toSi()));
            }
        }
        return sheets;
    }
}
