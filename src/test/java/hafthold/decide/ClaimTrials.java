package hafthold.decide;

import hafthold.air.Event;
import hafthold.knife.FullTangKnife;
import hafthold.knife.KnifeHistory;
import hafthold.simulate.Cause;
import hafthold.simulate.Cause.Kind;
import hafthold.simulate.ReturnEngine;
import hafthold.simulate.ReturnSample;
import hafthold.simulate.Sampling;
import hafthold.table.EventTable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Returned knives whose truth is known, judged as the command judges. What the judge draws hangs on the days and points of
 * measuring alone and is drawn once for all knives.
 */
final class ClaimTrials {
    static final double ERROR = 0.03;
    static final int SAMPLES = 200;
    static final long SEED = 1;

    /** Those that may happen to a knife in use: parcels are none. */
    static final List<Event> EVENTS = EventTable.read(FitOrders.TABLES).all().stream()
            .filter(event -> !event.id().startsWith("parcel"))
            .toList();

    /** What acts has one chance in five each, as the judge takes it: one to the weather's four. */
    private static final double OFF = 0.2;

    private final FullTangKnife knife = ClaimOrders.walnut(50);
    private final KnifeHistory any;
    private final boolean alsoAtBench;
    private final ReturnEngine engine;
    private final Map<Integer, DrawnCauses> drawn = new HashMap<>();

    /**
     * A knife whose truth is known.
     *
     * @param acted which of finish, place and use acted; none where it was the weather
     * @param steps what is to be measured without error, m
     */
    record Truth(Set<Kind> acted, double[] steps) {}

    ClaimTrials(boolean alsoAtBench) {
        this.alsoAtBench = alsoAtBench;
        any = ClaimOrders.history(ERROR, alsoAtBench, alsoAtBench ? new double[2] : new double[1]);
        engine = new ReturnEngine(knife, ClaimOrders.home(0), any, new Sampling(SAMPLES, SEED));
    }

    /** What an engine draws of other knives: with wood, home or stock of their own. */
    ReturnEngine truths(FullTangKnife really, int homePoints, int knives) {
        return new ReturnEngine(really, ClaimOrders.home(homePoints), any, new Sampling(knives, 5));
    }

    /** Judges one, measured with chance errors. */
    WeighedClaim judge(Truth truth, long chance) {
        Random random = new Random(100 + chance);
        double[] read = truth.steps().clone();
        for (int i = 0; i < read.length; i++) {
            read[i] = 1000 * read[i] + random.nextGaussian() * ERROR / 1.645;
        }
        KnifeHistory history = ClaimOrders.history(ERROR, alsoAtBench, read);
        return WeighedClaim.of(TriedCauses.of(this::drawn, SAMPLES, history.measured()), knife, history);
    }

    private DrawnCauses drawn(int samples) {
        return drawn.computeIfAbsent(
                samples, count -> DrawnCauses.of(engine.drawing(new Sampling(count, SEED)), EVENTS, any));
    }

    /** Judges them all. */
    ClaimTally judged(List<Truth> truths) {
        ClaimTally tally = new ClaimTally();
        for (int i = 0; i < truths.size(); i++) {
            tally.add(truths.get(i), judge(truths.get(i), i));
        }
        return tally;
    }

    /** Knives of which some of finish and place are far off; of use each event in turn, lately and long ago by turns. */
    static List<Truth> far(ReturnEngine truths, Set<Kind> acted, int knives) {
        List<Truth> drawn = new ArrayList<>();
        List<ReturnSample> off = truths.samples(off(acted), Optional.empty());
        if (!acted.contains(Kind.USE)) {
            off.subList(0, knives).forEach(knife -> drawn.add(new Truth(acted, knife.steps())));
            return drawn;
        }
        for (int i = 0; i < knives; i++) {
            Event event = EVENTS.get(i % EVENTS.size());
            boolean longAgo = i / EVENTS.size() % 2 == 1;
            drawn.add(new Truth(acted, with(truths, event, longAgo, off.get(i))));
        }
        return drawn;
    }

    /** Knives as they come: each of finish, place and use acts or not, two of them at most. */
    static List<Truth> mixed(ReturnEngine truths, int knives) {
        Random random = new Random(3);
        Map<Cause, List<ReturnSample>> off = new HashMap<>();
        List<Truth> drawn = new ArrayList<>();
        for (int i = 0; i < knives; i++) {
            Set<Kind> acted = EnumSet.noneOf(Kind.class);
            do {
                acted.clear();
                for (Kind kind : List.of(Kind.FINISH, Kind.PLACE, Kind.USE)) {
                    if (random.nextDouble() < OFF) {
                        acted.add(kind);
                    }
                }
            } while (acted.size() == 3);
            Cause cause = off(acted);
            ReturnSample knife = off.computeIfAbsent(cause, one -> truths.samples(one, Optional.empty()))
                    .get(i);
            Event event = EVENTS.get(random.nextInt(EVENTS.size()));
            boolean longAgo = random.nextBoolean();
            drawn.add(new Truth(
                    EnumSet.copyOf(acted.isEmpty() ? EnumSet.noneOf(Kind.class) : acted),
                    acted.contains(Kind.USE) ? with(truths, event, longAgo, knife) : knife.steps()));
        }
        return drawn;
    }

    private static double[] with(ReturnEngine truths, Event event, boolean longAgo, ReturnSample knife) {
        return truths.samples(new Cause(Kind.USE, event.id(), longAgo), event, List.of(knife))
                .get(0)
                .steps();
    }

    private static Cause off(Set<Kind> acted) {
        boolean finish = acted.contains(Kind.FINISH);
        boolean place = acted.contains(Kind.PLACE);
        return finish && place ? Cause.FINISH_AND_PLACE : finish ? Cause.FINISH : place ? Cause.PLACE : Cause.WEATHER;
    }
}
