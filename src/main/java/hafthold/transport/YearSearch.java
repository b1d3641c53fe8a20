package hafthold.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Looks for the start of the year that is also its end, for slabs side by side.
 *
 * <p>Slabs that forget within weeks are led in through the last weeks of the year before. Slow ones start from the
 * moisture that they must have deep inside, run a year, and have the gap between end and start turned into the distance
 * from the state that repeats (see {@link YearMemory}): one year of trial, as a rule, stands for decades of settling.
 */
final class YearSearch {
    private static final double MOST_YEARS = 12;

    private final AirTrack track;
    private final int layers;

    /** A search in some air, keeping so many layers. */
    YearSearch(AirTrack track, int layers) {
        this.track = track;
        this.layers = layers;
    }

    /**
     * The years of slabs that forget within one.
     *
     * @param layouts slabs of equally many points
     * @param start moisture to start from, one a slab
     * @param leadIn samples of lead-in, one a slab; the slabs of a bundle wait for each other
     */
    List<PeriodicMoisture> quick(List<SlabLayout> layouts, double[] start, int[] leadIn) {
        BundleRun run = new BundleRun(layouts, track);
        int samples = track.size();
        int first = samples - Arrays.stream(leadIn).max().orElse(0);
        double[] years = new double[start.length];
        for (int slab = 0; slab < start.length; slab++) {
            years[slab] = (double) leadIn[slab] / samples;
        }
        while (first < samples) {
            int next = samples;
            for (int slab = 0; slab < start.length; slab++) {
                int own = samples - leadIn[slab];
                if (own >= first) { // not under way yet: it starts now, or at a later turn anew
                    run.startLevel(slab, start[slab], first);
                }
                next = own > first ? Math.min(next, own) : next;
            }
            run.pass(first, next);
            first = next;
        }
        return settle(run, years, null);
    }

    /**
     * The years of slabs that remember longer.
     *
     * @param layouts slabs of equally many points
     * @param start moisture to start from, one a slab
     */
    List<PeriodicMoisture> slow(List<SlabLayout> layouts, double[] start) {
        BundleRun run = new BundleRun(layouts, track);
        for (int slab = 0; slab < start.length; slab++) {
            run.startLevel(slab, start[slab], 0);
        }
        return settle(run, new double[start.length], new BundleMemory(run));
    }

    /**
     * Runs the year, and again from a better start those slabs whose start was not good enough. Without memory, what gap
     * there is stands for the distance.
     */
    private List<PeriodicMoisture> settle(BundleRun run, double[] years, BundleMemory memory) {
        double[][] start = profiles(run);
        List<MoistureHistory> histories =
                run.record(track.size(), layers, memory == null || memory.isFull() ? BundleRun.Watch.NOTHING : memory);
        List<PeriodicMoisture> results = new ArrayList<>();
        List<Integer> again = new ArrayList<>();
        double[][] better = new double[start.length][];
        for (int slab = 0; slab < start.length; slab++) {
            double[] gap = gap(start[slab], run.profile(slab));
            double[] distance = memory == null ? gap : memory.distance(slab, gap);
            double largest = largest(distance);
            results.add(new PeriodicMoisture(histories.get(slab), years[slab], largest));
            if (largest > PeriodicMoisture.REPEATS_FRACTION && years[slab] < MOST_YEARS) {
                again.add(slab);
                better[slab] = moved(start[slab], distance);
            }
        }
        if (!again.isEmpty()) {
            BundleRun rest = new BundleRun(again.stream().map(run::layout).toList(), track);
            double[] restYears = new double[again.size()];
            for (int i = 0; i < restYears.length; i++) {
                rest.start(i, better[again.get(i)], 0);
                restYears[i] = years[again.get(i)] + 1;
            }
            List<PeriodicMoisture> found =
                    settle(rest, restYears, memory == null ? new BundleMemory(rest) : memory.of(again));
            for (int i = 0; i < restYears.length; i++) {
                results.set(again.get(i), found.get(i));
            }
        }
        return results;
    }

    private static double[][] profiles(BundleRun run) {
        double[][] profiles = new double[run.size()][];
        Arrays.setAll(profiles, run::profile);
        return profiles;
    }

    private static double[] gap(double[] start, double[] end) {
        double[] gap = new double[start.length];
        Arrays.setAll(gap, i -> end[i] - start[i]);
        return gap;
    }

    private static double[] moved(double[] start, double[] distance) {
        double[] moved = new double[start.length];
        Arrays.setAll(moved, i -> Math.max(0, start[i] + distance[i]));
        return moved;
    }

    private static double largest(double[] values) {
        return Arrays.stream(values).map(Math::abs).max().orElse(0);
    }
}
