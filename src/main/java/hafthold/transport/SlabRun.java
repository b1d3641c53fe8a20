package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.air.SaturationPressure;
import hafthold.numeric.GradedGrid;
import hafthold.numeric.HatWeights;

/** A slab laid out on its grid and led through a series of air. */
final class SlabRun {
    private static final double STEEPEST_GRADING = 1.6;
    private static final double HOUR_SECONDS = 3600;

    private final GradedGrid grid;
    private final HatWeights storage;
    private final double[] content;
    private final AirTrack track;
    private final MoistureStepper stepper;
    private AirInstant from = new AirInstant();
    private AirInstant to = new AirInstant();

    SlabRun(Slab slab, AirSeries air, SaturationPressure saturation, Resolution resolution) {
        MeanAir meanAir = MeanAir.of(air);
        double moisture = slab.isotherm().moistureFraction(meanAir.humidity(), meanAir.temperatureCelsius());
        double diffusivity = slab.diffusivity().squareMetresPerSecond(moisture, meanAir.temperatureCelsius());
        double hourDepth = Math.sqrt(diffusivity * HOUR_SECONDS);
        grid = grid(slab.thicknessMetres(), resolution.gaps(), resolution.finestGap() * hourDepth);
        storage = HatWeights.parabolic(grid);
        content = storage.totals();
        track = new AirTrack(air, slab, saturation);
        double saturated = slab.isotherm().moistureFraction(1, meanAir.temperatureCelsius());
        stepper = new MoistureStepper(
                slab, grid, storage, resolution.tolerance() * saturated, resolution.largestChangeFraction());
    }

    /** Where a slow slab needs steeper grading than its parabolas bear, it gets more points. */
    private static GradedGrid grid(double thickness, int gaps, double finestGap) {
        GradedGrid grid = GradedGrid.of(thickness, gaps, finestGap);
        return grid.steepestRatio() <= STEEPEST_GRADING ? grid : grid(thickness, gaps + 1, finestGap);
    }

    GradedGrid grid() {
        return grid;
    }

    HatWeights storage() {
        return storage;
    }

    AirTrack track() {
        return track;
    }

    MoistureStepper stepper() {
        return stepper;
    }

    /** Moisture content at the grid points, live. */
    double[] moisture() {
        return stepper.moisture();
    }

    /** Leads the slab from one sample to a later one; samples count on into the repeated series. */
    void pass(int first, int last) {
        track.sample(first, from);
        for (int i = first; i < last; i++) {
            step(i);
        }
    }

    /** Leads the slab through {@code intervals} from the first sample and takes down every sample of the series. */
    MoistureHistory record(int intervals, int layers, Watch watch) {
        HistoryRecorder recorder = new HistoryRecorder(grid, storage, layers, track.size());
        stepper.startLedger();
        double contentBefore = content();
        track.sample(0, from);
        for (int i = 0; i < intervals; i++) {
            recorder.take(i, moisture());
            step(i);
            watch.after(i, moisture(), from);
        }
        if (intervals < track.size()) {
            recorder.take(intervals, moisture());
        }
        double missing = content() - contentBefore + stepper.loss();
        double handled = Math.abs(content()) + stepper.grossLoss();
        double residual = handled == 0 ? 0 : Math.abs(missing) / handled;
        return new MoistureHistory(recorder, track.stepSeconds(), stepper, residual);
    }

    private void step(int sample) {
        track.sample(sample + 1, to);
        stepper.advance(track, from, to, track.stepSeconds());
        AirInstant passed = from;
        from = to;
        to = passed;
    }

    private double content() {
        double sum = 0;
        double[] moisture = moisture();
        for (int i = 0; i < content.length; i++) {
            sum += content[i] * moisture[i];
        }
        return sum;
    }

    /** Looks at the state after each sample interval. */
    interface Watch {
        /** Watches nothing. */
        Watch NOTHING = (sample, moisture, air) -> {};

        void after(int sample, double[] moisture, AirInstant air);
    }
}
