package hafthold.air;

import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The hourly year that stands for twelve monthly normals. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ReferenceYearBenchmark {
    private final MonthlyNormals normals =
            PlaceTable.read(TableSet.builtIn()).find("singapore").normals();

    /** 8760 hours. */
    @Benchmark
    public AirSeries year() {
        return ReferenceYear.of(normals);
    }
}
