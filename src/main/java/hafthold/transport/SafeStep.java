package hafthold.transport;

import java.util.List;

/** {@link ImplicitEulerStep} for one slab of a bundle at a time; made when first needed, which is seldom. */
final class SafeStep {
    private final List<SlabLayout> layouts;
    private final AirTrack track;
    private final ImplicitEulerStep[] step;

    SafeStep(List<SlabLayout> layouts, AirTrack track) {
        this.layouts = layouts;
        this.track = track;
        step = new ImplicitEulerStep[layouts.size()];
    }

    /**
     * Moves a profile through a step.
     *
     * @param low no point can end below it
     * @param high no point can end above it
     * @return what passed the surface outwards, moisture content times metres
     */
    double take(int slab, double[] profile, AirInstant to, double seconds, double low, double high) {
        SlabLayout layout = layouts.get(slab);
        if (step[slab] == null) {
            step[slab] = new ImplicitEulerStep(
                    new SlabEquation(layout.slab(), layout.grid()),
                    layout.storage().lumped());
        }
        SlabAir air = SlabAir.of(layout.slab(), to, track.laws().indexOf(layout.slab()));
        double[] next = new double[profile.length];
        step[slab].take(profile, air, seconds, low, high, next);
        System.arraycopy(next, 0, profile, 0, profile.length);
        return step[slab].loss();
    }
}
