package hafthold.transport.coupled;

/**
 * A face in air, which loses
 *
 * <pre>
 * g = [phi(w,T) p_sat(T) - p_air] / Z         water as vapour
 * h_T (T - T_air) + h_s g                     heat, h_s the slab's latent heat
 * </pre>
 *
 * <p>Where air is so moist that it condenses on the face, p_air > p_sat(T), the face takes up no more than under water,
 * g = [phi(w,T) - 1] p_sat(T) / Z; the rest runs off and leaves its heat.
 *
 * @param vapourResistanceSquareMetreSecondPascalsPerKilogram Z, film and finish in series, m2 s Pa/kg, positive; infinity
 *     where no water passes
 * @param heatTransferWattsPerSquareMetreKelvin h_T, W/(m2 K), zero or more
 * @param surroundings the air
 */
public record OpenFace(
        double vapourResistanceSquareMetreSecondPascalsPerKilogram,
        double heatTransferWattsPerSquareMetreKelvin,
        Surroundings surroundings)
        implements Face {
    /** Still room air on a scale: convection about 3, radiation about 6 W/(m2 K); assumed. */
    public static final double ROOM_HEAT_TRANSFER_WATTS_PER_SQUARE_METRE_KELVIN = 9;

    /** Rejects resistances that are not positive and negative heat transfer. */
    public OpenFace {
        if (!(vapourResistanceSquareMetreSecondPascalsPerKilogram > 0)
                || !(heatTransferWattsPerSquareMetreKelvin >= 0)) {
            throw new IllegalArgumentException(
                    "an open face needs a positive resistance and heat transfer of zero or more,"
                            + " got " + vapourResistanceSquareMetreSecondPascalsPerKilogram + " m2 s Pa/kg, "
                            + heatTransferWattsPerSquareMetreKelvin + " W/(m2 K)");
        }
    }
}
