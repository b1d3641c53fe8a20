package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The kept gallery says what the program says today: text and figures, not pixels. */
class GalleryTest {
    private static final Path GALLERY = Path.of("reports");

    @TempDir
    Path folder;

    @Test
    void textAndFiguresOfTheGalleryAreTodays() throws IOException {
        if ("write".equals(System.getProperty("hafthold.golden"))) {
            assertEquals(0, Bench.run("remake", GALLERY.toString()).code());
        }
        Bench bench = Bench.run("remake", GALLERY.toString(), "--out", folder.toString());
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        List<Path> made = files();
        assertFalse(made.isEmpty());
        for (Path file : made) {
            Path kept = GALLERY.resolve(folder.relativize(file).toString());
            assertEquals(
                    Files.readString(kept),
                    Files.readString(file),
                    kept
                            + " is not what the program writes today: look at the difference, then run 'hafthold remake reports'");
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().matches(".*\\.(txt|json|csv|md)"))
                    .sorted()
                    .toList();
        }
    }
}
