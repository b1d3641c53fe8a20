package hafthold.transport;

import hafthold.air.AirSeries;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleSupplier;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * Five days of hardwood by our solver and by a general integrator of Commons Math (Dormand-Prince 5(4)) on plain volumes,
 * as many as it takes for a surface error no larger than ours.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class GeneralIntegratorBenchmark {
    private static final int HOURS = 5 * 24;
    private static final double START = 0.11;
    private static final double TOLERANCE = 1e-5;
    private static final AirSeries AIR = RoughYear.hours(7, HOURS + 1);
    private static final Slab SLAB = Rack.hardwood(5e-3, 0);
    /** Found by {@link #main}. */
    private static final int CELLS = 20;

    /** Ours. */
    @Benchmark
    public double ours() {
        return TransientMoisture.from(SLAB, START, AIR).meanFraction(HOURS);
    }

    /** The general integrator. */
    @Benchmark
    public double generalIntegrator() {
        return mean(general(CELLS, new double[HOURS + 1]));
    }

    /** Prints the surface error of both and the processor time that each takes at best. */
    public static void main(String[] args) {
        System.out.println(errors());
        GeneralIntegratorBenchmark both = new GeneralIntegratorBenchmark();
        System.out.printf(
                Locale.ROOT,
                "processor time: ours %.3f ms, general integrator %.3f ms%n",
                leastMilliseconds(both::ours),
                leastMilliseconds(both::generalIntegrator));
    }

    private static double leastMilliseconds(DoubleSupplier work) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long least = Long.MAX_VALUE;
        for (int round = 0; round < 400; round++) {
            long start = clock.getCurrentThreadCpuTime();
            work.getAsDouble();
            least = Math.min(least, clock.getCurrentThreadCpuTime() - start);
        }
        return least * 1e-6;
    }

    /** Surface errors in words. */
    public static String errors() {
        MoistureHistory converged = TransientMoisture.from(
                SLAB, new double[] {START}, AIR, 0, Sheet.SATURATION, Resolution.CONVERGED);
        MoistureHistory ours = TransientMoisture.from(SLAB, START, AIR);
        double ourError = 0;
        double[] surface = new double[HOURS + 1];
        general(CELLS, surface);
        double generalError = 0;
        for (int hour = 1; hour <= HOURS; hour++) {
            ourError = Math.max(ourError, Math.abs(ours.surfaceFraction(hour) - converged.surfaceFraction(hour)));
            generalError = Math.max(generalError, Math.abs(surface[hour] - converged.surfaceFraction(hour)));
        }
        return String.format(
                Locale.ROOT,
                "surface within %.1e kg/kg (ours, %d intervals) and %.1e (general integrator, %d volumes)",
                ourError,
                Resolution.STANDARD.gaps(),
                generalError,
                CELLS);
    }

    private static double[] general(int cells, double[] surface) {
        double[] state = new double[cells + 1];
        Arrays.fill(state, START);
        for (int hour = 1; hour <= HOURS; hour++) {
            new DormandPrince54Integrator(1e-3, 3600, TOLERANCE, TOLERANCE)
                    .integrate(new PlainVolumes(hour - 1, cells), 0, state, 3600, state);
            surface[hour] = state[cells];
        }
        return state;
    }

    private static double mean(double[] state) {
        int cells = state.length - 1;
        double sum = 0.5 * (state[0] + state[cells]);
        for (int i = 1; i < cells; i++) {
            sum += state[i];
        }
        return sum / cells;
    }

    private record PlainVolumes(int hour, int cells) implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return cells + 1;
        }

        @Override
        public void computeDerivatives(double seconds, double[] moisture, double[] rate) {
            double share = seconds / 3600;
            double t = (1 - share) * AIR.temperatureCelsius(hour) + share * AIR.temperatureCelsius(hour + 1);
            double humidity =
                    (1 - share) * AIR.relativeHumidityFraction(hour) + share * AIR.relativeHumidityFraction(hour + 1);
            double gap = SLAB.thicknessMetres() / cells;
            double base = SLAB.diffusivity().squareMetresPerSecond(0, t);
            double a = SLAB.diffusivity().moistureExponent();
            double arriving = 0;
            double here = Math.exp(a * moisture[0]);
            for (int i = 0; i < cells; i++) {
                double next = Math.exp(a * moisture[i + 1]);
                double leaving = base * (here - next) / (a * gap);
                rate[i] = (arriving - leaving) / (i == 0 ? 0.5 * gap : gap);
                arriving = leaving;
                here = next;
            }
            double loss = (SLAB.isotherm().waterActivity(moisture[cells], t) - humidity)
                    * Sheet.SATURATION.pascals(t)
                    / SLAB.surfaceResistanceSquareMetreSecondPascalsPerKilogram()
                    / SLAB.dryDensityKilogramsPerCubicMetre();
            rate[cells] = (arriving - loss) / (0.5 * gap);
        }
    }
}
