package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.Handle;
import hafthold.knife.WorkState;
import hafthold.knife.WorkState.MeasuredMoisture;
import hafthold.knife.WorkState.SettledAir;
import hafthold.material.Cut;
import hafthold.material.Finish;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import hafthold.transport.EdgeUptake;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Slab;
import hafthold.transport.StillAirFilm;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    private final Destination destination;
    private final AirSeries air;
    private final double humidityDoubt;
    private final double meanCelsius;
    private final double meanHumidity;
    private final double[] dry;
    private final Map<Key, LayeredCourse> years = new ConcurrentHashMap<>();
    private final Optional<StayMoisture> stays;

    /** What a year of moisture depends on besides the air. */
    private record Key(String material, double thickness, double speed, double resistance, int layers) {}

    /** For a destination whose year repeats from its first sample. */
    LayerMoisture(Destination destination) {
        this(destination, Optional.empty());
    }

    /**
     * For a knife finished in a state.
     *
     * @param made where the moisture starts from when the destination has stays
     */
    LayerMoisture(Destination destination, WorkState made) {
        this(destination, destination.stays().map(chain -> new StayMoisture(chain, made)));
    }

    private LayerMoisture(Destination destination, Optional<StayMoisture> stays) {
        this.destination = destination;
        this.stays = stays;
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

    /** Likewise for a knife finished in another state; shares what does not depend on it. */
    LayerMoisture madeAt(WorkState made) {
        return stays.map(chain -> new LayerMoisture(destination, Optional.of(chain.madeAt(made))))
                .orElse(this);
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
        Key key = new Key(
                material.id(),
                handle.scaleThickness().metres(),
                uptakeFactor(water, cut, handle),
                resistance(handle, finish),
                0);
        return stays.isPresent()
                ? stays.get().history(key, slab(water, key), start(material, Doubt.NONE), 0, 0, air.stepSeconds())
                : year(water, key).history();
    }

    /**
     * Works out side by side, at less cost, what {@link #scaleMean} would work out one by one.
     *
     * @param parts what scales consist of
     * @param doubts doubts to come
     */
    void prepareMeans(List<Hybrid.Part> parts, Handle handle, Finish finish, List<Doubt> doubts) {
        if (stays.isPresent()) {
            return; // years of a knife that moves house are kept elsewhere
        }
        Map<Key, WaterUptake> wanted = new LinkedHashMap<>();
        for (Hybrid.Part part : parts) {
            part.material().water().ifPresent(water -> {
                for (Doubt doubt : doubts) {
                    double speed = doubt.diffusivityFactor(part.material()) * uptakeFactor(water, part.cut(), handle);
                    wanted.put(
                            new Key(
                                    part.material().id(),
                                    handle.scaleThickness().metres(),
                                    speed,
                                    resistance(handle, finish),
                                    0),
                            water);
                }
            });
        }
        List<Key> keys = List.copyOf(wanted.keySet());
        List<PeriodicMoisture> found = PeriodicMoisture.ofAll(
                keys.stream().map(key -> slab(wanted.get(key), key)).toList(), air, 0);
        for (int i = 0; i < keys.size(); i++) {
            if (isSettled(found.get(i))) { // one that is not is complained of when it is asked for
                years.put(keys.get(i), LayeredCourse.of(found.get(i).history(), 1, 0));
            }
        }
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
        Key asked = new Key(material.id(), thickness, speed, resistance, layers);
        if (stays.isPresent()) {
            return stays.get()
                    .course(
                            asked,
                            slab(water, asked),
                            start(material, doubt),
                            (int) doubt.airHumidityShift(1),
                            layers,
                            air.stepSeconds())
                    .with(doubt.sorptionFactor(material), 0);
        }
        LayeredCourse year = years.computeIfAbsent(
                asked, key -> LayeredCourse.of(year(water, key).history(), 1, 0));
        return year.with(doubt.sorptionFactor(material), shift(water, doubt));
    }

    /** Moisture content at finish before the factor on the isotherm. */
    private double start(Material material, Doubt doubt) {
        return stockFraction(material, stays.orElseThrow().made(), doubt) / doubt.sorptionFactor(material);
    }

    /**
     * Such a scale as moisture sees it.
     *
     * @param speedFactor on the diffusivity
     * @throws java.util.NoSuchElementException when the material takes up no water
     */
    static Slab slab(Material material, Cut cut, Handle handle, Finish finish, double speedFactor) {
        WaterUptake water = material.water().orElseThrow();
        return slab(
                water,
                new Key(
                        material.id(),
                        handle.scaleThickness().metres(),
                        speedFactor * uptakeFactor(water, cut, handle),
                        resistance(handle, finish),
                        0));
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
        requireSettled(key.material(), year);
        return year;
    }

    private static boolean isSettled(PeriodicMoisture year) {
        return year.repeatsWithinFraction() <= UNSETTLED_FRACTION;
    }

    static void requireSettled(String material, PeriodicMoisture year) {
        if (!isSettled(year)) {
            throw new OutsideModelsException("the moisture of " + material + " does not come round to where the"
                    + " year began: it is still off by " + 100 * year.repeatsWithinFraction() + " % after "
                    + Math.round(year.spinUpYears()) + " years; check its diffusivity and sorption figures");
        }
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
