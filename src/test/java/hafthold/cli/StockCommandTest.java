package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockCommandTest {
    private static final String SHELF = """
            [storage]
            humidity = "45 %"
            balance = "0.1 g"
            checked = true
            """;
    private static final String BLOCK = """
            [[block]]
            material = "maple-sugar"
            length = "130 mm"
            width = "40 mm"
            thickness = "25 mm"
            """;
    private static final String STILL = """
            [[block.reading]]
            on = 2025-09-01
            weight = "98.0 g"
            [[block.reading]]
            on = 2026-03-01
            weight = "98.0 g"
            """;

    @TempDir
    private Path folder;

    @Test
    void theExampleIsAcceptedAsItIsPrintedAndWritesItsReport() throws IOException {
        Path report = folder.resolve("report");
        Bench stock = Bench.run(
                "stock", file(Bench.run("stock", "--example").out()), "--samples", "200", "--out", report.toString());
        assertEquals(ExitCode.DONE, stock.code(), stock.err());
        assertTrue(stock.out().startsWith("Blocks on the shelf"), stock.out());
        assertTrue(stock.err().contains("report: " + report.resolve("stock.html")), stock.err());
        assertTrue(Files.readString(report.resolve("stock.txt")).startsWith(stock.out()));
        for (String name : new String[] {"stock.html", "stock.json", "stock.csv", "stock-course-1.svg"}) {
            assertTrue(Files.size(report.resolve(name)) > 300, name);
        }
        assertTrue(stock.out().lines().allMatch(line -> line.length() <= 110), stock.out());
    }

    /** Half a year without a change of weight is rest; which air that is decides for whom it is ready. */
    @Test
    void restOnTheShelfIsNotReadyForADesert() throws IOException {
        String still = file(SHELF + BLOCK + STILL);
        Bench rest = Bench.run("stock", still, "--samples", "300", "--check");
        assertEquals(ExitCode.DONE, rest.code(), rest.out());
        assertTrue(rest.out().contains("at rest where it lies"), rest.out());
        Bench desert = Bench.run(
                "stock", still, "--samples", "300", "--check", "--place", "phoenix", "--setting", "air-conditioned");
        assertEquals(ExitCode.ADVERSE_VERDICT, desert.code(), desert.out());
        assertTrue(desert.out().contains("still too wet"), desert.out());
        assertTrue(desert.out().contains("Magnesium chloride"), desert.out());
    }

    @Test
    void oneWeightTellsNothingAndSaysWhatToWeighNext() throws IOException {
        Bench once = Bench.run(
                "stock",
                file(SHELF + BLOCK + "[block.reading]\non = 2026-03-01\nweight = \"97 g\"\n"),
                "--samples",
                "300");
        assertTrue(once.out().contains("cannot tell yet"), once.out());
        assertTrue(once.out().contains("Do not take it for dry"), once.out());
        assertTrue(once.out().contains("saw a slice"), once.out());
    }

    /** A slipped point is not dried for weeks. */
    @Test
    void aWeightThatCannotBeIsSeen() throws IOException {
        Bench odd = Bench.run(
                "stock",
                file(SHELF + BLOCK + "[block.reading]\non = 2026-03-01\nweight = \"970 g\"\n"),
                "--samples",
                "300");
        assertTrue(odd.out().contains("figures do not fit"), odd.out());
    }

    @Test
    void equalCallsGiveEqualBytesAndCsvHasARowABlock() throws IOException {
        String file = file(SHELF + BLOCK + STILL + BLOCK + STILL);
        String csv =
                Bench.run("stock", file, "--samples", "100", "--format", "csv").out();
        assertEquals(3, csv.lines().count(), csv);
        assertTrue(csv.startsWith("name,material,on,verdict,mc_mean_low_percent,"), csv);
        assertEquals(
                csv,
                Bench.run("stock", file, "--samples", "100", "--format", "csv").out());
        assertTrue(Bench.run("stock", file, "--samples", "100", "--format", "json")
                .out()
                .contains("\"ready_below_g_in_7_days\""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "weight = 97 | block[1].reading[1].weight | write \"97 g\"",
                "weight = \"97 mm\" | block[1].reading[1].weight | a number and a unit (g, kg, oz, gr)",
                "weigth = \"97 g\" | block[1].reading[1].weigth | did you mean weight?",
                "humidity = \"40 %\" | block[1].reading[1].on | nothing was read on that day",
                "meter = \"400 %\" | block[1].reading[1].meter | a moisture content",
            })
    void faultsOfAReadingNameLineKeyAndWhatWouldBeRight(String line, String key, String expected) throws IOException {
        Bench bench = Bench.run("stock", file(SHELF + BLOCK + "[[block.reading]]\non = 2026-03-01\n" + line + "\n"));
        assertEquals(ExitCode.INVALID_INPUT, bench.code(), bench.err());
        assertTrue(bench.err().contains(key) && bench.err().contains(expected), bench.err());
        assertTrue(bench.err().contains(" line "), bench.err());
    }

    @Test
    void faultsOfTheWholeSayWhatIsMissing() throws IOException {
        fails(BLOCK + STILL, "where do the blocks lie?");
        fails(SHELF, "which block?");
        fails(SHELF + BLOCK, "nothing is known of it");
        fails(SHELF + BLOCK.replace("maple-sugar", "walnutt-black") + STILL, "walnut-black");
        fails(SHELF + BLOCK.replace("maple-sugar", "meteorite-iron") + STILL, "needs no drying");
        fails(SHELF + BLOCK + "bought = 2026-02-01\n" + STILL, "not after the first reading");
        fails(SHELF + BLOCK + "[block.coupon]\non = 2026-03-01\nwet = \"19 g\"\ndry = \"21 g\"\n", "out of the oven");
        fails(SHELF + BLOCK + "[block.stabilised]\nbefore = \"80 g\"\n", "says nothing without the one after");
        fails(SHELF + "[for]\nplace = \"osloo\"\n" + BLOCK + STILL, "did you mean oslo?");
        assertEquals(ExitCode.WRONG_USAGE, Bench.run("stock").code());
    }

    private void fails(String text, String expected) throws IOException {
        Bench bench = Bench.run("stock", file(text));
        assertEquals(ExitCode.INVALID_INPUT, bench.code(), bench.err());
        assertTrue(bench.err().contains(expected), bench.err());
    }

    private String file(String text) throws IOException {
        Path file = folder.resolve("stock.toml");
        return Files.writeString(file, text).toString();
    }
}
