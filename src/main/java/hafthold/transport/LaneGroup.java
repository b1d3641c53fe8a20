package hafthold.transport;

import java.util.Arrays;

/** Some lanes of a bundle gathered together, which go through the same step of time. */
final class LaneGroup {
    final SlabBundle bundle;
    /** Where each lane came from in the group that it was gathered from. */
    final int[] origin;
    /** Which slab of the whole bundle each lane is. */
    final int[] slab;

    BundleState state;
    BundleState next;
    int lanes;

    LaneGroup(int points, int width) {
        bundle = new SlabBundle(points, width);
        origin = new int[width];
        slab = new int[width];
        state = new BundleState(points, width);
        next = new BundleState(points, width);
    }

    /** Every lane of a bundle. */
    LaneGroup(SlabBundle bundle, int width) {
        this.bundle = bundle;
        origin = new int[width];
        slab = new int[width];
        Arrays.setAll(slab, lane -> lane);
        state = new BundleState(bundle.points, width);
        next = new BundleState(bundle.points, width);
        lanes = width;
    }

    /** Takes in a lane of another group with its state. */
    void take(LaneGroup other, int lane, SlabBundle whole) {
        bundle.copy(lanes, whole, other.slab[lane]);
        state.copy(lanes, other.state, lane);
        origin[lanes] = lane;
        slab[lanes] = other.slab[lane];
        lanes++;
    }

    /** Gives every lane's state back to where it came from. */
    void giveBack(LaneGroup other) {
        for (int lane = 0; lane < lanes; lane++) {
            other.state.copy(origin[lane], state, lane);
        }
    }

    /** The next state becomes the state. */
    void moveOn() {
        BundleState passed = state;
        state = next;
        next = passed;
    }
}
