package hafthold.decide;

import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import java.util.List;

/**
 * What a shop could use instead.
 *
 * @param scales other materials for scales, the nearest to the order first
 * @param adhesives other glues
 */
public record Offer(List<ScaleMaterial> scales, List<Material> adhesives) {

    /** Keeps its own copies. */
    public Offer {
        scales = List.copyOf(scales);
        adhesives = List.copyOf(adhesives);
    }

    /** Nothing but what the build has. */
    public static Offer none() {
        return new Offer(List.of(), List.of());
    }
}
