package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RehearsalTest {

    @Test
    void leavesNothingBehind() throws IOException {
        String before = System.getProperty("java.io.tmpdir");
        long files = count(Path.of(before));
        assertDoesNotThrow(() -> Rehearsal.main(new String[0]));
        assertEquals(files, count(Path.of(before)));
    }

    private static long count(Path tmp) throws IOException {
        try (Stream<Path> files = Files.list(tmp)) {
            return files.filter(file -> file.getFileName().toString().matches("hafthold[0-9]+"))
                    .count();
        }
    }
}
