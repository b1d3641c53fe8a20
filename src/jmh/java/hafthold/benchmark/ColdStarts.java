package hafthold.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Whole commands from a cold start: the launcher with its class archive, and plain Java without, by Java release. */
final class ColdStarts {
    private static final int ROUNDS = 3;
    private static final Path DIST = Path.of("target/dist").toAbsolutePath();
    private static final Path REPORT = Path.of("target/benchmark-report").toAbsolutePath();

    /** Command lines by what they do, shortest first. */
    private static final Map<String, String> COMMANDS = new LinkedHashMap<>();

    /** Those that scale; once by the launcher under the first release only. */
    private static final Map<String, String> ATLASES = new LinkedHashMap<>();

    static {
        String rack = "compare --place oslo";
        COMMANDS.put("version", "--version");
        COMMANDS.put("compare, one material, 1 sample", rack + " --material walnut-black --samples 1");
        COMMANDS.put("compare, whole rack, 1 sample", rack + " --samples 1");
        COMMANDS.put("compare, whole rack, 100 samples", rack);
        COMMANDS.put("compare, whole rack, 100 samples, with report", rack + " --out " + REPORT);
        COMMANDS.put("compare, whole rack, outdoors by the hour, 1 sample", rack + " --setting outdoors --samples 1");
        COMMANDS.put("compare, whole rack, outdoors by the hour, 100 samples", rack + " --setting outdoors");
        COMMANDS.put("fit, 100 samples", "fit src/jmh/resources/knife.toml");
        COMMANDS.put("claim, the example", "claim reports/returned-knife/knife.toml");
        COMMANDS.put("stock, the example", "stock reports/stock-shelf/stock.toml");
        COMMANDS.put(
                "season, one wood, 100 samples",
                "season --place oslo --material walnut-black --shop-rh-january 35% --shop-rh-july 72% --today 2026-07-15");
        String some = "atlas --format csv --material walnut-black,maple-sugar,teak,linen-phenolic-le";
        String more = some + ",glass-epoxy-g10,acrylic-cast,antler-reindeer,horn-buffalo";
        for (int threads = 1; threads <= Runtime.getRuntime().availableProcessors(); threads++) {
            String by = " --samples 1 --threads " + threads;
            ATLASES.put("atlas, 4 materials, 1 sample, threads " + threads, some + by);
            ATLASES.put("atlas, 8 materials, 1 sample, threads " + threads, more + by);
            ATLASES.put("atlas, whole rack, 1 sample, threads " + threads, "atlas --format csv" + by);
        }
        ATLASES.put("atlas, whole rack, 100 samples, all threads", "atlas --format csv --samples 100");
    }

    private ColdStarts() {}

    /** Lines of a table in CSV, header first; {@code homes} are folders of Java releases. */
    static List<String> lines(List<String> homes) throws IOException, InterruptedException {
        List<String> lines = new ArrayList<>();
        lines.add("command,java,start,best_s,median_s");
        for (String home : homes) {
            for (Map.Entry<String, String> command : COMMANDS.entrySet()) {
                lines.add(row(command.getKey(), home, "launcher", launcher(command.getValue())));
                List<String> plain = new ArrayList<>(List.of(
                        home + "/bin/java", "-cp", DIST.resolve("lib") + "/*", "hafthold.cli.Hafthold"));
                plain.addAll(List.of(command.getValue().split(" ")));
                lines.add(row(command.getKey(), home, "plain java", plain));
            }
        }
        for (Map.Entry<String, String> atlas : ATLASES.entrySet()) {
            List<String> capped = new ArrayList<>(List.of(
                    homes.get(0) + "/bin/java",
                    "-Xmx512m",
                    "-XX:+UseSerialGC",
                    "-cp",
                    DIST.resolve("lib") + "/*",
                    "hafthold.cli.Hafthold"));
            capped.addAll(List.of(atlas.getValue().split(" ")));
            double seconds = seconds(homes.get(0), capped);
            lines.add(String.format(
                    Locale.ROOT,
                    "\"%s\",%s,java -Xmx512m once,%.2f,%.2f",
                    atlas.getKey(),
                    release(homes.get(0)),
                    seconds,
                    seconds));
        }
        return lines;
    }

    private static List<String> launcher(String command) {
        List<String> launcher = new ArrayList<>(List.of(DIST.resolve("bin/hafthold").toString()));
        launcher.addAll(List.of(command.split(" ")));
        return launcher;
    }

    private static String row(String name, String home, String start, List<String> command)
            throws IOException, InterruptedException {
        double[] seconds = new double[ROUNDS];
        run(home, command); // an archive that is built on first use is not what is measured
        for (int i = 0; i < ROUNDS; i++) {
            seconds[i] = seconds(home, command);
        }
        Arrays.sort(seconds);
        return String.format(
                Locale.ROOT,
                "\"%s\",%s,%s,%.2f,%.2f",
                name,
                release(home),
                start,
                seconds[0],
                seconds[ROUNDS / 2]);
    }

    private static double seconds(String home, List<String> command) throws IOException, InterruptedException {
        long from = System.nanoTime();
        run(home, command);
        return (System.nanoTime() - from) * 1e-9;
    }

    private static void run(String home, List<String> command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("JAVA_HOME", home);
        int code = builder.start().waitFor();
        if (code != 0) {
            throw new IOException(command + " ended with " + code);
        }
    }

    private static String release(String home) throws IOException {
        return Files.readAllLines(Path.of(home, "release")).stream()
                .filter(line -> line.startsWith("JAVA_VERSION="))
                .map(line -> line.substring(14).replace("\"", ""))
                .findFirst()
                .orElse("unknown");
    }
}
