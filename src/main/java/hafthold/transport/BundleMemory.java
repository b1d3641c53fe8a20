package hafthold.transport;

import java.util.Arrays;
import java.util.List;

/**
 * {@link YearMemory} of every slab of a bundle, fed with the year's mean air stretch by stretch. Once full it serves for
 * every further year of these slabs: what they remember hardly depends on how near they are to the year that repeats.
 */
final class BundleMemory implements BundleRun.Watch {
    private static final int STRETCHES = 61;

    private final int stride;
    private final int[] law;
    private final YearMemory[] memory;
    private final AirInstant mean;
    private boolean full;

    BundleMemory(BundleRun run) {
        stride = Math.max(1, run.track().size() / STRETCHES);
        law = new int[run.size()];
        memory = new YearMemory[run.size()];
        for (int slab = 0; slab < memory.length; slab++) {
            law[slab] = run.track().laws().indexOf(run.layout(slab).slab());
            memory[slab] = new YearMemory(run.layout(slab));
        }
        mean = run.track().instant();
    }

    private BundleMemory(BundleMemory whole, List<Integer> slabs) {
        stride = whole.stride;
        law = slabs.stream().mapToInt(slab -> whole.law[slab]).toArray();
        memory = slabs.stream().map(slab -> whole.memory[slab]).toArray(YearMemory[]::new);
        mean = whole.mean;
        full = whole.full;
    }

    /** The memory of some of the slabs. */
    BundleMemory of(List<Integer> slabs) {
        return new BundleMemory(this, slabs);
    }

    /** True once a year has been watched. */
    boolean isFull() {
        return full;
    }

    @Override
    public void after(int sample, BundleRun run, AirInstant air) {
        mean.saturationPascals += air.saturationPascals / stride;
        for (int i = 0; i < mean.speed.length; i++) {
            mean.speed[i] += air.speed[i] / stride;
        }
        if ((sample + 1) % stride != 0) {
            return;
        }
        mean.temperatureCelsius = air.temperatureCelsius;
        mean.humidity = air.humidity;
        double seconds = stride * run.track().stepSeconds();
        for (int slab = 0; slab < memory.length; slab++) {
            SlabAir felt = SlabAir.of(run.layout(slab).slab(), mean, law[slab]);
            memory[slab].pass(run.profile(slab), felt, seconds);
        }
        mean.saturationPascals = 0;
        Arrays.fill(mean.speed, 0);
    }

    /** How far a slab's start lies from the state that repeats, when its year ends with this gap to its start. */
    double[] distance(int slab, double[] gap) {
        full = true;
        return memory[slab].distance(gap);
    }
}
