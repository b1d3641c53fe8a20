package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.FullTangKnife;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.source.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What softens first in the heat of a place.
 *
 * @param margin lowest service or softening temperature less the hottest air, K; empty where nothing states one
 * @param name of that material, or empty
 * @param hottest air about the knife, degrees Celsius
 */
record Softening(OptionalDouble margin, String name, double hottest) {
    static Softening of(FullTangKnife knife, AirSeries air, Doubt doubt) {
        double hottest = IntStream.range(0, air.size())
                .mapToDouble(air::temperatureCelsius)
                .max()
                .orElseThrow();
        double lowest = Double.POSITIVE_INFINITY;
        String name = "";
        for (Material material : materials(knife)) {
            for (Property property : List.of(Property.SERVICE_TEMPERATURE, Property.SOFTENING_TEMPERATURE)) {
                Optional<Figure> figure = material.sheet().figure(property);
                if (figure.isPresent() && doubt.softening(material, figure.get()) < lowest) {
                    lowest = doubt.softening(material, figure.get());
                    name = material.name();
                }
            }
        }
        return new Softening(
                name.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(lowest - hottest), name, hottest);
    }

    /** Everything in a handle that may soften. */
    static List<Material> materials(FullTangKnife knife) {
        List<Material> materials = new ArrayList<>();
        HandleEngine.partsOf(knife.scale(), knife.cutLeft()).forEach(part -> materials.add(part.material()));
        materials.addAll(knife.liners());
        materials.add(knife.adhesive());
        return materials;
    }
}
