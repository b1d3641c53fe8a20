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

/**
 * Moisture of the scales of one order, each year computed once and kept for every cut and doubt that shares it.
 *
 * <p>Only a doubt about the diffusivity needs a year of its own. A factor on the isotherm stretches moisture contents;
 * air that is damper all year round shifts them by what the isotherm says at the year's mean air, since a constant part
 * of the forcing passes through a slab unchanged.
 */
final class MoistureYears {
    private static final double LARGEST_MEAN_HUMIDITY = 0.98;

    private final Conditions conditions;
    private final double[] dry;
    private final double meanCelsius;
    private final double meanHumidity;
    private final Map<Key, double[]> years = new ConcurrentHashMap<>();

    /** What a year of moisture depends on besides the order. */
    private record Key(String material, double diffusivityFactor) {}

    MoistureYears(Conditions conditions) {
        this.conditions = conditions;
        AirSeries air = conditions.destination().air();
        this.dry = new double[air.size()];
        double temperature = 0;
        double humidity = 0;
        for (int hour = 0; hour < air.size(); hour++) {
            temperature += air.temperatureCelsius(hour) / air.size();
            humidity += air.relativeHumidityFraction(hour) / air.size();
        }
        this.meanCelsius = temperature;
        this.meanHumidity = humidity;
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

    /** Mean moisture content hour by hour; zero for what takes up no water. */
    MoistureCourse course(Material material, Cut cut, Doubt doubt) {
        if (material.water().isEmpty()) {
            return new MoistureCourse(dry, 1, 0);
        }
        WaterUptake water = material.water().orElseThrow();
        double speed = doubt.diffusivityFactor(material) * uptakeFactor(water, cut, conditions.handle());
        double[] year = years.computeIfAbsent(
                new Key(material.id(), speed),
                key -> means(PeriodicMoisture.of(slab(water, speed), air()).history()));
        return new MoistureCourse(year, doubt.sorptionFactor(material), shift(water, doubt));
    }

    /**
     * Everything about the moisture of a material that takes up water, layer by layer.
     *
     * @param layers equal layers of thickness to keep, zero or more
     * @throws java.util.NoSuchElementException when the material takes up none
     */
    MoistureHistory history(Material material, Cut cut, int layers) {
        WaterUptake water = material.water().orElseThrow();
        return PeriodicMoisture.of(slab(water, uptakeFactor(water, cut, conditions.handle())), air(), layers)
                .history();
    }

    private double shift(WaterUptake water, Doubt doubt) {
        double shift = doubt.airHumidityShift(conditions.destination().humidityDoubtFraction());
        double shifted = Math.max(0, Math.min(LARGEST_MEAN_HUMIDITY, meanHumidity + shift));
        return shift == 0
                ? 0
                : water.isotherm().moistureFraction(shifted, meanCelsius)
                        - water.isotherm().moistureFraction(meanHumidity, meanCelsius);
    }

    private AirSeries air() {
        return conditions.destination().air();
    }

    private static double[] means(MoistureHistory history) {
        double[] means = new double[history.size()];
        for (int hour = 0; hour < means.length; hour++) {
            means[hour] = history.meanFraction(hour);
        }
        return means;
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

    /** Diffusivity through the scale as it lies, its edges and ends counted in, over that through the material. */
    static double uptakeFactor(WaterUptake water, Cut cut, Handle handle) {
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
