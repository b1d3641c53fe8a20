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
 * <p>Only diffusivity and the habits of a household need years of their own: a few, between which courses are read
 * ({@link DiffusivityNodes}). A factor on the isotherm stretches moisture contents; air that is damper all year round
 * shifts them by what the isotherm says at the year's mean air, since a constant part of the forcing passes through a slab
 * unchanged. A season that is drier or damper than the normal one shifts them in the same way by as much as the scale
 * follows the seasons at all, most at its own driest or dampest and in proportion between.
 */
final class LayerMoisture {
    /** Equal layers of a scale. */
    static final int LAYERS = 8;

    /** Added to the moisture at finish to see what it makes, kg/kg. */
    private static final double WETTER_START = 0.01;

    /** A year whose start is known no better than this is not settled, kg/kg: ten times what the solver promises. */
    private static final double UNSETTLED_FRACTION = 10 * PeriodicMoisture.REPEATS_FRACTION;

    private final Destination destination;
    private final AirSeries air;
    private final Optional<AirSeries> drier;
    private final Optional<AirSeries> damper;
    private final double humidityDoubt;
    private final YearMean mean;
    private final double[] dry;
    private final Map<Key, LayeredCourse> years = new ConcurrentHashMap<>();
    private final Optional<StayMoisture> stays;

    /** Which air a year is run in. */
    private enum Habits {
        USUAL,
        DRIER,
        DAMPER
    }

    /** What a year of moisture depends on. */
    private record Key(String material, double thickness, double speed, double resistance, int layers, Habits habits) {

        Key at(double factor, Habits inAir) {
            return new Key(material, thickness, factor * speed, resistance, layers, inAir);
        }
    }

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
        drier = destination.drierHabits();
        damper = destination.damperHabits();
        humidityDoubt = destination.humidityDoubtFraction();
        dry = new double[air.size()];
        mean = YearMean.of(air);
    }

    /** Likewise for a knife finished in another state; shares what does not depend on it. */
    LayerMoisture madeAt(WorkState made) {
        return stays.map(chain -> new LayerMoisture(destination, Optional.of(chain.madeAt(made))))
                .orElse(this);
    }

    /**
     * Works out side by side, at less cost, what {@link #scaleMean} would work out one by one.
     *
     * @param parts what scales consist of
     * @param sampled whether doubts are to come
     */
    void prepareMeans(List<Hybrid.Part> parts, Handle handle, Finish finish, boolean sampled) {
        if (stays.isPresent()) {
            return; // years of a knife that moves house are kept elsewhere
        }
        for (Habits habits : Habits.values()) {
            boolean usual = habits == Habits.USUAL;
            if (usual || (sampled && (habits == Habits.DRIER ? drier : damper).isPresent())) {
                Map<Key, WaterUptake> wanted = new LinkedHashMap<>();
                for (Hybrid.Part part : parts) {
                    part.material().water().ifPresent(water -> {
                        DiffusivityNodes nodes = DiffusivityNodes.of(water);
                        Key value = key(part, water, handle, finish, habits);
                        wanted.put(value, water);
                        for (int node = 0;
                                usual && sampled && node < nodes.logFactors().size();
                                node++) {
                            wanted.put(value.at(nodes.factor(node), habits), water);
                        }
                    });
                }
                prepare(wanted, habits);
            }
        }
    }

    private void prepare(Map<Key, WaterUptake> wanted, Habits habits) {
        List<Key> keys = List.copyOf(wanted.keySet());
        List<PeriodicMoisture> found = PeriodicMoisture.ofAll(
                keys.stream().map(key -> slab(wanted.get(key), key)).toList(), air(habits), 0);
        for (int i = 0; i < keys.size(); i++) {
            if (isSettled(found.get(i))) { // one that is not is complained of when it is asked for
                years.put(keys.get(i), LayeredCourse.of(found.get(i).history()));
            }
        }
    }

    private static Key key(Hybrid.Part part, WaterUptake water, Handle handle, Finish finish, Habits habits) {
        return new Key(
                part.material().id(),
                handle.scaleThickness().metres(),
                uptakeFactor(water, part.cut(), handle),
                resistance(handle, finish),
                0,
                habits);
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
                * doubt.unsettledFactor(material)
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
                0,
                Habits.USUAL);
        return stays.isPresent()
                ? stays.get().history(key, slab(water, key), start(material, Doubt.NONE), 0, 0, air.stepSeconds())
                : year(water, key).history();
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

    /** The slab that such a scale is, for events; empty for what takes up no water. */
    Optional<Slab> scaleSlab(Material material, Cut cut, Handle handle, Finish finish, Doubt doubt) {
        return material.water()
                .map(water -> new Slab(
                        handle.scaleThickness().metres(),
                        water.dryDensity().value(),
                        water.isotherm(),
                        water.diffusivity().times(doubt.diffusivityFactor(material) * uptakeFactor(water, cut, handle)),
                        resistance(handle, finish)));
    }

    /** The slab that such a liner is, for events; empty for what takes up no water. */
    Optional<Slab> linerSlab(Material material, double halfWidthMetres, Finish finish, Doubt doubt) {
        return material.water()
                .map(water -> new Slab(
                        halfWidthMetres,
                        water.dryDensity().value(),
                        water.isotherm(),
                        water.diffusivity()
                                .times(doubt.diffusivityFactor(material)
                                        * water.acrossRatio().value()),
                        resistance(finish)));
    }

    private LayeredCourse still(int layers) {
        double[][] none = new double[layers][];
        java.util.Arrays.fill(none, dry);
        return new LayeredCourse(none, new MoistureCourse(dry, dry));
    }

    private LayeredCourse course(
            Material material,
            WaterUptake water,
            double thickness,
            double uptake,
            double resistance,
            int layers,
            Doubt doubt) {
        Key key = new Key(material.id(), thickness, uptake, resistance, layers, Habits.USUAL);
        if (stays.isPresent()) {
            return throughStays(stays.get(), material, key, doubt);
        }
        if (doubt.equals(Doubt.NONE)) {
            return computed(water, key);
        }
        DiffusivityNodes nodes = DiffusivityNodes.of(water);
        double[] weights = nodes.weights(doubt.diffusivityFactor(material));
        CourseBlend blend = new CourseBlend();
        for (int node = 0; node < weights.length; node++) {
            if (weights[node] != 0) {
                blend.add(weights[node], computed(water, key.at(nodes.factor(node), Habits.USUAL)));
            }
        }
        double habits = doubt.habits();
        Habits end = habits < 0 ? Habits.DRIER : Habits.DAMPER;
        if (habits != 0 && (end == Habits.DRIER ? drier : damper).isPresent()) {
            blend.add(Math.abs(habits), computed(water, key.at(1, end)));
            blend.add(-Math.abs(habits), computed(water, key));
        }
        return blend.course(
                doubt.sorptionFactor(material),
                mean.shiftFraction(water.isotherm(), doubt.airHumidityShift(humidityDoubt)),
                mean.shiftFraction(water.isotherm(), doubt.drySeasonShift()),
                mean.shiftFraction(water.isotherm(), doubt.dampSeasonShift()),
                mean.seasonsFraction(water.isotherm()));
    }

    /**
     * The course through stays: read between diffusivities as without, and on a straight line from the moisture it starts
     * with and from the humidity of the air. Habits, and seasons that stray from the normal ones, are left out there.
     */
    private LayeredCourse throughStays(StayMoisture chain, Material material, Key key, Doubt doubt) {
        WaterUptake water = material.water().orElseThrow();
        double start = start(material, Doubt.NONE);
        if (doubt.equals(Doubt.NONE)) {
            return chain.course(key, slab(water, key), start, 0, key.layers(), air.stepSeconds());
        }
        DiffusivityNodes nodes = DiffusivityNodes.of(water);
        double[] weights = nodes.weights(doubt.diffusivityFactor(material));
        double wetter = (start(material, doubt) - start) / WETTER_START;
        CourseBlend blend = new CourseBlend();
        for (int node = 0; node < weights.length; node++) {
            if (weights[node] != 0) {
                Key at = key.at(nodes.factor(node), Habits.USUAL);
                Slab slab = slab(water, at);
                blend.add(
                        weights[node] * (1 - wetter),
                        chain.course(at, slab, start, 0, key.layers(), air.stepSeconds()));
                blend.add(
                        weights[node] * wetter,
                        chain.course(at, slab, start + WETTER_START, 0, key.layers(), air.stepSeconds()));
            }
        }
        double damper = doubt.airHumidityShift(1);
        if (damper != 0) {
            Slab slab = slab(water, key);
            blend.add(
                    Math.abs(damper),
                    chain.course(key, slab, start, (int) Math.signum(damper), key.layers(), air.stepSeconds()));
            blend.add(-Math.abs(damper), chain.course(key, slab, start, 0, key.layers(), air.stepSeconds()));
        }
        return blend.course(doubt.sorptionFactor(material), 0, 0, 0, 0);
    }

    /** Moisture content at finish before the factor on the isotherm. */
    private double start(Material material, Doubt doubt) {
        return stockFraction(material, stays.orElseThrow().made(), doubt) / doubt.sorptionFactor(material);
    }

    private LayeredCourse computed(WaterUptake water, Key key) {
        return years.computeIfAbsent(
                key, missing -> LayeredCourse.of(year(water, missing).history()));
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
                        0,
                        Habits.USUAL));
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
        PeriodicMoisture year = PeriodicMoisture.of(slab(water, key), air(key.habits()), key.layers());
        requireSettled(key.material(), year);
        return year;
    }

    static void requireSettled(String material, PeriodicMoisture year) {
        if (!isSettled(year)) {
            throw new OutsideModelsException("the moisture of " + material + " does not come round to where the"
                    + " year began: it is still off by " + 100 * year.repeatsWithinFraction() + " % after "
                    + Math.round(year.spinUpYears()) + " years; check its diffusivity and sorption figures");
        }
    }

    private static boolean isSettled(PeriodicMoisture year) {
        return year.repeatsWithinFraction() <= UNSETTLED_FRACTION;
    }

    private AirSeries air(Habits habits) {
        return switch (habits) {
            case USUAL -> air;
            case DRIER -> drier.orElseThrow();
            case DAMPER -> damper.orElseThrow();
        };
    }
}
