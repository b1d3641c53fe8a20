package hafthold.mechanics;

import java.util.ArrayList;
import java.util.List;

/**
 * A section through a full-tang handle: half tang, glue, liners and scale, bonded, in generalised plane strain.
 *
 * <p>Quadratic finite elements over one quarter (the handle mirrors about the tang's mid-plane and about its own
 * middle), linear and orthotropic; the corners of the scale are square. All free strains enter as unit modes, see
 * {@link SectionInfluence}. Elasticity only: creep of the glue, relaxation and yield of wood are applied afterwards.
 *
 * @param along {@link HandleAxis#WIDTH} for the cross-section, {@link HandleAxis#LENGTH} for the section along the blade
 * @param halfSizeMetres half the width or half the length, m, above 2.5 mm
 * @param layup parts from the middle outwards
 * @param depthSharesOfScale sides of the layers in which the scale's free strain may differ, as shares of its
 *     thickness, rising from 0 at the glue to 1 at the outer face
 */
public record BondedSection(HandleAxis along, double halfSizeMetres, Layup layup, List<Double> depthSharesOfScale) {
    /** Layers that are thin where moisture changes fast: at the outer face, and at the glue where the strain shows most. */
    public static final List<Double> DEPTH_SHARES = List.of(0.0, 0.08, 0.17, 0.3, 0.47, 0.65, 0.82, 0.93, 1.0);

    private static final double SMALLEST_HALF_SIZE = 2.5e-3;

    /** Checks sizes and layers. */
    public BondedSection {
        depthSharesOfScale = List.copyOf(depthSharesOfScale);
        if (along == HandleAxis.THICKNESS) {
            throw new IllegalArgumentException("a section runs along the width or the length, not the thickness");
        }
        if (!(halfSizeMetres > SMALLEST_HALF_SIZE) || !Double.isFinite(halfSizeMetres)) {
            throw new IllegalArgumentException(
                    "a section needs more than 5 mm from edge to edge for glue stresses over the last 2 mm, got "
                            + 2000 * halfSizeMetres + " mm");
        }
        int last = depthSharesOfScale.size() - 1;
        if (last < 2 || depthSharesOfScale.get(0) != 0 || depthSharesOfScale.get(last) != 1) {
            throw new IllegalArgumentException(
                    "depth shares run from 0 to 1 with at least two layers, got " + depthSharesOfScale);
        }
        for (int i = 0; i < last; i++) {
            if (!(depthSharesOfScale.get(i) < depthSharesOfScale.get(i + 1))) {
                throw new IllegalArgumentException("depth shares must rise, got " + depthSharesOfScale);
            }
        }
    }

    /** The cross-section: edge to edge and tang to outer face, with the usual depth layers. */
    public static BondedSection acrossWidth(double halfWidthMetres, Layup layup) {
        return new BondedSection(HandleAxis.WIDTH, halfWidthMetres, layup, DEPTH_SHARES);
    }

    /** The section along the blade: bolster to butt and tang to outer face, with the usual depth layers. */
    public static BondedSection alongLength(double halfLengthMetres, Layup layup) {
        return new BondedSection(HandleAxis.LENGTH, halfLengthMetres, layup, DEPTH_SHARES);
    }

    /** The axis out of the section. */
    public HandleAxis out() {
        return along == HandleAxis.WIDTH ? HandleAxis.LENGTH : HandleAxis.WIDTH;
    }

    /** Number of depth layers of the scale. */
    public int depthLayers() {
        return depthSharesOfScale.size() - 1;
    }

    /** Parts with their thicknesses from the tang's mid-plane outwards. */
    List<SectionLayer> parts() {
        List<SectionLayer> parts = new ArrayList<>();
        parts.add(new SectionLayer(
                layup.tang().thicknessMetres() / 2, layup.tang().elasticity()));
        parts.add(layup.glue());
        for (SectionLayer liner : layup.liners()) {
            parts.add(liner);
            parts.add(layup.glue());
        }
        parts.add(layup.scale());
        return parts;
    }

    /**
     * Solves for every unit of free strain.
     *
     * @param extension whether the extension out of the section is held or settles free of force
     * @param refinement 0 for the usual grid; each step halves every element
     */
    public SectionInfluence influence(OutOfSection extension, int refinement) {
        return new SectionInfluence(this, extension, SectionGrading.grid(this, refinement));
    }

    /**
     * Solves on a grid of a quarter of the unknowns, at a fifteenth of the cost: edges at mid-thickness and the face in
     * the middle are right within 2 % of the free movement; the glue stresses within 3 %; the outer corner is not.
     */
    public SectionInfluence quickInfluence() {
        return new SectionInfluence(this, OutOfSection.FREE, SectionGrading.quick(this));
    }

    /** Solves on the usual grid with the extension out of the section free of force. */
    public SectionInfluence influence() {
        return influence(OutOfSection.FREE, 0);
    }
}
