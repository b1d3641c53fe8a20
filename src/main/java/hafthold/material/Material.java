package hafthold.material;

import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Finding;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One material, ready to compute with.
 *
 * @param id kebab-case id
 * @param name name for people
 * @param family family
 * @param evidence weakest evidence among the figures that movement rests on
 * @param usualCut cut it is usually sold in
 * @param sheet every figure stated or inherited
 * @param water uptake of water; empty for what takes up none
 * @param thermalExpansionPerKelvin linear expansion per kelvin along {@link Axis#ALONG}, {@link Axis#ACROSS},
 *     {@link Axis#THROUGH}
 * @param findings choices made on the way from tables to model
 */
public record Material(
        String id,
        String name,
        Family family,
        Evidence evidence,
        Cut usualCut,
        PropertySheet sheet,
        Optional<WaterUptake> water,
        Map<Axis, Figure> thermalExpansionPerKelvin,
        List<Finding> findings)
        implements ScaleMaterial {

    /** Keeps its own copies. */
    public Material {
        thermalExpansionPerKelvin = Map.copyOf(thermalExpansionPerKelvin);
        findings = List.copyOf(findings);
    }
}
