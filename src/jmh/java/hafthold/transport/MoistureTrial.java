package hafthold.transport;

import com.sun.management.ThreadMXBean;
import hafthold.air.AirSeries;
import java.lang.management.ManagementFactory;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;

/**
 * Error and cost side by side: years of several slabs at several resolutions, their worst deviation from a converged year,
 * and the processor time of a simulated year in a bundle of 64.
 */
public final class MoistureTrial {
    private static final int BUNDLE = 64;
    private static final int ROUNDS = 3;
    private static final AirSeries AIR = RoughYear.hourly(20260101);

    private MoistureTrial() {}

    /** Lines of a table in CSV, header first. */
    public static List<String> lines() throws Exception {
        Map<String, Slab> slabs = new LinkedHashMap<>();
        slabs.put("hardwood 4 mm", Rack.hardwood(4e-3, 0));
        slabs.put("hardwood 8 mm", Rack.hardwood(8e-3, 0));
        slabs.put("hardwood 8 mm varnished", Rack.hardwood(8e-3, 1e9));
        slabs.put("cotton laminate", Rack.laminate(5e-13, 0.08, 1.3));
        slabs.put("fibre liner", Rack.fibreLiner());
        List<String> lines = new java.util.ArrayList<>();
        lines.add("slab,intervals,steps,cpu_ms_per_simulated_year,simulated_years,mean,surface,first_moment");
        ForkJoinPool oneThread = new ForkJoinPool(1);
        for (Map.Entry<String, Slab> slab : slabs.entrySet()) {
            MoistureHistory converged = PeriodicMoisture.of(
                            slab.getValue(), AIR, 0, Sheet.SATURATION, Resolution.CONVERGED)
                    .history();
            for (int gaps : new int[] {8, Resolution.STANDARD.gaps(), 18}) {
                Callable<String> row = () -> row(slab.getKey(), slab.getValue(), gaps, converged);
                lines.add(oneThread.submit(row).get());
            }
        }
        return lines;
    }

    private static String row(String name, Slab slab, int gaps, MoistureHistory converged) {
        Resolution standard = Resolution.STANDARD;
        Resolution resolution = new Resolution(
                gaps,
                standard.finestGap(),
                standard.tolerance(),
                standard.largestChangeFraction(),
                standard.airStrayFraction(),
                standard.longestStepHours());
        List<Slab> slabs = alike(slab, BUNDLE);
        ThreadMXBean clock = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double best = Double.POSITIVE_INFINITY;
        List<PeriodicMoisture> years = List.of();
        for (int round = 0; round < ROUNDS; round++) {
            long start = clock.getCurrentThreadCpuTime();
            years = PeriodicMoisture.ofAll(slabs, AIR, 0, Sheet.SATURATION, resolution);
            best = Math.min(best, (clock.getCurrentThreadCpuTime() - start) * 1e-6);
        }
        double simulated = years.stream().mapToDouble(year -> 1 + year.spinUpYears()).sum();
        MoistureHistory history = years.get(0).history();
        return String.format(
                Locale.ROOT,
                "%s,%d,%d,%.2f,%.2f,%.1e,%.1e,%.1e",
                name,
                gaps,
                history.steps(),
                best / simulated,
                simulated / BUNDLE,
                worst(history, converged, MoistureHistory::meanFraction),
                worst(history, converged, MoistureHistory::surfaceFraction),
                worst(history, converged, MoistureHistory::firstMomentFraction));
    }

    /** A slab and others through which water moves a little faster. */
    static List<Slab> alike(Slab slab, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> new Slab(
                        slab.thicknessMetres(),
                        slab.dryDensityKilogramsPerCubicMetre(),
                        slab.isotherm(),
                        slab.diffusivity().times(1 + 1e-4 * i),
                        slab.surfaceResistanceSquareMetreSecondPascalsPerKilogram()))
                .toList();
    }

    static double worst(
            MoistureHistory one, MoistureHistory other, ToDoubleBiFunction<MoistureHistory, Integer> quantity) {
        double worst = 0;
        for (int i = 0; i < one.size(); i++) {
            worst = Math.max(worst, Math.abs(quantity.applyAsDouble(one, i) - quantity.applyAsDouble(other, i)));
        }
        return worst;
    }
}
