package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Resolution;
import hafthold.transport.Slab;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Years of moisture that repeat in the air of one destination, each worked out once whatever is made of it. */
final class SlabYears {
    /** A year whose start is known no better than this is not settled, kg/kg: ten times what the solver promises. */
    private static final double UNSETTLED_FRACTION = 10 * PeriodicMoisture.REPEATS_FRACTION;

    private static final SaturationPressure SATURATION = new HylandWexlerSaturationPressure();

    private final AirSeries usual;
    private final Optional<AirSeries> drier;
    private final Optional<AirSeries> damper;
    private final Map<Key, LayeredCourse> years = new ConcurrentHashMap<>();

    /** What a household does to its air. */
    enum Habits {
        USUAL,
        DRIER,
        DAMPER
    }

    private record Key(Slab slab, int layers, Habits habits, Resolution resolution) {}

    SlabYears(Destination destination) {
        usual = destination.air();
        drier = destination.drierHabits();
        damper = destination.damperHabits();
    }

    /** True where a household has these habits. */
    boolean knows(Habits habits) {
        return habits == Habits.USUAL || (habits == Habits.DRIER ? drier : damper).isPresent();
    }

    /**
     * The year of a slab.
     *
     * @param material id, for complaints
     * @param layers equal layers that are kept, may be 0
     * @throws OutsideModelsException when it does not come round
     */
    LayeredCourse year(String material, Slab slab, int layers, Habits habits, Resolution resolution) {
        return years.computeIfAbsent(new Key(slab, layers, habits, resolution), missing -> {
            PeriodicMoisture year = PeriodicMoisture.of(slab, air(habits), layers, SATURATION, resolution);
            requireSettled(material, year);
            return LayeredCourse.of(year.history());
        });
    }

    /** Works out the years of slabs without layers side by side, at less cost than one by one and with the same answers. */
    void prepare(Collection<Slab> wanted, Habits habits, Resolution resolution) {
        List<Slab> slabs = wanted.stream().distinct().toList();
        List<PeriodicMoisture> found = PeriodicMoisture.ofAll(slabs, air(habits), 0, SATURATION, resolution);
        for (int i = 0; i < slabs.size(); i++) {
            if (isSettled(found.get(i))) { // one that is not is complained of when it is asked for
                years.put(
                        new Key(slabs.get(i), 0, habits, resolution),
                        LayeredCourse.of(found.get(i).history()));
            }
        }
    }

    private AirSeries air(Habits habits) {
        return switch (habits) {
            case USUAL -> usual;
            case DRIER -> drier.orElseThrow();
            case DAMPER -> damper.orElseThrow();
        };
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
}
