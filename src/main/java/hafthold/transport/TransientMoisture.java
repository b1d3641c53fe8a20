package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import java.util.List;

/** Moisture of a slab that starts from a known state and goes through air that does not come round again. */
public final class TransientMoisture {
    private TransientMoisture() {}

    /**
     * From a slab in balance throughout, at standard resolution, without layers.
     *
     * @param slab the scale
     * @param startFraction moisture content at the first sample, the same at every depth, kg/kg, zero or more
     * @param air two samples or more; the first may differ from the air the slab was kept in
     */
    public static MoistureHistory from(Slab slab, double startFraction, AirSeries air) {
        return from(slab, new double[] {startFraction}, air, 0);
    }

    /**
     * From layer means, such as those of a {@link MoistureHistory} at one sample, at standard resolution.
     *
     * @param slab the scale
     * @param startLayerFractions mean moisture content of equal layers at the first sample, counted from the tang, kg/kg
     * @param air two samples or more
     * @param layers number of equal layers whose means are kept; may be zero
     */
    public static MoistureHistory from(Slab slab, double[] startLayerFractions, AirSeries air, int layers) {
        return from(slab, startLayerFractions, air, layers, new HylandWexlerSaturationPressure(), Resolution.STANDARD);
    }

    /**
     * From layer means.
     *
     * @param slab the scale
     * @param startLayerFractions mean moisture content of equal layers at the first sample, counted from the tang, kg/kg
     * @param air two samples or more
     * @param layers number of equal layers whose means are kept; may be zero
     * @param saturation saturation pressure of water
     * @param resolution how finely depth and time are cut
     * @throws IllegalArgumentException when the air has a single sample or the start is no moisture content
     */
    public static MoistureHistory from(
            Slab slab,
            double[] startLayerFractions,
            AirSeries air,
            int layers,
            SaturationPressure saturation,
            Resolution resolution) {
        if (air.size() < 2) {
            throw new IllegalArgumentException("air that goes somewhere has 2 samples or more, got " + air.size());
        }
        if (startLayerFractions.length == 0) {
            throw new IllegalArgumentException("the start needs the moisture of one layer or more");
        }
        for (double start : startLayerFractions) {
            if (!(start >= 0) || !Double.isFinite(start)) {
                throw new IllegalArgumentException("a moisture content is zero or more, got " + start);
            }
        }
        SlabLayout layout = SlabLayout.of(slab, MeanAir.of(air), resolution);
        BundleRun run = new BundleRun(List.of(layout), new AirTrack(air, List.of(slab), saturation));
        double[] profile = new double[layout.points()];
        for (int i = 0; i < profile.length; i++) {
            profile[i] = between(startLayerFractions, layout.grid().position(i) / slab.thicknessMetres());
        }
        run.start(0, profile, 0);
        return run.record(air.size() - 1, layers, BundleRun.Watch.NOTHING).get(0);
    }

    /** Straight lines from middle to middle of the layers, level outside. */
    private static double between(double[] layer, double depth) {
        double place = Math.min(layer.length - 1, Math.max(0, depth * layer.length - 0.5));
        int below = (int) Math.min(place, Math.max(0, layer.length - 2));
        double share = place - below;
        return layer.length == 1 ? layer[0] : (1 - share) * layer[below] + share * layer[below + 1];
    }
}
