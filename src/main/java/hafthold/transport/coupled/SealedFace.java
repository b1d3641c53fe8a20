package hafthold.transport.coupled;

/**
 * A face that no water and no heat passes but for what a metal behind it stores: C_m dT/dt = lambda dT/dx. For a scale on
 * both sides of a tang this is half the tang.
 *
 * @param heatCapacityJoulesPerSquareMetreKelvin C_m, J/(m2 K), zero or more
 */
public record SealedFace(double heatCapacityJoulesPerSquareMetreKelvin) implements Face {
    /** Nothing behind it. */
    public static final SealedFace BARE = new SealedFace(0);

    /** Rejects a negative capacity. */
    public SealedFace {
        if (!(heatCapacityJoulesPerSquareMetreKelvin >= 0)) {
            throw new IllegalArgumentException(
                    "a sealed face stores zero or more J/(m2 K), got " + heatCapacityJoulesPerSquareMetreKelvin);
        }
    }
}
