package hafthold.transport;

import hafthold.air.AirSeries;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;

/**
 * Prints accuracy against cost: worst deviation from the converged year and milliseconds for a year run warm, by slab and
 * resolution. Not a test; run it with {@code mvn -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=hafthold.transport.CostOfAYear}.
 */
final class CostOfAYear {
    private static final int ROUNDS = 15;
    private static final AirSeries AIR = RoughYear.hourly(20260101);

    private CostOfAYear() {}

    /** Runs all slabs. */
    public static void main(String[] args) {
        Map<String, Slab> slabs = new LinkedHashMap<>();
        slabs.put("hardwood 4 mm", Rack.hardwood(4e-3, 0));
        slabs.put("hardwood 8 mm", Rack.hardwood(8e-3, 0));
        slabs.put("hardwood 8 mm varnished", Rack.hardwood(8e-3, 1e9));
        slabs.put("cotton laminate", Rack.laminate(5e-13, 0.08, 1.3));
        slabs.put("glass laminate", Rack.laminate(1e-14, 0.02, 1));
        slabs.put("fibre liner", Rack.fibreLiner());
        List<Resolution> resolutions = List.of(
                new Resolution(8, 0.4, 2e-3, 0.05, 0.003),
                new Resolution(10, 0.3, 1e-3, 0.03, 0.003),
                Resolution.STANDARD,
                new Resolution(20, 0.2, 3e-4, 0.01, 0.003));
        System.out.println(
                "slab                     gaps  steps   ms/year  spin-up   mean     surface  back     moment");
        slabs.forEach((name, slab) -> {
            MoistureHistory converged = PeriodicMoisture.of(slab, AIR, 0, Sheet.SATURATION, Resolution.CONVERGED)
                    .history();
            resolutions.forEach(resolution -> print(name, slab, resolution, converged));
        });
    }

    private static void print(String name, Slab slab, Resolution resolution, MoistureHistory converged) {
        PeriodicMoisture year = null;
        double best = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            year = PeriodicMoisture.of(slab, AIR, 0, Sheet.SATURATION, resolution);
            best = Math.min(best, (System.nanoTime() - start) * 1e-6);
        }
        MoistureHistory history = year.history();
        System.out.printf(
                Locale.ROOT,
                "%-24s %4d  %5d   %7.2f  %7.2f   %.1e  %.1e  %.1e  %.1e%n",
                name,
                resolution.gaps(),
                history.steps(),
                best / (1 + year.spinUpYears()),
                year.spinUpYears(),
                worst(history, converged, MoistureHistory::meanFraction),
                worst(history, converged, MoistureHistory::surfaceFraction),
                worst(history, converged, MoistureHistory::backFraction),
                worst(history, converged, MoistureHistory::firstMomentFraction));
    }

    private static double worst(
            MoistureHistory one, MoistureHistory other, ToDoubleBiFunction<MoistureHistory, Integer> quantity) {
        double worst = 0;
        for (int i = 0; i < one.size(); i++) {
            worst = Math.max(worst, Math.abs(quantity.applyAsDouble(one, i) - quantity.applyAsDouble(other, i)));
        }
        return worst;
    }
}
