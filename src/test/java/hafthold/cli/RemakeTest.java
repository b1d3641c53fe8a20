package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RemakeTest {
    @TempDir
    Path folder;

    @Test
    void makesEveryReportFromTheOrderInItsFolder() throws IOException {
        order("first", "# invented\ncompare --place singapore\n--material acrylic-cast --made-rh \"50 %\"");
        order("second", "compare --place oslo --material walnut-black");
        Bench bench = Bench.run("remake", folder.toString());
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        for (String name : new String[] {"first", "second"}) {
            assertTrue(Files.exists(folder.resolve(name).resolve("comparison.html")), name);
        }
        assertTrue(bench.out().lines().toList().get(0).endsWith("first"));
    }

    @Test
    void saysTheWholeCommandOnThePageSoThatItCanBeTypedAgain() throws IOException {
        order("first", "compare --place singapore\n--material acrylic-cast --made-rh \"50 %\"");
        Path elsewhere = folder.resolve("elsewhere");
        Bench.run("remake", folder.toString(), "--out", elsewhere.toString());
        String page = Files.readString(elsewhere.resolve("first/comparison.html"));
        assertTrue(
                page.contains("hafthold compare --place singapore --material acrylic-cast --made-rh &quot;50 %&quot;"),
                page.substring(page.indexOf("<pre>")));
        assertFalse(Files.exists(folder.resolve("first/comparison.html")));
    }

    @Test
    void stopsAtAnOrderThatCannotBeCarriedOutAndNamesIt() throws IOException {
        order("first", "compare --place atlantis");
        order("second", "compare --place oslo --material walnut-black");
        Bench bench = Bench.run("remake", folder.toString());
        assertEquals(ExitCode.WRONG_USAGE, bench.code());
        assertTrue(bench.err().contains("first"), bench.err());
        assertTrue(bench.err().contains("no place 'atlantis'"), bench.err());
        assertFalse(Files.exists(folder.resolve("second/comparison.html")));
    }

    @Test
    void asksForOrdersWhereThereAreNone() {
        Bench bench = Bench.run("remake", folder.toString());
        assertEquals(ExitCode.WRONG_USAGE, bench.code());
        assertTrue(bench.err().contains("order.args"), bench.err());
        assertEquals(
                ExitCode.WRONG_USAGE,
                Bench.run("remake", folder.resolve("nowhere").toString()).code());
    }

    private void order(String name, String text) throws IOException {
        Files.createDirectories(folder.resolve(name));
        Files.writeString(folder.resolve(name).resolve("order.args"), text);
    }
}
