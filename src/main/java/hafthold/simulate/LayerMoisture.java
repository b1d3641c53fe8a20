package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.Handle;
import hafthold.knife.WorkState;
import hafthold.knife.WorkState.MeasuredMoisture;
import hafthold.knife.WorkState.SettledAir;
import hafthold.material.Cut;
import hafthold.material.Finish;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Slab;
import hafthold.transport.StillAirFilm;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Moisture layer by layer of whatever a knife for one destination is made of; each year is computed once and kept for
 * every doubt and every change of the build that shares it.
 *
 * <p>As in {@link MoistureYears} only the diffusivity needs a year of its own: a factor on the isotherm stretches
 * moisture contents, damper air shifts them.
 */
final class LayerMoisture {
    /** Equal layers of a scale. */
    static final int LAYERS = 8;

    private static final double LARGEST_MEAN_HUMIDITY = 0.98;

    private final AirSeries air;
    private final double humidityDoubt;
    private final double meanCelsius;
    private final double meanHumidity;
    private final double[] dry;
    private final Map<Key, LayeredCourse> years = new ConcurrentHashMap<>();

    /** What a year of moisture depends on besides the air. */
    private record Key(String material, double thickness, double speed, double resistance, int layers) {}

    LayerMoisture(Destination destination) {
        air = destination.air();
        humidityDoubt = destination.humidityDoubtFraction();
        dry = new double[air.size()];
        double temperature = 0;
        double humidity = 0;
        for (int hour = 0; hour < air.size(); hour++) {
            temperature += air.temperatureCelsius(hour) / air.size();
            humidity += air.relativeHumidityFraction(hour) / air.size();
        }
        meanCelsius = temperature;
        meanHumidity = humidity;
    }

    /** Moisture content at a moment of the work, kg/kg; zero for what takes up no water. */
    double stockFraction(Material material, WorkState state, Doubt doubt) {
        if (material.water().isEmpty()) {
            return 0;
        }
        if (state instanceof MeasuredMoisture measured) {
            return doubt.measuredMoisture(measured.moisture().fraction());
        }
        SettledAir settled = (SettledAir) state;
        return doubt.sorptionFactor(material)
                * material.water()
                        .orElseThrow()
                        .isotherm()
                        .moistureFraction(
                                doubt.madeHumidity(settled.humidity().fraction()),
                                settled.temperature().celsius());
    }

    /** A scale that takes up water by its outer face, edges and ends. */
    LayeredCourse scale(Material material, Cut cut, Handle handle, Finish finish, Doubt doubt) {
        return material.water()
                .map(water -> course(
                        material,
                        water,
                        handle.scaleThickness().metres(),
                        MoistureYears.uptakeFactor(water, cut, handle),
                        finish.resistance().value(),
                        LAYERS,
                        doubt))
                .orElseGet(() -> still(LAYERS));
    }

    /**
     * A sheet between glue lines, which takes up water by its edges only.
     *
     * @param halfWidthMetres from the middle to the edge
     */
    LayeredCourse liner(Material material, double halfWidthMetres, Finish finish, Doubt doubt) {
        return material.water()
                .map(water -> course(
                        material,
                        water,
                        halfWidthMetres,
                        water.acrossRatio().value(),
                        finish.resistance().value(),
                        1,
                        doubt))
                .orElseGet(() -> still(1));
    }

    /**
     * A part that is open to the air all round, taken as a slab of half its smaller side.
     *
     * @param halfSizeMetres half the smaller side
     */
    LayeredCourse block(Material material, Cut cut, double halfSizeMetres, Finish finish, Doubt doubt) {
        return material.water()
                .map(water -> course(
                        material,
                        water,
                        halfSizeMetres,
                        cut.thickness()
                                .mean(
                                        water.alongRatio().value(),
                                        water.acrossRatio().value(),
                                        1),
                        finish.resistance().value(),
                        1,
                        doubt))
                .orElseGet(() -> still(1));
    }

    private LayeredCourse still(int layers) {
        double[][] none = new double[layers][];
        java.util.Arrays.fill(none, dry);
        return new LayeredCourse(none, new MoistureCourse(dry, 1, 0));
    }

    private LayeredCourse course(
            Material material,
            WaterUptake water,
            double thickness,
            double uptake,
            double resistance,
            int layers,
            Doubt doubt) {
        double speed = doubt.diffusivityFactor(material) * uptake;
        LayeredCourse year = years.computeIfAbsent(
                new Key(material.id(), thickness, speed, resistance, layers),
                key -> LayeredCourse.of(
                        PeriodicMoisture.of(slab(water, key), air, layers).history(), 1, 0));
        return year.with(doubt.sorptionFactor(material), shift(water, doubt));
    }

    private static Slab slab(WaterUptake water, Key key) {
        return new Slab(
                key.thickness(),
                water.dryDensity().value(),
                water.isotherm(),
                water.diffusivity().times(key.speed()),
                StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM + key.resistance());
    }

    private double shift(WaterUptake water, Doubt doubt) {
        double shift = doubt.airHumidityShift(humidityDoubt);
        double shifted = Math.max(0, Math.min(LARGEST_MEAN_HUMIDITY, meanHumidity + shift));
        return shift == 0
                ? 0
                : water.isotherm().moistureFraction(shifted, meanCelsius)
                        - water.isotherm().moistureFraction(meanHumidity, meanCelsius);
    }
}
