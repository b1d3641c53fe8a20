package hafthold.material;

import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Finding;
import java.util.List;

/**
 * Materials side by side in one scale, such as burl cast in resin: each takes its share of the width and length.
 *
 * @param id kebab-case id
 * @param name name for people
 * @param parts at least two, shares adding up to 1
 * @param findings choices made on the way from tables to model
 */
public record Hybrid(String id, String name, List<Part> parts, List<Finding> findings) implements ScaleMaterial {

    /**
     * One part of a hybrid.
     *
     * @param material what it is
     * @param cut how it lies
     * @param share fraction of the width and length it takes, 0 to 1
     */
    public record Part(Material material, Cut cut, Figure share) {}

    /** Rejects shares that do not add up to 1 within 1e-9. */
    public Hybrid {
        parts = List.copyOf(parts);
        findings = List.copyOf(findings);
        double sum = parts.stream().mapToDouble(part -> part.share().value()).sum();
        if (parts.size() < 2 || Math.abs(sum - 1) > 1e-9) {
            throw new IllegalArgumentException(
                    "hybrid " + id + " needs two or more parts with shares adding up to 1, got " + sum);
        }
    }

    @Override
    public Family family() {
        return Family.HYBRID;
    }

    @Override
    public Evidence evidence() {
        return parts.stream()
                .map(part -> part.material().evidence().weaker(part.share().evidence()))
                .reduce(Evidence.MEASURED, Evidence::weaker);
    }

    @Override
    public Cut usualCut() {
        return Cut.NONE;
    }
}
