package hafthold.material;

import hafthold.source.Figure;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Every figure stated for one material, by property and axis, in table order and SI (percent as fractions). */
public final class PropertySheet {

    /**
     * Place of a figure on the sheet.
     *
     * @param property what is stated
     * @param axis for which direction or plane
     */
    public record Entry(Property property, Axis axis) {}

    private final Map<Entry, Figure> figures;
    private final Map<Property, Map<Axis, Figure>> byAxis = new EnumMap<>(Property.class);

    /** Copies the figures, keeping their order. */
    public PropertySheet(Map<Entry, Figure> figures) {
        this.figures = new LinkedHashMap<>(figures);
        figures.forEach((entry, figure) -> byAxis.computeIfAbsent(entry.property(), any -> new EnumMap<>(Axis.class))
                .put(entry.axis(), figure));
    }

    /** The figure of an axis; where only one figure for any direction is stated, that one. */
    public Optional<Figure> figure(Property property, Axis axis) {
        Map<Axis, Figure> stated = byAxis.getOrDefault(property, Map.of());
        Figure exact = stated.get(axis);
        return Optional.ofNullable(exact != null ? exact : stated.get(Axis.ANY));
    }

    /** The figure that is the same in every direction. */
    public Optional<Figure> figure(Property property) {
        return figure(property, Axis.ANY);
    }

    /** All figures in table order. */
    public Map<Entry, Figure> figures() {
        return new LinkedHashMap<>(figures);
    }
}
