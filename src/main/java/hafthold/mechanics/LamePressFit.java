package hafthold.mechanics;

import hafthold.source.PublishedModel;

/**
 * Pressure of a round shaft in a round hub of the same length whose bore is too small: p = (delta / r) / [((R^2 + r^2) /
 * (R^2 - r^2) + nu_h) / E_h + (1 - nu_s) / E_s].
 *
 * <p>Both parts isotropic and in plane stress. A pin at a distance from an edge is judged by the hub that would fit
 * there: the ring is weaker than the plate around it, so its answer lies on the safe side.
 *
 * @param shaftModulusPascals E_s, Pa, positive; infinite for a rigid shaft
 * @param shaftPoisson nu_s
 * @param hubModulusPascals E_h, Pa, positive
 * @param hubPoisson nu_h
 * @param boreRadiusMetres r, m, positive
 * @param outerRadiusMetres R, m, above r
 */
@PublishedModel(
        source = "lame-1852",
        locator = "thick-walled cylinder",
        validity = "isotropic, elastic, no slip-stick; shaft and hub equally long")
public record LamePressFit(
        double shaftModulusPascals,
        double shaftPoisson,
        double hubModulusPascals,
        double hubPoisson,
        double boreRadiusMetres,
        double outerRadiusMetres) {

    /** Checks sizes and moduli. */
    public LamePressFit {
        if (!(shaftModulusPascals > 0) || !(hubModulusPascals > 0)) {
            throw new IllegalArgumentException("moduli must be positive, got shaft " + shaftModulusPascals + " Pa, hub "
                    + hubModulusPascals + " Pa");
        }
        if (!(boreRadiusMetres > 0) || !(outerRadiusMetres > boreRadiusMetres)) {
            throw new IllegalArgumentException("a hub needs an outer radius above its bore, got "
                    + 1000 * outerRadiusMetres + " and " + 1000 * boreRadiusMetres + " mm");
        }
    }

    /** (R^2 + r^2) / (R^2 - r^2): hoop stress at the bore over the pressure. */
    public double hoopOverPressure() {
        double bore = boreRadiusMetres * boreRadiusMetres;
        double outer = outerRadiusMetres * outerRadiusMetres;
        return (outer + bore) / (outer - bore);
    }

    /**
     * Pressure between shaft and hub.
     *
     * @param radialInterferenceMetres shaft radius less bore radius before assembly, m; below zero the shaft is loose
     * @return Pa, not negative
     */
    public double pressurePascals(double radialInterferenceMetres) {
        double softness =
                (hoopOverPressure() + hubPoisson) / hubModulusPascals + (1 - shaftPoisson) / shaftModulusPascals;
        return Math.max(0, radialInterferenceMetres / boreRadiusMetres / softness);
    }

    /** Tension around the bore, Pa, at a radial interference in metres. */
    public double boreHoopPascals(double radialInterferenceMetres) {
        return hoopOverPressure() * pressurePascals(radialInterferenceMetres);
    }
}
