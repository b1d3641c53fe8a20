package hafthold.transport;

import java.util.List;

/**
 * Carries the moisture of a bundle of slabs from one air sample to the next. All take the same step; those whose local
 * error is not small, or of which a point would leave the range between what was in the slab and what the air asks for,
 * are gathered and go in two halves. What a slab does depends on no other.
 */
final class BundleStepper {
    /** Shortest step: sample interval over 2^12, about a second of an hour. */
    private static final int MOST_HALVINGS = 12;
    /** Moisture content by which a point may leave the range of state and air. */
    private static final double RANGE_SLACK = 1e-7;

    /** An activity that differs from the humidity by this much does so in truth, whatever its series lost. */
    private static final double SURE_DIFFERENCE = 1e-3;

    /** Change of a M up to which psi goes by its series, to 4e-7 of the change. */
    private static final double LONGEST_SERIES = 0.25;

    private final SlabBundle lumped;
    private final LaneGroup[] group = new LaneGroup[MOST_HALVINGS + 1];
    private final LaneGroup[] lumpedGroup = new LaneGroup[MOST_HALVINGS + 1];
    private final AirInstant[] halfway = new AirInstant[MOST_HALVINGS];
    private final RosenbrockStep step;
    private final SafeStep safeStep;
    private final AirTrack track;
    private final WaterLedger ledger;
    private final int width;

    BundleStepper(List<SlabLayout> layouts, AirTrack track) {
        this.track = track;
        width = layouts.size();
        int points = layouts.get(0).points();
        SlabBundle whole = new SlabBundle(points, width);
        lumped = new SlabBundle(points, width);
        for (int lane = 0; lane < width; lane++) {
            whole.set(lane, layouts.get(lane), track.laws());
            lumped.set(lane, layouts.get(lane).lumped(), track.laws());
        }
        group[0] = new LaneGroup(whole, width);
        for (int i = 0; i < MOST_HALVINGS; i++) {
            halfway[i] = track.instant();
        }
        step = new RosenbrockStep(points, width);
        safeStep = new SafeStep(layouts, track);
        ledger = new WaterLedger(width);
    }

    BundleState state() {
        return group[0].state;
    }

    SlabBundle bundle() {
        return group[0].bundle;
    }

    WaterLedger ledger() {
        return ledger;
    }

    /** Works out anew what is carried along by series. */
    void refresh(AirInstant air) {
        group[0].state.refresh(bundle(), width, air.temperatureCelsius);
    }

    /** Moves a single slab through air that stands still by one safe step, off the ledger. */
    void ease(int slab, AirInstant air, double seconds) {
        LaneGroup all = group[0];
        double[] profile = all.state.profile(slab);
        double rest = all.bundle.equilibrium(slab, air);
        double low = Math.min(all.state.low[slab], rest);
        double high = Math.max(all.state.high[slab], rest);
        safeStep.take(slab, profile, air, seconds, low, high);
        all.state.setProfile(slab, profile);
        all.state.refreshLane(all.bundle, slab, air.temperatureCelsius);
    }

    /** Moves the state from one instant to the next along straight-line air. */
    void advance(AirInstant from, AirInstant to, double seconds) {
        advance(from, to, seconds, 0);
    }

    private void advance(AirInstant from, AirInstant to, double seconds, int halvings) {
        LaneGroup here = group[halvings];
        boolean shortest = halvings == MOST_HALVINGS;
        take(here, from, to, seconds);
        LaneGroup halved = null;
        LaneGroup overshooting = null;
        int moved = 0;
        for (int lane = 0; lane < here.lanes; lane++) {
            if (!shortest && !isAccurate(here, lane)) {
                halved = gather(group, halvings + 1, halved, here, lane, bundle());
            } else if (!staysInRange(here, lane, from, to)) {
                overshooting = gather(lumpedGroup, halvings, overshooting, here, lane, lumped);
            } else {
                accept(here, lane, to);
                moved++;
            }
        }
        if (moved == here.lanes) {
            here.moveOn();
            return;
        }
        keepAccepted(here, halved, overshooting);
        if (overshooting != null) {
            halved = advanceLumped(overshooting, here, halved, from, to, seconds, halvings);
        }
        if (halved != null) {
            AirInstant middle = halfway[halvings];
            track.halfway(from, to, middle);
            advance(from, middle, 0.5 * seconds, halvings + 1);
            advance(middle, to, 0.5 * seconds, halvings + 1);
            halved.giveBack(here);
        }
    }

    /** Tries the lanes again with lumped storage; those that still will not go are gathered for halving, or go safely. */
    private LaneGroup advanceLumped(
            LaneGroup overshooting,
            LaneGroup here,
            LaneGroup gathered,
            AirInstant from,
            AirInstant to,
            double seconds,
            int halvings) {
        LaneGroup halved = gathered;
        boolean shortest = halvings == MOST_HALVINGS;
        take(overshooting, from, to, seconds);
        for (int lane = 0; lane < overshooting.lanes; lane++) {
            int origin = overshooting.origin[lane];
            if ((shortest || isAccurate(overshooting, lane)) && staysInRange(overshooting, lane, from, to)) {
                accept(overshooting, lane, to);
                here.state.copy(origin, overshooting.next, lane);
            } else if (shortest) {
                goSafely(here, origin, from, to, seconds, step.error(lane));
            } else {
                halved = gather(group, halvings + 1, halved, here, origin, bundle());
            }
        }
        return halved;
    }

    private void goSafely(LaneGroup here, int lane, AirInstant from, AirInstant to, double seconds, double error) {
        int slab = here.slab[lane];
        double[] profile = here.state.profile(lane);
        double before = here.bundle.equilibrium(lane, from);
        double after = here.bundle.equilibrium(lane, to);
        double low = Math.min(here.state.low[lane], Math.min(before, after));
        double high = Math.max(here.state.high[lane], Math.max(before, after));
        double loss = safeStep.take(slab, profile, to, seconds, low, high);
        here.state.setProfile(lane, profile);
        here.state.refreshLane(here.bundle, lane, to.temperatureCelsius);
        ledger.tried(slab);
        ledger.accepted(slab, loss, error);
    }

    /** Adds a lane to a group, which is emptied first if it is not yet in use. */
    private LaneGroup gather(
            LaneGroup[] groups, int level, LaneGroup inUse, LaneGroup here, int lane, SlabBundle bundle) {
        if (groups[level] == null) {
            groups[level] = new LaneGroup(bundle.points, width);
        }
        LaneGroup into = groups[level];
        if (inUse == null) {
            into.lanes = 0;
        }
        into.take(here, lane, bundle);
        return into;
    }

    /** Moves on the lanes that were accepted, while the others stay where they were. */
    private static void keepAccepted(LaneGroup here, LaneGroup halved, LaneGroup overshooting) {
        putBack(here, halved);
        putBack(here, overshooting);
        here.moveOn();
    }

    private static void putBack(LaneGroup here, LaneGroup rest) {
        for (int i = 0; rest != null && i < rest.lanes; i++) {
            here.next.copy(rest.origin[i], here.state, rest.origin[i]);
        }
    }

    private void take(LaneGroup lanes, AirInstant from, AirInstant to, double seconds) {
        step.take(lanes.bundle, lanes.state, lanes.lanes, from, to, seconds, lanes.next);
        for (int lane = 0; lane < lanes.lanes; lane++) {
            ledger.tried(lanes.slab[lane]);
        }
    }

    private boolean isAccurate(LaneGroup lanes, int lane) {
        return step.error(lane) <= lanes.bundle.tolerance[lane]
                && step.largestChange(lane) <= lanes.bundle.largestChange[lane];
    }

    private void accept(LaneGroup lanes, int lane, AirInstant to) {
        if (lanes.bundle.exponent[lane] * step.largestChange(lane) > LONGEST_SERIES) {
            lanes.next.refreshLane(lanes.bundle, lane, to.temperatureCelsius);
        }
        ledger.accepted(lanes.slab[lane], step.loss(lane), step.error(lane));
    }

    /** Maximum principle: no point beyond the range of the state before and the equilibria of the air. */
    private static boolean staysInRange(LaneGroup lanes, int lane, AirInstant from, AirInstant to) {
        double low = lanes.state.low[lane] - RANGE_SLACK;
        double high = lanes.state.high[lane] + RANGE_SLACK;
        double nextLow = lanes.next.low[lane];
        double nextHigh = lanes.next.high[lane];
        double surface = lanes.next.moisture[lanes.bundle.points - 1][lane];
        double activity = lanes.next.activity.value[lane];
        boolean isDriedByAir = nextLow == surface && surface >= 0 && activity > to.humidity + SURE_DIFFERENCE;
        boolean isWettedByAir = nextHigh == surface && activity < to.humidity - SURE_DIFFERENCE;
        if ((nextLow >= low || isDriedByAir) && (nextHigh <= high || isWettedByAir)) {
            return true;
        }
        double before = lanes.bundle.equilibrium(lane, from);
        double after = lanes.bundle.equilibrium(lane, to);
        return nextLow >= Math.min(low, Math.min(before, after) - RANGE_SLACK)
                && nextHigh <= Math.max(high, Math.max(before, after) + RANGE_SLACK);
    }
}
