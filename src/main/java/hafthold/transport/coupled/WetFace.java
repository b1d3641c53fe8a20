package hafthold.transport.coupled;

/**
 * A face under liquid water, which brings it to saturation at its own temperature; no vapour condenses, so no latent heat
 * is set free:
 *
 * <pre>
 * g = [phi(w,T) - 1] p_sat(T) / Z,   heat lost h_T (T - T_water)
 * </pre>
 *
 * @param resistanceSquareMetreSecondPascalsPerKilogram Z of the finish, m2 s Pa/kg, positive
 * @param heatTransferWattsPerSquareMetreKelvin h_T, W/(m2 K), zero or more
 * @param waterCelsius temperature of the water, degrees Celsius
 */
public record WetFace(
        double resistanceSquareMetreSecondPascalsPerKilogram,
        double heatTransferWattsPerSquareMetreKelvin,
        double waterCelsius)
        implements Face {
    /** A bare face takes water up as fast as it can pass it on: a hundredth of a still-air film. */
    public static final double BARE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM = 4e5;

    /** Spray or stirred water: so much that the face has the temperature of the water within seconds; assumed. */
    public static final double SPRAY_HEAT_TRANSFER_WATTS_PER_SQUARE_METRE_KELVIN = 500;

    /** Rejects resistances that are not positive, negative heat transfer, and water that is none. */
    public WetFace {
        if (!(resistanceSquareMetreSecondPascalsPerKilogram > 0)
                || !(heatTransferWattsPerSquareMetreKelvin >= 0)
                || !(waterCelsius >= 0 && waterCelsius <= 100)) {
            throw new IllegalArgumentException(
                    "a wet face needs a positive resistance, heat transfer of zero or more and"
                            + " water between 0 and 100 C, got " + resistanceSquareMetreSecondPascalsPerKilogram
                            + " m2 s Pa/kg, "
                            + heatTransferWattsPerSquareMetreKelvin + " W/(m2 K), " + waterCelsius + " C");
        }
    }
}
