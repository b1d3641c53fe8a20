package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.air.SaturationPressure;
import java.util.Arrays;

/**
 * Looks for the start of the year that is also its end.
 *
 * <p>A slab that forgets within weeks is led in through the last weeks of the year before. A slow one starts from the
 * moisture that it must have deep inside, runs a year, and has the gap between end and start turned into the distance
 * from the state that repeats (see {@link YearMemory}): one year of trial, as a rule, stands for decades of settling.
 */
final class YearSearch {
    private static final double MOST_YEARS = 12;
    /** e^-12 of a change is still felt after the lead-in: 6e-6. */
    private static final double LEAD_IN_FOLDS = 12;
    /** Every seventh hour meets each time of day in turn. */
    private static final int STRIDE = 7;

    private final Slab slab;
    private final AirSeries air;
    private final int layers;
    private final SaturationPressure saturation;
    private final SlabRun run;
    private double[] start;
    private double[] distance;
    private MoistureHistory history;

    YearSearch(Slab slab, AirSeries air, int layers, SaturationPressure saturation, Resolution resolution) {
        this.slab = slab;
        this.air = air;
        this.layers = layers;
        this.saturation = saturation;
        run = new SlabRun(slab, air, saturation, resolution);
    }

    PeriodicMoisture result() {
        Arrays.fill(run.moisture(), deepMoisture());
        int samples = air.size();
        int leadIn = leadIn();
        double years = 0;
        if (leadIn < samples) {
            run.pass(samples - leadIn, samples);
            years = (double) leadIn / samples;
        }
        runYear();
        while (largest(distance) > PeriodicMoisture.REPEATS_FRACTION && years < MOST_YEARS) {
            for (int i = 0; i < start.length; i++) {
                run.moisture()[i] = Math.max(0, start[i] + distance[i]);
            }
            runYear();
            years++;
        }
        return new PeriodicMoisture(history, years, largest(distance));
    }

    private void runYear() {
        start = run.moisture().clone();
        YearMemory memory = new YearMemory(run);
        history = run.record(air.size(), layers, memory);
        double[] gap = new double[start.length];
        for (int i = 0; i < gap.length; i++) {
            gap[i] = run.moisture()[i] - start[i];
        }
        distance = memory.distance(gap);
    }

    /** Samples back from the end of the year until the slab has forgotten what was before, or the whole year. */
    private int leadIn() {
        double folds = 0;
        int samples = 0;
        while (folds < LEAD_IN_FOLDS && samples < air.size()) {
            int i = air.size() - 1 - samples;
            int next = Math.min(air.size(), samples + STRIDE);
            folds += (next - samples)
                    * air.stepSeconds()
                    / SettlingTime.eFoldingSeconds(
                            slab, air.temperatureCelsius(i), air.relativeHumidityFraction(i), saturation);
            samples = next;
        }
        return samples;
    }

    /**
     * Moisture deep in a slow bare slab. In a year that repeats no water passes any depth on balance, so the year's mean of
     * D_T psi is the same at all depths; at the surface, at rest with the air, it is known.
     */
    private double deepMoisture() {
        double a = slab.diffusivity().moistureExponent();
        double weight = 0;
        double sum = 0;
        for (int i = 0; i < air.size(); i += STRIDE) {
            double t = air.temperatureCelsius(i);
            double moisture = slab.isotherm().moistureFraction(air.relativeHumidityFraction(i), t);
            double speed = slab.diffusivity().temperatureFactor(t);
            weight += speed;
            sum += speed * (a == 0 ? moisture : Math.expm1(a * moisture) / a);
        }
        double psi = sum / weight;
        return a == 0 ? psi : Math.log1p(a * psi) / a;
    }

    private static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }
}
