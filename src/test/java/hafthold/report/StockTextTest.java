package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import hafthold.cli.Hafthold;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example of blocks on a shelf, as it read before. */
class StockTextTest {
    @TempDir
    private Path folder;

    @Test
    void theExampleReadsAsItDidBefore() throws IOException {
        String text = of("text");
        assertEquals(Golden.text("stock.txt", text), text);
        assertFalse(text.lines().anyMatch(line -> line.endsWith(" ")), text);
    }

    @Test
    void itsCsvIsAsItWasBefore() throws IOException {
        String csv = of("csv");
        assertEquals(Golden.text("stock.csv", csv), csv);
    }

    private String of(String format) throws IOException {
        Path file = Files.writeString(folder.resolve("stock.toml"), said("stock", "--example"));
        return said("stock", file.toString(), "--samples", "300", "--format", format);
    }

    private static String said(String... command) {
        StringWriter out = new StringWriter();
        assertEquals(0, Hafthold.run(new PrintWriter(out), new PrintWriter(new StringWriter()), command));
        return out.toString();
    }
}
