package hafthold.mechanics;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The bonded section of a walnut handle, solved for all its unit strains. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SectionBenchmark {

    /** Across the width. */
    @Benchmark
    public SectionInfluence acrossWidth() {
        return Handles.walnut().influence(OutOfSection.HELD, 0);
    }
}
