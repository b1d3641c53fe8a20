package hafthold.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts kept from an earlier run. After a change that is meant, run the tests with {@code -Dhafthold.golden=write},
 * read the difference line by line, and commit it.
 */
public final class Golden {
    private static final String FOLDER = "hafthold/report/golden/";

    private Golden() {}

    /** The kept text; the fresh one replaces it first where the run was asked to. */
    public static String text(String name, String fresh) throws IOException {
        if ("write".equals(System.getProperty("hafthold.golden"))) {
            Path file = Path.of("src/test/resources", FOLDER, name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, fresh);
            return fresh;
        }
        try (InputStream kept = Golden.class.getClassLoader().getResourceAsStream(FOLDER + name)) {
            return kept == null ? "" : new String(kept.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
