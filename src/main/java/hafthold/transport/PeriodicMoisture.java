package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import hafthold.air.StraightAir;
import java.util.List;

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

    private static final double HOUR_SECONDS = 3600;

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
        return ofAll(List.of(slab), air, layers, saturation, resolution).get(0);
    }

    /**
     * The years of many slabs in the same air at standard resolution, worked out side by side: for more than a few slabs
     * several times quicker, with the same answers to the last bit.
     *
     * @param slabs the scales
     * @param air a year that is followed by itself
     * @param layers number of equal layers whose means are kept; may be zero
     * @return one year a slab, in the order of the slabs
     */
    public static List<PeriodicMoisture> ofAll(List<Slab> slabs, AirSeries air, int layers) {
        return ofAll(slabs, air, layers, new HylandWexlerSaturationPressure(), Resolution.STANDARD);
    }

    /**
     * The years of many slabs in the same air, at a resolution.
     *
     * @return one year a slab, in the order of the slabs
     */
    public static List<PeriodicMoisture> ofAll(
            List<Slab> slabs, AirSeries air, int layers, SaturationPressure saturation, Resolution resolution) {
        int stride =
                StraightAir.stride(air, resolution.airStrayFraction(), HOUR_SECONDS * resolution.longestStepHours());
        AirSeries thinned = StraightAir.thinned(air, stride);
        List<PeriodicMoisture> coarse = new SlabSorter(slabs, thinned, saturation, resolution).years(layers);
        return coarse.stream()
                .map(year ->
                        new PeriodicMoisture(year.history.spread(stride), year.spinUpYears, year.repeatsWithinFraction))
                .toList();
    }

    /** True when the year's start is within {@link #REPEATS_FRACTION} of the state that repeats. */
    public boolean repeats() {
        return repeatsWithinFraction <= REPEATS_FRACTION;
    }
}
