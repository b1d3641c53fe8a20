package hafthold.browser;

import hafthold.cli.Hafthold;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** One page of every kind, made from the orders of the gallery. */
record Pages(List<Path> all) {
    static final Path FOLDER = Path.of("target", "browser-pages");

    /** Makes them anew, without what an earlier run may have left; a page that cannot be made is a failure. */
    static Pages made() throws IOException {
        if (Files.exists(FOLDER)) {
            try (Stream<Path> old = Files.walk(FOLDER)) {
                for (Path file : old.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
        run("remake", "reports", "--out", FOLDER.toString());
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return new Pages(files.filter(file -> file.toString().endsWith(".html"))
                    .sorted()
                    .toList());
        }
    }

    /** Runs a command that must succeed. */
    static void run(String... command) {
        StringWriter said = new StringWriter();
        int code = Hafthold.run(new PrintWriter(new StringWriter()), new PrintWriter(said), command);
        if (code != 0) {
            throw new IllegalStateException(String.join(" ", command) + " ended with " + code + ":\n" + said);
        }
    }
}
