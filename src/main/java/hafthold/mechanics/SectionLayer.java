package hafthold.mechanics;

/**
 * One part of a bonded handle as its sections see it.
 *
 * @param thicknessMetres thickness, m, positive; of a tang the whole thickness
 * @param elasticity elastic constants along the handle's axes
 */
public record SectionLayer(double thicknessMetres, OrthotropicElasticity elasticity) {

    /** Rejects a thickness that is not positive. */
    public SectionLayer {
        if (!(thicknessMetres > 0) || !Double.isFinite(thicknessMetres)) {
            throw new IllegalArgumentException("thickness must be more than 0, got " + 1000 * thicknessMetres + " mm");
        }
    }
}
