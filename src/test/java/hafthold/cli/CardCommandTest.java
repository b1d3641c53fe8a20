package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CardCommandTest {
    private static final String[] CARD = {
        "card", "--place", "yakutsk", "--material", "walnut-black", "--town", "our town", "--date", "2027-03-01"
    };

    @TempDir
    private Path folder;

    @Test
    void writesTheCardInEveryForm() throws IOException {
        Bench bench = Bench.run(with(CARD, "--out", folder.resolve("out").toString()));
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        assertEquals(bench.out(), Files.readString(folder.resolve("out/card.txt")));
        assertTrue(Files.readString(folder.resolve("out/card.html")).contains("What it does in our town"));
        assertEquals(
                Files.readString(folder.resolve("out/card.md")),
                Bench.run(with(CARD, "--format", "markdown")).out());
        assertEquals(
                Files.readString(folder.resolve("out/card.json")),
                Bench.run(with(CARD, "--format", "json")).out());
    }

    @Test
    void aQuoteIsWrittenAsAQuote() throws IOException {
        Bench bench = Bench.run(
                with(CARD, "--quote", "--out", folder.resolve("quoted").toString()));
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        assertTrue(bench.err().contains("quote.html"), bench.err());
        assertEquals(bench.out(), Files.readString(folder.resolve("quoted/quote.txt")));
        assertFalse(Files.exists(folder.resolve("quoted/card.html")));
    }

    @Test
    void theExampleOfAShopIsAccepted() throws IOException {
        Bench example = Bench.run("card", "--example");
        Path shop = Files.writeString(folder.resolve("shop.toml"), example.out());
        String card = Bench.run(with(CARD, "--shop", shop.toString())).out();
        assertTrue(card.contains("From Alder Lane Handles (invented)."), card);
        assertTrue(card.contains("at your own risk"), card);
    }

    @Test
    void aProtectedWoodStaysProtectedWhenItIsStabilised() {
        String law = "Check the law of both";
        Bench card = Bench.run("card", "--place", "oslo", "--material", "rosewood-indian+lumen-resin");
        assertTrue(card.out().replaceAll("\\s+", " ").contains(law), card.out());
        card = Bench.run("card", "--place", "oslo", "--material", "glass-epoxy-g10");
        assertTrue(!card.out().replaceAll("\\s+", " ").contains(law), card.out());
    }

    /** Pins are taken to be free-cutting brass, which holds 2.5 to 3.5 % lead by its name, CuZn36Pb3 (EN 12164). */
    @Test
    void leadInThePinsThatWereTakenIsToldOnce() {
        String card = Bench.run(CARD).out().replaceAll("\\s+", " ");
        assertEquals(2, card.split("may hold a little lead", -1).length, card);
        String bench = Bench.run("compare", "--place", "oslo", "--material", "teak,koa")
                .err();
        assertEquals(2, bench.split("holds about 3 % lead", -1).length, bench);
    }

    @Test
    void aQuoteSetsThePlainWoodBesideItsStabilisedSelfAndAComposite() {
        String quote = Bench.run(with(CARD, "--quote")).out();
        int wood = quote.indexOf("1. Black walnut");
        int stabilised = quote.indexOf("2. Black walnut, stabilised");
        int composite = quote.indexOf("3. Linen laminate");
        assertTrue(0 < wood && wood < stabilised && stabilised < composite, quote);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--place oslo | which handle?",
                "--place oslo --material teak --language xx | no language 'xx'",
                "--place oslo --material teak,koa,yew,pear | has room for 3",
                "--place oslo --material teak --format csv | not as csv",
                "--place oslo --material teak --date soon | --date",
                "--place oslo --material teak --units furlong | --units",
                "--material teak | where does the knife go?",
            })
    void aWrongOptionIsAnsweredInOneLine(String options, String part) {
        Bench bench = Bench.run(("card " + options).split(" "));
        assertEquals(ExitCode.WRONG_USAGE, bench.code(), bench.err());
        assertTrue(bench.err().contains(part), bench.err());
        assertEquals("", bench.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[shop] | name",
                "[shop]#name = 3 | a text in quotes",
                "[shop]#name = \"A\"#[promise]#stay = \"x\" | did you mean stays?",
            })
    void aFaultyShopFileIsNamedWithItsLine(String text, String part) throws IOException {
        Path shop = Files.writeString(folder.resolve("shop.toml"), text.replace('#', '\n'));
        Bench bench = Bench.run(with(CARD, "--shop", shop.toString()));
        assertEquals(ExitCode.INVALID_INPUT, bench.code(), bench.err());
        assertTrue(bench.err().contains(part), bench.err());
    }

    @Test
    void aCustomerWhoMovesGetsHisStays() throws IOException {
        Path trip = Files.writeString(
                folder.resolve("trip.csv"),
                Bench.run("trace", "--stays-example").out());
        Bench card = Bench.run("card", "--stays", trip.toString(), "--material", "walnut-black");
        assertEquals(ExitCode.DONE, card.code(), card.err());
        assertTrue(card.out().startsWith("Your knife on its way to Singapore\n"), card.out());
        assertTrue(card.out().contains("Stay by stay\n  - own shop, until 19 July 2026: "), card.out());
        assertTrue(card.out().contains("  - Singapore, from then on: "), card.out());
        assertTrue(card.out().contains("Worst on "), card.out());
        Bench json = Bench.run("card", "--stays", trip.toString(), "--material", "walnut-black", "--format", "json");
        Bench compared =
                Bench.run("compare", "--stays", trip.toString(), "--material", "walnut-black", "--format", "json");
        Pattern worst = Pattern.compile("\"worst_date\": \"[0-9-]+\"");
        assertEquals(
                worst.matcher(compared.out()).results().map(MatchResult::group).toList(),
                worst.matcher(json.out())
                        .results()
                        .map(MatchResult::group)
                        .limit(6)
                        .toList());
    }

    @Test
    void airOfALoggerIsCalledTheCustomersHomeUnlessHeCallsItOtherwise() throws IOException {
        StringBuilder year = new StringBuilder("hour,temperature_c,rh_percent\n");
        for (int hour = 0; hour < 8760; hour++) {
            year.append(hour).append(",24,62\n");
        }
        Path file = Files.writeString(folder.resolve("logger.csv"), year);
        String[] order = {"card", "--climate", file.toString(), "--setting", "outdoors", "--material", "teak"};
        assertTrue(Bench.run(order).out().startsWith("Your knife in your home\n"));
        assertTrue(Bench.run(with(order, "--town", "Malaga")).out().startsWith("Your knife in Malaga\n"));
    }

    /** Needs a browser: run with -Dhafthold.browser=PATH of a Chromium; skipped otherwise. */
    @ParameterizedTest
    @ValueSource(strings = {"A4", "letter"})
    void printsOnOneSheet(String paper) throws IOException, InterruptedException {
        String browser = System.getProperty("hafthold.browser", "");
        assumeTrue(!browser.isEmpty(), "no browser named");
        Path shop = Files.writeString(
                folder.resolve("shop.toml"), Bench.run("card", "--example").out());
        for (String material : List.of(
                "walnut-black",
                "molar-mammoth",
                "hybrid-maple-burl-epoxy",
                "acrylic-cast",
                "rosewood-indian",
                "maple-burl,maple-burl+lumen-resin,linen-phenolic-le")) {
            Path out = folder.resolve(material.replaceAll("[^a-z]", "-") + paper);
            Bench.run(
                    "card",
                    "--place",
                    "duluth",
                    "--material",
                    material,
                    "--units",
                    "both",
                    "--customer",
                    "Ms Invented-Longname",
                    "--date",
                    "2027-03-01",
                    "--shop",
                    shop.toString(),
                    "--out",
                    out.toString());
            String html = Files.readString(out.resolve(material.contains(",") ? "quote.html" : "card.html"));
            assertTrue(html.contains("@page{size:auto;"));
            Path page = Files.writeString(
                    out.resolve("sheet.html"), html.replace("@page{size:auto;", "@page{size:" + paper + ";"));
            Path pdf = out.resolve("sheet.pdf");
            Process print = new ProcessBuilder(
                            browser,
                            "--headless",
                            "--no-sandbox",
                            "--disable-gpu",
                            "--no-first-run",
                            "--user-data-dir=" + folder.resolve("profile"),
                            "--no-pdf-header-footer",
                            "--print-to-pdf=" + pdf,
                            page.toUri().toString())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            assertTrue(print.waitFor(1, TimeUnit.MINUTES), "the browser did not end");
            assertEquals(1, pages(pdf), material + " on " + paper);
        }
    }

    private static long pages(Path pdf) throws IOException {
        Matcher page =
                Pattern.compile("/Type\\s*/Page\\b(?!s)").matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1));
        return page.results().count();
    }

    private static String[] with(String[] some, String... more) {
        return Stream.concat(Stream.of(some), Stream.of(more)).toArray(String[]::new);
    }
}
