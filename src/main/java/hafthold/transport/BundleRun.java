package hafthold.transport;

import java.util.Arrays;
import java.util.List;

/** Slabs of equally many points led side by side through a series of air. */
final class BundleRun {
    /** After so many samples what the steps carry along by series is worked out anew. */
    private static final int REFRESH_SAMPLES = 24;

    private final List<SlabLayout> layouts;
    private final AirTrack track;
    private final BundleStepper stepper;
    private AirInstant from;
    private AirInstant to;

    BundleRun(List<SlabLayout> layouts, AirTrack track) {
        this.layouts = layouts;
        this.track = track;
        stepper = new BundleStepper(layouts, track);
        from = track.instant();
        to = track.instant();
    }

    int size() {
        return layouts.size();
    }

    SlabLayout layout(int slab) {
        return layouts.get(slab);
    }

    AirTrack track() {
        return track;
    }

    /** Moisture of a slab from the tang to the air, a copy. */
    double[] profile(int slab) {
        return stepper.state().profile(slab);
    }

    /** Puts a slab into a state at a sample, whatever the others are doing. */
    void start(int slab, double[] profile, int sample) {
        track.sample(sample, from);
        stepper.state().setProfile(slab, profile);
        stepper.state().refreshLane(stepper.bundle(), slab, from.temperatureCelsius);
    }

    /**
     * Puts a slab level, which it is to forget again, and lets it go through one safe step of the air of a sample: out of
     * balance with the air at a sharp edge, it would need steps of seconds that nobody asks for.
     */
    void startLevel(int slab, double moisture, int sample) {
        double[] level = new double[layouts.get(slab).points()];
        Arrays.fill(level, moisture);
        start(slab, level, sample);
        stepper.ease(slab, from, track.stepSeconds());
    }

    /** Leads the slabs from one sample to a later one; samples count on into the repeated series. */
    void pass(int first, int last) {
        track.sample(first, from);
        for (int i = first; i < last; i++) {
            step(i);
        }
    }

    /**
     * Leads the slabs through {@code intervals} from the first sample and takes down every sample of the series.
     *
     * @return one history a slab
     */
    List<MoistureHistory> record(int intervals, int layers, Watch watch) {
        HistoryRecorder recorder = new HistoryRecorder(layouts, layers, track.size());
        WaterLedger ledger = stepper.ledger();
        ledger.clear();
        track.sample(0, from);
        stepper.refresh(from);
        recorder.open(stepper.state());
        for (int i = 0; i < intervals; i++) {
            recorder.take(i, stepper.state());
            step(i);
            watch.after(i, this, from);
        }
        if (intervals < track.size()) {
            recorder.take(intervals, stepper.state());
        }
        return recorder.histories(stepper.state(), ledger, track.stepSeconds());
    }

    private void step(int sample) {
        track.sample(sample + 1, to);
        stepper.advance(from, to, track.stepSeconds());
        AirInstant passed = from;
        from = to;
        to = passed;
        if ((sample + 1) % REFRESH_SAMPLES == 0) {
            stepper.refresh(from);
        }
    }

    /** Looks at the slabs after each sample interval. */
    interface Watch {
        /** Watches nothing. */
        Watch NOTHING = (sample, run, air) -> {};

        void after(int sample, BundleRun run, AirInstant air);
    }
}
