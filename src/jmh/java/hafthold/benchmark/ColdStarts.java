package hafthold.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Whole commands from a cold start: the launcher with its class archive, and plain Java without, by Java release. */
final class ColdStarts {
    private static final int ROUNDS = 3;
    private static final Path DIST = Path.of("target/dist").toAbsolutePath();
    private static final Map<String, List<String>> COMMANDS = new TreeMap<>(Map.of(
            "version", List.of("--version"),
            "compare, heated home, whole rack",
                    List.of("compare", "--place", "singapore", "--setting", "heated-home", "--format", "json")));

    private ColdStarts() {}

    /** Lines of a table in CSV, header first; {@code homes} are folders of Java releases. */
    static List<String> lines(List<String> homes) throws IOException, InterruptedException {
        List<String> lines = new ArrayList<>();
        lines.add("command,java,start,best_s,median_s");
        for (String home : homes) {
            for (Map.Entry<String, List<String>> command : COMMANDS.entrySet()) {
                List<String> launcher = new ArrayList<>(List.of(DIST.resolve("bin/hafthold").toString()));
                launcher.addAll(command.getValue());
                lines.add(row(command.getKey(), home, "launcher", launcher));
                List<String> plain = new ArrayList<>(List.of(
                        home + "/bin/java", "-cp", DIST.resolve("lib") + "/*", "hafthold.cli.Hafthold"));
                plain.addAll(command.getValue());
                lines.add(row(command.getKey(), home, "plain java", plain));
            }
        }
        return lines;
    }

    private static String row(String name, String home, String start, List<String> command)
            throws IOException, InterruptedException {
        double[] seconds = new double[ROUNDS];
        run(home, command); // an archive that is built on first use is not what is measured
        for (int i = 0; i < ROUNDS; i++) {
            long from = System.nanoTime();
            run(home, command);
            seconds[i] = (System.nanoTime() - from) * 1e-9;
        }
        java.util.Arrays.sort(seconds);
        return String.format(
                Locale.ROOT,
                "\"%s\",%s,%s,%.2f,%.2f",
                name,
                release(home),
                start,
                seconds[0],
                seconds[ROUNDS / 2]);
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
