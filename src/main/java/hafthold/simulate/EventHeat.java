package hafthold.simulate;

import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.quantity.Band;
import java.util.List;
import java.util.Optional;

/**
 * How near the hottest event comes to what softens first.
 *
 * @param margin to the hottest face; empty where nothing states a service or softening temperature
 * @param hottestCelsius hottest face
 */
record EventHeat(Optional<SofteningMargin> margin, double hottestCelsius) {

    /** Of all materials in a handle, its glue among them. */
    static EventHeat of(List<Material> materials, List<EventAnswer> answers) {
        Band hottest = answers.stream()
                .map(EventAnswer::hottestCelsius)
                .reduce(EventReading::larger)
                .orElseThrow();
        Optional<SofteningMargin> first = Optional.empty();
        for (Material material : materials) {
            for (Property property : List.of(Property.SERVICE_TEMPERATURE, Property.SOFTENING_TEMPERATURE)) {
                Optional<SofteningMargin> margin = material.sheet()
                        .figure(property)
                        .map(limit -> new SofteningMargin(below(limit.band(), hottest), material.name()));
                if (margin.isPresent()
                        && first.filter(lower -> lower.kelvin().value()
                                        <= margin.get().kelvin().value())
                                .isEmpty()) {
                    first = margin;
                }
            }
        }
        return new EventHeat(first, hottest.value());
    }

    private static Band below(Band limit, Band hottest) {
        return new Band(limit.low() - hottest.high(), limit.value() - hottest.value(), limit.high() - hottest.low());
    }
}
