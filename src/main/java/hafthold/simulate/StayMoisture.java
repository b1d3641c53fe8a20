package hafthold.simulate;

import hafthold.air.StayChain;
import hafthold.knife.WorkState;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Slab;
import hafthold.transport.TransientMoisture;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Moisture of whatever a knife is made of from final sanding through its stays: from the state it was finished in through
 * each of them to a year in the last, and then the last one's year as it comes round for ever. What lies between the two
 * years at the end goes from the one to the other without going beyond them.
 */
final class StayMoisture {
    private static final double HOUR_SECONDS = 3600;
    private static final int HOURS_A_DAY = 24;

    private final StayChain chain;
    private final WorkState made;
    private final Map<Start, LayeredCourse> courses;
    private final Map<Round, MoistureHistory> rounds;

    /** One run through the stays: which slab, from what moisture, on which side of the doubt about the air. */
    private record Start(Slab slab, double startFraction, int side, int layers) {}

    /** One year that repeats. */
    private record Round(Slab slab, int side, int samplesAnHour, int layers) {}

    StayMoisture(StayChain chain, WorkState made) {
        this(chain, made, new ConcurrentHashMap<>(), new ConcurrentHashMap<>());
    }

    private StayMoisture(
            StayChain chain, WorkState made, Map<Start, LayeredCourse> courses, Map<Round, MoistureHistory> rounds) {
        this.chain = chain;
        this.made = made;
        this.courses = courses;
        this.rounds = rounds;
    }

    /** The same stays of a knife finished in another state; shares all courses. */
    StayMoisture madeAt(WorkState other) {
        return new StayMoisture(chain, other, courses, rounds);
    }

    /** State at finish. */
    WorkState made() {
        return made;
    }

    /**
     * Layers hour by hour.
     *
     * @param material id, for complaints
     * @param startFraction moisture content at finish, the same at every depth, kg/kg
     * @param side of the doubt about the humidity of the air: -1, 0 or 1
     * @param stepSeconds time between samples, an hour or a part of it; the same in every call
     */
    LayeredCourse course(String material, Slab slab, double startFraction, int side, int layers, double stepSeconds) {
        return courses.computeIfAbsent(
                new Start(slab, startFraction, side, layers),
                start -> LayeredCourse.of(history(material, slab, startFraction, side, layers, stepSeconds)));
    }

    /**
     * Everything about the moisture.
     *
     * @param material id, for complaints
     * @param stepSeconds time between samples, an hour or a part of it
     */
    MoistureHistory history(
            String material, Slab slab, double startFraction, int side, int layers, double stepSeconds) {
        int finer = (int) Math.round(HOUR_SECONDS / stepSeconds);
        MoistureHistory round = rounds.computeIfAbsent(new Round(slab, side, finer, layers), none -> {
            PeriodicMoisture year =
                    PeriodicMoisture.of(slab, chain.repeatingAir(side).finer(finer), layers);
            SlabYears.requireSettled(material, year);
            return year.history();
        });
        int samples = chain.daysBeforeRepeat() * HOURS_A_DAY * finer + 1;
        return TransientMoisture.from(
                        slab,
                        new double[] {startFraction},
                        chain.air(side).finer(finer).firstSamples(samples),
                        layers)
                .followedBy(round);
    }
}
