package hafthold.transport.coupled;

import hafthold.air.SaturationPressure;

/**
 * A slab in which heat and water move together, from its back at x = 0 to its front at x = L:
 *
 * <pre>
 * dw/dt = -dg/dx,                g = -delta dp/dx + K ds/dx - D dw/dx,   p = phi(w,T) p_sat(T)
 * C dT/dt = -d/dx (q + h_s g_v), q = -lambda dT/dx,                      g_v = -delta dp/dx
 * </pre>
 *
 * <p>As in EN 15026, what water carries by being warm, c_w g dT/dx, is left out: in wood it is a ten-thousandth of
 * conduction.
 *
 * @param material the same at all depths
 * @param back face at x = 0
 * @param front face at x = L
 * @param saturation saturation pressure of water
 * @param latentHeatJoulesPerKilogram h_s, heat that vapour sets free when it settles in the material, J/kg, zero or more
 * @param sources what is set free inside
 */
public record CoupledSlab(
        PorousMaterial material,
        Face back,
        Face front,
        SaturationPressure saturation,
        double latentHeatJoulesPerKilogram,
        Sources sources) {
    /** Latent heat of water vapour at 0 C, as EN 15026 rounds it, J/kg. */
    public static final double LATENT_HEAT_JOULES_PER_KILOGRAM = 2.5e6;

    /** Rejects a negative latent heat. */
    public CoupledSlab {
        if (!(latentHeatJoulesPerKilogram >= 0)) {
            throw new IllegalArgumentException("latent heat is zero or more J/kg, got " + latentHeatJoulesPerKilogram);
        }
    }

    /** Without sources, with the usual latent heat. */
    public CoupledSlab(PorousMaterial material, Face back, Face front, SaturationPressure saturation) {
        this(material, back, front, saturation, LATENT_HEAT_JOULES_PER_KILOGRAM, Sources.NONE);
    }
}
