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
import hafthold.transport.EdgeUptake;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Slab;
import hafthold.transport.StillAirFilm;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Moisture, layer by layer where asked for, of whatever a knife for one destination is made of; each year is computed once
 * and kept for every doubt and every change of the build that shares it.
 *
 * <p>Only a doubt about the diffusivity needs a year of its own. A factor on the isotherm stretches moisture contents; air
 * that is damper all year round shifts them by what the isotherm says at the year's mean air, since a constant part of
 * the forcing passes through a slab unchanged.
 */
final class LayerMoisture {
    /** Equal layers of a scale. */
    static final int LAYERS = 8;

    private static final double LARGEST_MEAN_HUMIDITY = 0.98;
    /** A year whose start is known no better than this is not settled, kg/kg: ten times what the solver promises. */
    private static final double UNSETTLED_FRACTION = 10 * PeriodicMoisture.REPEATS_FRACTION;

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

    /** A scale that takes up water by its outer face, edges and ends, in {@link #LAYERS} layers. */
    LayeredCourse scale(Material material, Cut cut, Handle handle, Finish finish, Doubt doubt) {
        return scale(material, cut, handle, finish, LAYERS, doubt);
    }

    /** The mean of such a scale alone, at less cost. */
    MoistureCourse scaleMean(Material material, Cut cut, Handle handle, Finish finish, Doubt doubt) {
        return scale(material, cut, handle, finish, 0, doubt).mean();
    }

    /**
     * Everything about the moisture of such a scale, everything at its value.
     *
     * @throws java.util.NoSuchElementException when the material takes up no water
     */
    MoistureHistory scaleHistory(Material material, Cut cut, Handle handle, Finish finish) {
        WaterUptake water = material.water().orElseThrow();
        return year(
                        water,
                        new Key(
                                material.id(),
                                handle.scaleThickness().metres(),
                                uptakeFactor(water, cut, handle),
                                resistance(handle, finish),
                                0))
                .history();
    }

    private LayeredCourse scale(Material material, Cut cut, Handle handle, Finish finish, int layers, Doubt doubt) {
        return material.water()
                .map(water -> course(
                        material,
                        water,
                        handle.scaleThickness().metres(),
                        uptakeFactor(water, cut, handle),
                        resistance(handle, finish),
                        layers,
                        doubt))
                .orElseGet(() -> still(layers));
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

    /** Film and finish of the face, thinner in effect as edges and ends are open and finished too. */
    private static double resistance(Handle handle, Finish finish) {
        return resistance(finish)
                / EdgeUptake.exposedAreaRatio(
                        handle.scaleThickness().metres(),
                        handle.tangWidth().metres() / 2,
                        handle.length().metres() / 2);
    }

    private static double resistance(Finish finish) {
        return StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM
                + finish.resistance().value();
    }

    /**
     * A sheet between glue lines, which takes up water by its edges only.
     *
     * @param halfWidthMetres from the middle to the edge
     */
    LayeredCourse liner(Material material, double halfWidthMetres, Finish finish, Doubt doubt) {
        return material.water()
                .map(water -> course(
                        material, water, halfWidthMetres, water.acrossRatio().value(), resistance(finish), 1, doubt))
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
                        resistance(finish),
                        1,
                        doubt))
                .orElseGet(() -> still(1));
    }

    private LayeredCourse still(int layers) {
        double[][] none = new double[layers][];
        java.util.Arrays.fill(none, dry);
        return new LayeredCourse(none, new MoistureCourse(dry, dry, 1, 0));
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
                key -> LayeredCourse.of(year(water, key).history(), 1, 0));
        return year.with(doubt.sorptionFactor(material), shift(water, doubt));
    }

    private static Slab slab(WaterUptake water, Key key) {
        return new Slab(
                key.thickness(),
                water.dryDensity().value(),
                water.isotherm(),
                water.diffusivity().times(key.speed()),
                key.resistance());
    }

    /** The year that repeats; one that does not is no answer. */
    private PeriodicMoisture year(WaterUptake water, Key key) {
        PeriodicMoisture year = PeriodicMoisture.of(slab(water, key), air, key.layers());
        if (year.repeatsWithinFraction() > UNSETTLED_FRACTION) {
            throw new OutsideModelsException("the moisture of " + key.material() + " does not come round to where the"
                    + " year began: it is still off by " + 100 * year.repeatsWithinFraction() + " % after "
                    + Math.round(year.spinUpYears()) + " years; check its diffusivity and sorption figures");
        }
        return year;
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
