package hafthold.simulate;

import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Resolution;
import hafthold.transport.Slab;
import hafthold.transport.StillAirFilm;

/** How dry and how damp a bare scale of a material gets where a knife lives. */
public final class CustomersMoisture {
    private static final double SCALE_METRES = 8e-3;

    private CustomersMoisture() {}

    /**
     * The year's driest and dampest mean moisture of a scale of 8 mm.
     *
     * @param material one that takes up water
     * @throws OutsideModelsException when its year does not come round
     */
    public static MoistureSpan of(Material material, Destination destination) {
        WaterUptake water = material.water().orElseThrow();
        Slab slab = new Slab(
                SCALE_METRES,
                water.dryDensity().value(),
                water.isotherm(),
                water.diffusivity(),
                StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM);
        PeriodicMoisture year = PeriodicMoisture.of(
                slab, destination.repeatingYear(), 0, new HylandWexlerSaturationPressure(), Resolution.SAMPLED);
        SlabYears.requireSettled(material.id(), year);
        MoistureHistory history = year.history();
        double least = history.meanFraction(0);
        double most = least;
        for (int sample = 1; sample < history.size(); sample++) {
            least = Math.min(least, history.meanFraction(sample));
            most = Math.max(most, history.meanFraction(sample));
        }
        return new MoistureSpan(least, least, most);
    }
}
