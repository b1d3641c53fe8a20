package hafthold.transport.coupled;

/**
 * Heat held per volume and kelvin by a material and its water: C = C_dry + c_w w.
 *
 * @param dryJoulesPerCubicMetreKelvin C_dry, J/(m3 K), positive
 * @param waterJoulesPerKilogramKelvin c_w, J/(kg K), zero or more
 */
public record HeatCapacity(double dryJoulesPerCubicMetreKelvin, double waterJoulesPerKilogramKelvin) {
    /** Liquid water near room temperature, J/(kg K). */
    public static final double LIQUID_WATER_JOULES_PER_KILOGRAM_KELVIN = 4186;

    /** Rejects capacities without physical sense. */
    public HeatCapacity {
        if (!(dryJoulesPerCubicMetreKelvin > 0) || !(waterJoulesPerKilogramKelvin >= 0)) {
            throw new IllegalArgumentException(
                    "a heat capacity needs a positive dry part and water of zero or more, got "
                            + dryJoulesPerCubicMetreKelvin + " J/(m3 K), " + waterJoulesPerKilogramKelvin
                            + " J/(kg K)");
        }
    }

    /** C at a water content in kg/m3. */
    public double joulesPerCubicMetreKelvin(double waterKilogramsPerCubicMetre) {
        return dryJoulesPerCubicMetreKelvin + waterJoulesPerKilogramKelvin * waterKilogramsPerCubicMetre;
    }
}
