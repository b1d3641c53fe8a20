package hafthold.table;

import hafthold.material.Axis;
import hafthold.material.Property;
import hafthold.material.PropertySheet.Entry;
import hafthold.source.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Reads {@code alternatives.csv}: figures that other sources state, and why they were not chosen. */
public final class AlternativeTable {
    private static final List<String> COLUMNS = List.of(
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
            "evidence",
            "why_not");

    private AlternativeTable() {}

    /**
     * A figure that was not chosen.
     *
     * @param material id of the row it speaks of
     * @param entry what it states
     * @param figure the figure in SI
     * @param whyNot why another was chosen
     */
    public record Alternative(String material, Entry entry, Figure figure, String whyNot) {}

    /** All rows, in table order. */
    public static List<Alternative> read(TableSet tables) {
        List<Alternative> alternatives = new ArrayList<>();
        for (CsvTable table : tables.read("alternatives.csv", COLUMNS)) {
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
                alternatives.add(new Alternative(
                        row.required("material"),
                        new Entry(property, axis),
                        row.figure(property.toSi()),
                        row.required("why_not")));
            }
        }
        return List.copyOf(alternatives);
    }
}
