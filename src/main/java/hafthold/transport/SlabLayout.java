package hafthold.transport;

import hafthold.numeric.GradedGrid;
import hafthold.numeric.HatWeights;

/**
 * One slab cut in depth, with how exactly its steps in time are taken.
 *
 * @param slab the scale
 * @param grid its points, finest at the air
 * @param storage what each point answers for
 * @param tolerance largest local error of a step, moisture content
 * @param largestChange largest change of a point in a step, moisture content
 */
record SlabLayout(Slab slab, GradedGrid grid, HatWeights storage, double tolerance, double largestChange) {
    /** Ratio of neighbouring gaps that their parabolas bear where only slow changes come deep. */
    private static final double STEEPEST_GRADING = 1.8;

    /** The same where the seasons reach the tang. */
    private static final double STEEPEST_REACHED = 1.5;

    private static final double SEASONS_HOURS = 182 * 24;
    /** More than one at a time, so that many slabs have equally many points and can go side by side. */
    private static final int MORE_GAPS = 3;

    private static final double HOUR_SECONDS = 3600;

    static SlabLayout of(Slab slab, MeanAir mean, Resolution resolution) {
        double moisture = slab.isotherm().moistureFraction(mean.humidity(), mean.temperatureCelsius());
        double diffusivity = slab.diffusivity().squareMetresPerSecond(moisture, mean.temperatureCelsius());
        double hourDepth = Math.sqrt(diffusivity * HOUR_SECONDS);
        boolean isReached = hourDepth * Math.sqrt(SEASONS_HOURS) > slab.thicknessMetres();
        GradedGrid grid = grid(
                slab.thicknessMetres(),
                resolution.gaps(),
                resolution.finestGap() * hourDepth,
                isReached ? STEEPEST_REACHED : STEEPEST_GRADING);
        double saturated = slab.isotherm().moistureFraction(1, mean.temperatureCelsius());
        return new SlabLayout(
                slab,
                grid,
                HatWeights.parabolic(grid),
                resolution.tolerance() * saturated,
                resolution.largestChangeFraction());
    }

    /** Where a slab needs steeper grading than its parabolas bear, it gets more points. */
    private static GradedGrid grid(double thickness, int gaps, double finestGap, double steepest) {
        GradedGrid grid = GradedGrid.of(thickness, gaps, finestGap);
        return grid.steepestRatio() <= steepest ? grid : grid(thickness, gaps + MORE_GAPS, finestGap, steepest);
    }

    int points() {
        return grid.size();
    }

    /** The same with storage lumped at the points, which overshoots less. */
    SlabLayout lumped() {
        return new SlabLayout(slab, grid, storage.lumped(), tolerance, largestChange);
    }
}
