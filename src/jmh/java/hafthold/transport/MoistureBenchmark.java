package hafthold.transport;

import hafthold.air.AirSeries;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Years of moisture under hourly air: how the cost grows with slabs side by side, depth intervals and hours. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class MoistureBenchmark {
    /** Slabs of one bundle. */
    @Param({"1", "4", "16", "64"})
    public int slabs;

    /** Depth intervals. */
    @Param("9")
    public int gaps;

    /** Length of the year that repeats. */
    @Param("8760")
    public int hours;

    private List<Slab> rack;
    private AirSeries air;
    private Resolution resolution;

    /** Lays out slabs and air. */
    @Setup
    public void layOut() {
        rack = MoistureTrial.alike(Rack.hardwood(4e-3, 0), slabs);
        air = RoughYear.hours(20260101, hours);
        Resolution standard = Resolution.STANDARD;
        resolution = new Resolution(
                gaps,
                standard.finestGap(),
                standard.tolerance(),
                standard.largestChangeFraction(),
                standard.airStrayFraction(),
                standard.longestStepHours());
    }

    /** Years of 4 mm of hardwood, lead-in included. */
    @Benchmark
    public List<PeriodicMoisture> hardwoodYears() {
        return PeriodicMoisture.ofAll(rack, air, 0, Sheet.SATURATION, resolution);
    }
}
