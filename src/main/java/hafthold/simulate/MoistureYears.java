package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.Handle;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import hafthold.transport.EdgeUptake;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Slab;
import hafthold.transport.StillAirFilm;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Moisture of the scales of one order, each year computed once and kept for every cut and doubt that shares it. */
final class MoistureYears {
    private final Conditions conditions;
    private final Map<Double, AirSeries> shiftedAir = new ConcurrentHashMap<>();
    private final Map<Key, MoistureHistory> years = new ConcurrentHashMap<>();

    /** What a year of moisture depends on besides the order. */
    private record Key(String material, double diffusivityFactor, double airHumidityShift) {}

    MoistureYears(Conditions conditions) {
        this.conditions = conditions;
    }

    /** Moisture content at final sanding, kg/kg; zero for what takes up no water. */
    double finishFraction(Material material, Doubt doubt) {
        return material.water()
                .map(water -> doubt.sorptionFactor(material)
                        * water.isotherm()
                                .moistureFraction(
                                        doubt.madeHumidity(
                                                conditions.madeHumidity().fraction()),
                                        conditions.madeTemperature().celsius()))
                .orElse(0.0);
    }

    /** Mean moisture content hour by hour, kg/kg; zeros for what takes up no water. */
    double[] yearFraction(Material material, Cut cut, Doubt doubt) {
        double[] mean = new double[conditions.destination().air().size()];
        if (material.water().isPresent()) {
            MoistureHistory history = history(material, cut, doubt);
            double factor = doubt.sorptionFactor(material);
            for (int hour = 0; hour < mean.length; hour++) {
                mean[hour] = factor * history.meanFraction(hour);
            }
        }
        return mean;
    }

    /**
     * The whole history of a material that takes up water.
     *
     * @throws java.util.NoSuchElementException when it takes up none
     */
    MoistureHistory history(Material material, Cut cut, Doubt doubt) {
        WaterUptake water = material.water().orElseThrow();
        double factor = doubt.diffusivityFactor(material) * uptakeFactor(water, cut, conditions.handle());
        double shift = doubt.airHumidityShift(conditions.destination().humidityDoubtFraction());
        return years.computeIfAbsent(
                new Key(material.id(), factor, shift),
                key -> PeriodicMoisture.of(slab(water, factor), air(shift)).history());
    }

    private Slab slab(WaterUptake water, double diffusivityFactor) {
        return new Slab(
                conditions.handle().scaleThickness().metres(),
                water.dryDensity().value(),
                water.isotherm(),
                water.diffusivity().times(diffusivityFactor),
                StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM
                        + conditions.finish().resistance().value());
    }

    private AirSeries air(double shift) {
        return shift == 0
                ? conditions.destination().air()
                : shiftedAir.computeIfAbsent(shift, conditions.destination().air()::withHumidityShift);
    }

    /** Diffusivity through the scale as it lies, its edges and ends counted in, over that through the material. */
    private static double uptakeFactor(WaterUptake water, Cut cut, Handle handle) {
        double along = water.alongRatio().value();
        double across = water.acrossRatio().value();
        double throughScale = cut.thickness().mean(along, across, 1);
        return throughScale
                * EdgeUptake.factor(
                        handle.scaleThickness().metres(),
                        handle.tangWidth().metres() / 2,
                        handle.length().metres() / 2,
                        cut.width().mean(along, across, 1) / throughScale,
                        cut.length().mean(along, across, 1) / throughScale);
    }
}
