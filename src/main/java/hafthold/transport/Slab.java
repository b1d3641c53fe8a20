package hafthold.transport;

import hafthold.material.MoistureDiffusivity;
import hafthold.material.SorptionIsotherm;

/**
 * One scale as moisture sees it: sealed by the tang at x = 0, open to the air through film and finish at x = thickness.
 *
 * @param thicknessMetres h, positive
 * @param dryDensityKilogramsPerCubicMetre rho0, dry mass per volume, positive
 * @param isotherm water held at rest
 * @param diffusivity through the thickness; multiply it beforehand where edges and ends take up water too
 * @param surfaceResistanceSquareMetreSecondPascalsPerKilogram 1/beta + Z: still-air film and finish in series,
 *     m2 s Pa/kg, positive
 */
public record Slab(
        double thicknessMetres,
        double dryDensityKilogramsPerCubicMetre,
        SorptionIsotherm isotherm,
        MoistureDiffusivity diffusivity,
        double surfaceResistanceSquareMetreSecondPascalsPerKilogram) {

    /** Rejects sizes and resistances that are not positive. */
    public Slab {
        if (!(thicknessMetres > 0)
                || !(dryDensityKilogramsPerCubicMetre > 0)
                || !(surfaceResistanceSquareMetreSecondPascalsPerKilogram > 0)) {
            throw new IllegalArgumentException("a slab needs positive thickness, density and surface resistance, got "
                    + thicknessMetres + " m, " + dryDensityKilogramsPerCubicMetre + " kg/m3, "
                    + surfaceResistanceSquareMetreSecondPascalsPerKilogram + " m2 s Pa/kg");
        }
    }
}
