package hafthold.transport;

/**
 * Air at one instant as one slab feels it.
 *
 * @param temperatureCelsius degrees Celsius
 * @param humidity H, relative humidity, 0 to 1
 * @param exchange q = p_sat/(R rho0): what passes the surface for a difference of 1 in activity, m/s
 * @param diffusivity D at zero moisture content and this temperature, m2/s
 */
record SlabAir(double temperatureCelsius, double humidity, double exchange, double diffusivity) {

    static SlabAir of(Slab slab, AirInstant air, int law) {
        return new SlabAir(
                air.temperatureCelsius,
                air.humidity,
                air.saturationPascals
                        / (slab.surfaceResistanceSquareMetreSecondPascalsPerKilogram()
                                * slab.dryDensityKilogramsPerCubicMetre()),
                slab.diffusivity().referenceSquareMetresPerSecond() * air.speed[law]);
    }
}
