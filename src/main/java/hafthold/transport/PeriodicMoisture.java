package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import hafthold.air.StraightAir;

/**
 * The year that repeats: moisture of a slab whose air comes round again, found without waiting for the decades that a slow
 * slab takes to get there. Slab and air have one temperature at each instant.
 *
 * @param history moisture at every sample of the year
 * @param spinUpYears years run before the one in {@code history}
 * @param repeatsWithinFraction how far the year's start lies from the state that repeats, largest over the thickness, kg/kg
 */
public record PeriodicMoisture(MoistureHistory history, double spinUpYears, double repeatsWithinFraction) {
    /** A year counts as repeating when its start is known this well, kg/kg. */
    public static final double REPEATS_FRACTION = 1e-5;

    /** The year at standard resolution, without layers. */
    public static PeriodicMoisture of(Slab slab, AirSeries air) {
        return of(slab, air, 0);
    }

    /**
     * The year at standard resolution.
     *
     * @param slab the scale
     * @param air a year that is followed by itself
     * @param layers number of equal layers whose means are kept; may be zero
     */
    public static PeriodicMoisture of(Slab slab, AirSeries air, int layers) {
        return of(slab, air, layers, new HylandWexlerSaturationPressure(), Resolution.STANDARD);
    }

    /**
     * The year.
     *
     * @param slab the scale
     * @param air a year that is followed by itself; any length and sample step
     * @param layers number of equal layers whose means are kept; may be zero
     * @param saturation saturation pressure of water
     * @param resolution how finely depth and time are cut
     * @return the year; ask {@link #repeats()} before trusting it
     * @throws ArithmeticException when a time step has no solution, which sound isotherms and diffusivities never cause
     */
    public static PeriodicMoisture of(
            Slab slab, AirSeries air, int layers, SaturationPressure saturation, Resolution resolution) {
        int stride = StraightAir.stride(air, resolution.airStrayFraction());
        PeriodicMoisture coarse =
                new YearSearch(slab, StraightAir.thinned(air, stride), layers, saturation, resolution).result();
        return new PeriodicMoisture(coarse.history.spread(stride), coarse.spinUpYears, coarse.repeatsWithinFraction);
    }

    /** True when the year's start is within {@link #REPEATS_FRACTION} of the state that repeats. */
    public boolean repeats() {
        return repeatsWithinFraction <= REPEATS_FRACTION;
    }
}
