package hafthold.simulate;

import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.quantity.Band;
import hafthold.source.Figure;
import java.util.List;
import java.util.Optional;

/**
 * How near the hottest event comes to what softens first.
 *
 * @param marginKelvin lowest service or softening temperature less the hottest face
 * @param softens name of the material that sets it; empty where none states one
 * @param hottestCelsius hottest face
 */
record EventHeat(Band marginKelvin, String softens, double hottestCelsius) {
    private static final Band NEVER = Band.exact(1000);

    static EventHeat of(List<Material> materials, List<EventAnswer> answers) {
        Band limit = NEVER;
        String name = "";
        for (Material material : materials) {
            for (Property property : List.of(Property.SERVICE_TEMPERATURE, Property.SOFTENING_TEMPERATURE)) {
                Optional<Figure> figure = material.sheet().figure(property);
                if (figure.isPresent() && figure.get().value() < limit.value()) {
                    limit = figure.get().band();
                    name = material.name();
                }
            }
        }
        Band hottest = answers.stream()
                .map(EventAnswer::hottestCelsius)
                .reduce(EventReading::larger)
                .orElseThrow();
        return new EventHeat(
                new Band(limit.low() - hottest.high(), limit.value() - hottest.value(), limit.high() - hottest.low()),
                name,
                hottest.value());
    }
}
