package hafthold.benchmark;

import hafthold.transport.GeneralIntegratorBenchmark;
import hafthold.transport.MoistureTrial;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs all benchmarks and writes {@code reports/benchmarks}. Argument: Java homes for the cold starts, with blanks
 * between; the running one where none is given.
 */
public final class Benchmarks {
    private static final Path OUT = Path.of("reports/benchmarks");

    private Benchmarks() {}

    /** Runs them. */
    public static void main(String[] args) throws Exception {
        Files.createDirectories(OUT);
        List<String> error = MoistureTrial.lines();
        Files.write(OUT.resolve("error-against-cost.csv"), error);
        List<String> warm = warm();
        Files.write(OUT.resolve("warm.csv"), warm);
        List<String> cold = ColdStarts.lines(Arrays.asList(
                        (args.length == 0 ? System.getProperty("java.home") : args[0]).split(" ")));
        Files.write(OUT.resolve("cold.csv"), cold);
        Files.writeString(OUT.resolve("README.md"), page(error, warm, cold));
    }

    private static List<String> warm() throws Exception {
        List<RunResult> results = new ArrayList<>(run("SectionBenchmark|ReferenceYearBenchmark|GeneralIntegrator", null));
        results.addAll(run("MoistureBenchmark", null));
        results.addAll(run("MoistureBenchmark", new String[] {"gaps", "9", "18", "36"}));
        results.addAll(run("MoistureBenchmark", new String[] {"hours", "2190", "4380"}));
        List<String> lines = new ArrayList<>();
        lines.add("benchmark,parameters,ms,plus_minus_ms");
        for (RunResult run : results) {
            Result<?> primary = run.getPrimaryResult();
            String name = run.getParams().getBenchmark();
            StringBuilder parameters = new StringBuilder();
            for (String key : run.getParams().getParamsKeys()) {
                parameters.append(key).append(' ').append(run.getParams().getParam(key)).append(' ');
            }
            lines.add(String.format(
                    Locale.ROOT,
                    "%s,%s,%.3f,%.3f",
                    name.substring(name.lastIndexOf('.', name.lastIndexOf('.') - 1) + 1),
                    parameters.toString().trim(),
                    primary.getScore(),
                    primary.getScoreError()));
        }
        return lines;
    }

    private static Collection<RunResult> run(String pattern, String[] parameter) throws Exception {
        OptionsBuilder options = new OptionsBuilder();
        options.include(pattern)
                .forks(1)
                .warmupIterations(3)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(5)
                .measurementTime(TimeValue.seconds(1))
                .resultFormat(ResultFormatType.JSON)
                .result(Files.createTempFile("benchmark", ".json").toString());
        if (parameter != null) {
            options.param("slabs", "64").param(parameter[0], Arrays.copyOfRange(parameter, 1, parameter.length));
        }
        return new Runner(options.build()).run();
    }

    private static String page(List<String> error, List<String> warm, List<String> cold) throws IOException {
        return """
                # Benchmarks

                Made by `mvn -Pbenchmarks -DskipTests package exec:exec@benchmarks` (append `-Dbenchmarks.homes="HOME1 HOME2"`
                for cold starts under several Java releases). Machine: %d processors, %s %s, Java %s; other work may have
                run on it at the same time: ratios within a run count, not times.

                ## Error against cost

                Worst deviation over all hours of a rough hourly year from a converged one, in kg/kg, beside the processor time
                of one thread for each simulated year, slabs side by side in a bundle of 64.

                %s
                ## Warm

                Mean of JMH, one fork, five seconds, with its 99.9 %% interval. The general integrator solves the same five days:
                %s.

                %s
                ## Cold

                Whole processes, best and median of three, in seconds.

                %s"""
                .formatted(
                        Runtime.getRuntime().availableProcessors(),
                        System.getProperty("os.name"),
                        System.getProperty("os.arch"),
                        System.getProperty("java.version"),
                        table(error),
                        GeneralIntegratorBenchmark.errors(),
                        table(warm),
                        table(cold));
    }

    private static String table(List<String> csv) {
        StringBuilder table = new StringBuilder();
        for (int i = 0; i < csv.size(); i++) {
            String[] cells = csv.get(i).split(",(?=([^\"]*\"[^\"]*\")*[^\"]*$)", -1);
            table.append("| ").append(String.join(" | ", cells).replace("\"", "")).append(" |\n");
            if (i == 0) {
                table.append("|---".repeat(cells.length)).append("|\n");
            }
        }
        return table.toString();
    }
}
