package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.Blank;
import hafthold.knife.Handle;
import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.material.Finish;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import hafthold.simulate.SlabYears.Habits;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Resolution;
import hafthold.transport.Slab;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Moisture, layer by layer where asked for, of whatever a knife for one destination is made of; each year is computed once
 * and kept for every doubt and every change of the build that shares it.
 *
 * <p>Only diffusivity and the habits of a household need years of their own: a few, between which courses are read
 * ({@link DiffusivityNodes}). All else changes a course as a whole ({@link CourseChange}).
 */
final class LayerMoisture {
    /** Equal layers of a scale. */
    static final int LAYERS = 8;

    /** Added to the moisture at finish to see what it makes, kg/kg. */
    private static final double WETTER_START = 0.01;

    private final Destination destination;
    private final AirSeries air;
    private final double humidityDoubt;
    private final YearMean mean;
    private final double[] dry;
    private final SlabYears years;
    private final Optional<StayMoisture> stays;

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
        years = new SlabYears(destination);
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
        List<Slab> values = new ArrayList<>();
        List<Slab> others = new ArrayList<>();
        for (Hybrid.Part part : parts) {
            PartSlab.scale(part.material(), part.cut(), handle, finish, Doubt.NONE)
                    .ifPresent(value -> {
                        values.add(value);
                        DiffusivityNodes nodes =
                                new DiffusivityNodes(part.material().water().orElseThrow());
                        for (int node = 0; node < nodes.size(); node++) {
                            if (node != nodes.value()) {
                                others.add(PartSlab.quicker(value, nodes.factor(node)));
                            }
                        }
                    });
        }
        List<Runnable> wanted = new ArrayList<>();
        wanted.add(() -> years.prepare(values, Habits.USUAL, Resolution.STANDARD));
        if (sampled) {
            wanted.add(() -> years.prepare(others, Habits.USUAL, Resolution.SAMPLED));
            for (Habits habits : List.of(Habits.DRIER, Habits.DAMPER)) {
                if (years.knows(habits)) {
                    wanted.add(() -> years.prepare(values, habits, Resolution.SAMPLED));
                }
            }
        }
        wanted.parallelStream().forEach(Runnable::run);
    }

    /** Moisture content at a moment of the work, kg/kg; zero for what takes up no water. */
    double stockFraction(Material material, WorkState state, Doubt doubt) {
        return doubt.stockFraction(material, state);
    }

    /** A scale that takes up water by its outer face, edges and ends, in {@link #LAYERS} layers. */
    LayeredCourse scale(Material material, Cut cut, Handle handle, Finish finish, Doubt doubt) {
        return scale(material, cut, handle, finish, LAYERS).course(doubt);
    }

    /** The mean of such a scale alone, at less cost, whatever the doubt. */
    DoubtedMoisture scaleMean(Material material, Cut cut, Handle handle, Finish finish) {
        return scale(material, cut, handle, finish, 0);
    }

    /**
     * Everything about the moisture of such a scale, everything at its value.
     *
     * @throws java.util.NoSuchElementException when the material takes up no water
     */
    MoistureHistory scaleHistory(Material material, Cut cut, Handle handle, Finish finish) {
        Slab slab = PartSlab.scale(material, cut, handle, finish, Doubt.NONE).orElseThrow();
        if (stays.isPresent()) {
            return stays.get().history(material.id(), slab, start(material, Doubt.NONE), 0, 0, air.stepSeconds());
        }
        PeriodicMoisture year = PeriodicMoisture.of(slab, air, 0);
        SlabYears.requireSettled(material.id(), year);
        return year.history();
    }

    private DoubtedMoisture scale(Material material, Cut cut, Handle handle, Finish finish, int layers) {
        return of(material, PartSlab.scale(material, cut, handle, finish, Doubt.NONE), layers);
    }

    /** A liner, see {@link PartSlab#liner}. */
    LayeredCourse liner(Material material, double halfWidthMetres, Finish finish, Doubt doubt) {
        return of(material, PartSlab.liner(material, halfWidthMetres, finish, Doubt.NONE), 1)
                .course(doubt);
    }

    /** A block, see {@link PartSlab#block}. */
    LayeredCourse block(Material material, Cut cut, double halfSizeMetres, Finish finish, Doubt doubt) {
        return of(material, PartSlab.block(material, cut, halfSizeMetres, finish), 1)
                .course(doubt);
    }

    /** The mean of a blank, see {@link PartSlab#blank}, whatever the doubt. */
    DoubtedMoisture blankMean(Material material, Cut cut, Blank blank) {
        return of(material, PartSlab.blank(material, cut, blank), 0);
    }

    private DoubtedMoisture of(Material material, Optional<Slab> slab, int layers) {
        if (slab.isEmpty()) {
            return still(layers);
        }
        return stays.isPresent()
                ? throughStays(stays.get(), material, slab.get(), layers)
                : throughTheYear(material, slab.get(), layers);
    }

    private DoubtedMoisture still(int layers) {
        double[][] none = new double[layers][];
        Arrays.fill(none, dry);
        return DoubtedMoisture.certain(new LayeredCourse(none, new MoistureCourse(dry, dry)));
    }

    /** Computed courses: one a diffusivity, then one each for the habits of a household. */
    private DoubtedMoisture throughTheYear(Material material, Slab slab, int layers) {
        WaterUptake water = material.water().orElseThrow();
        DiffusivityNodes nodes = new DiffusivityNodes(water);
        int drier = nodes.size();
        int damper = drier + 1;
        double seasons = mean.seasonsFraction(water.isotherm());
        return new DoubtedMoisture(
                nodes.size() + (years.knows(Habits.DRIER) ? 2 : 0),
                nodes.value(),
                number -> number < drier
                        ? years.year(
                                material.id(),
                                PartSlab.quicker(slab, nodes.factor(number)),
                                layers,
                                Habits.USUAL,
                                number == nodes.value() ? Resolution.STANDARD : Resolution.SAMPLED)
                        : years.year(
                                material.id(),
                                slab,
                                layers,
                                number == drier ? Habits.DRIER : Habits.DAMPER,
                                Resolution.SAMPLED),
                new DoubtedMoisture.Reading() {
                    @Override
                    public double[] weights(Doubt doubt) {
                        double[] weights = nodes.weights(doubt.diffusivityFactor(material), damper + 1);
                        double habits = doubt.habits();
                        if (years.knows(habits < 0 ? Habits.DRIER : Habits.DAMPER)) {
                            weights[habits < 0 ? drier : damper] = Math.abs(habits);
                            weights[nodes.value()] -= Math.abs(habits);
                        }
                        return weights;
                    }

                    @Override
                    public CourseChange change(Doubt doubt) {
                        return new CourseChange(
                                doubt.sorptionFactor(material),
                                mean.shiftFraction(water.isotherm(), doubt.airHumidityShift(humidityDoubt)),
                                mean.shiftFraction(water.isotherm(), doubt.drySeasonShift()),
                                mean.shiftFraction(water.isotherm(), doubt.dampSeasonShift()),
                                seasons);
                    }
                });
    }

    /**
     * The courses through stays: one a diffusivity, then the same from a wetter start, then one each for drier and damper
     * air: read on a straight line from the moisture it starts with and from the humidity of the air. Habits, and seasons
     * that stray from the normal ones, are left out there.
     */
    private DoubtedMoisture throughStays(StayMoisture chain, Material material, Slab slab, int layers) {
        DiffusivityNodes nodes = new DiffusivityNodes(material.water().orElseThrow());
        double start = start(material, Doubt.NONE);
        int wetter = nodes.size();
        int drier = 2 * wetter;
        int damper = drier + 1;
        return new DoubtedMoisture(
                damper + 1,
                nodes.value(),
                number -> number < drier
                        ? chain.course(
                                material.id(),
                                PartSlab.quicker(slab, nodes.factor(number % wetter)),
                                number < wetter ? start : start + WETTER_START,
                                0,
                                layers,
                                air.stepSeconds())
                        : chain.course(material.id(), slab, start, number == drier ? -1 : 1, layers, air.stepSeconds()),
                new DoubtedMoisture.Reading() {
                    @Override
                    public double[] weights(Doubt doubt) {
                        double[] weights = nodes.weights(doubt.diffusivityFactor(material), damper + 1);
                        double startsWetter = (start(material, doubt) - start) / WETTER_START;
                        for (int node = 0; node < wetter; node++) {
                            weights[wetter + node] = weights[node] * startsWetter;
                            weights[node] *= 1 - startsWetter;
                        }
                        double humidity = doubt.airHumidityShift(1);
                        weights[humidity < 0 ? drier : damper] = Math.abs(humidity);
                        weights[nodes.value()] -= Math.abs(humidity);
                        return weights;
                    }

                    @Override
                    public CourseChange change(Doubt doubt) {
                        return CourseChange.stretch(doubt.sorptionFactor(material));
                    }
                });
    }

    /** Moisture content at finish before the factor on the isotherm. */
    private double start(Material material, Doubt doubt) {
        return stockFraction(material, stays.orElseThrow().made(), doubt) / doubt.sorptionFactor(material);
    }
}
