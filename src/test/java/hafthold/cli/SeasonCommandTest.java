package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonCommandTest {
    private static final List<String> WHO = List.of("season", "--place", "duluth", "--material", "maple-sugar");
    private static final List<String> SHOP = List.of("--shop-rh-january", "35 %", "--shop-rh-july", "72 %");

    @TempDir
    private Path folder;

    @Test
    void writesItsReport() throws IOException {
        Path report = folder.resolve("report");
        Bench season = run(WHO, SHOP, List.of("--today", "2026-07-15", "--samples", "30", "--out", report.toString()));
        assertEquals(ExitCode.DONE, season.code(), season.err());
        assertTrue(season.out().startsWith("When to glue up and sand flush: flat-sawn sugar (hard) maple for Duluth"));
        assertTrue(season.out().contains("Today, 15 July:"), season.out());
        assertTrue(season.err().contains("report: " + report.resolve("season.html")), season.err());
        assertTrue(Files.readString(report.resolve("season.txt")).startsWith(season.out()));
        for (String name :
                new String[] {"season.html", "season.json", "season.csv", "season-bench-1.svg", "season-steps-1.svg"}) {
            assertTrue(Files.size(report.resolve(name)) > 300, name);
        }
    }

    @Test
    void oneRowAWeekAndMaterial() {
        Bench season = run(
                List.of("season", "--place", "sanfrancisco", "--material", "maple-sugar,acrylic-cast"),
                SHOP,
                List.of("--samples", "1", "--today", "2026-01-15", "--format", "csv"));
        assertEquals(ExitCode.DONE, season.code(), season.err());
        List<String> lines = season.out().lines().toList();
        assertEquals(1 + 2 * 52, lines.size());
        int columns = lines.get(0).split(",", -1).length;
        lines.stream()
                .filter(line -> !line.contains("\""))
                .forEach(line -> assertEquals(columns, line.split(",", -1).length, line));
        assertEquals(
                2,
                lines.stream()
                        .filter(line -> line.startsWith("01-15,01-21,true"))
                        .count());
    }

    /**
     * A reading of 10 % in a workshop whose year says 13.6 %: the answer may not call the same stock 13 % damp three weeks
     * before without saying where that comes from (common practice, no source).
     */
    @Test
    void glueUpBeforeAReadingGoesByTheReadingAndSaysSo() {
        Bench season = run(
                WHO,
                SHOP,
                List.of("--today", "2026-07-15", "--samples", "1", "--blank-moisture", "10 %", "--glued-days", "21"));
        String said = flat(season);
        assertTrue(said.contains("they lie 3.6 points apart"), said);
        assertTrue(said.contains("glued 21 days ago at 9.5 %, reckoned back from your meter"), said);
        assertTrue(said.contains("alone says 13.1 % for that day; the meter is used"), said);
    }

    /**
     * Walnut at 6 % in January for a mild damp coast: the workshop's air brings it in April, a box in weeks. Who reads only the
     * first sentence must have heard of both, the sooner one first (common practice, no source: boxes are held for that).
     */
    @Test
    void aSoonerBoxStandsInTheFirstSentence() {
        List<String> order = List.of("season", "--place", "sanfrancisco", "--material", "walnut-black");
        List<String> shop = List.of("--shop-rh-january", "30 %", "--shop-rh-july", "60 %");
        String said = flat(run(order, shop, List.of("--today", "2026-01-10")));
        String first = said.substring(said.indexOf("Today, 10 January"));
        first = first.substring(0, first.indexOf(". "));
        assertTrue(first.contains("4 weeks in a box at 58") && first.contains("103 days in your workshop's"), first);
        assertTrue(first.indexOf("box") < first.indexOf("103 days"), first);
    }

    @Test
    void checkAnswersFourUnlessItMayBeDoneToday() {
        assertEquals(
                ExitCode.ADVERSE_VERDICT,
                run(WHO, SHOP, List.of("--today", "2026-07-15", "--samples", "1", "--check"))
                        .code());
        Bench laminate = run(
                List.of("season", "--place", "duluth", "--material", "glass-epoxy-g10"),
                SHOP,
                List.of("--today", "2026-07-15", "--samples", "1", "--check"));
        assertEquals(ExitCode.DONE, laminate.code(), laminate.out() + laminate.err());
        assertTrue(laminate.out().contains("go, sand it flush"), laminate.out());
    }

    @Test
    void theShopMayBeAPlaceOrALogger() throws IOException {
        Bench shed = run(
                WHO,
                List.of("--shop-place", "oslo", "--shop-setting", "shed"),
                List.of("--today", "2026-02-01", "--samples", "1"));
        assertEquals(ExitCode.DONE, shed.code(), shed.err());
        assertTrue(flat(shed).contains("Oslo (Blindern), Norway"), shed.out());
        assertTrue(flat(shed).contains("that glue usually wants"), shed.out());
        StringBuilder log = new StringBuilder("hour,temperature_c,rh_percent\n");
        for (int hour = 0; hour < 8760; hour++) {
            log.append(hour).append(",20,").append(hour < 4380 ? 40 : 60).append('\n');
        }
        Path file = Files.writeString(folder.resolve("shop.csv"), log.toString());
        Bench logger = run(
                WHO, List.of("--shop-climate", file.toString()), List.of("--today", "2026-02-01", "--samples", "1"));
        assertEquals(ExitCode.DONE, logger.code(), logger.err());
        assertTrue(flat(logger).contains("As recorded in shop.csv"), logger.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "| in what air does your stock lie?",
                "--shop-rh-january|--shop-rh-july is missing",
                "--shop-rh-july|--shop-rh-january is missing",
                "--shop-rh-january --shop-rh-july --shop-place|exclude each other",
                "--shop-place --shop-temp|--shop-temp goes with",
                "--shop-rh-january --shop-rh-july --shop-setting|--shop-setting goes with",
                "--shop-rh-january --shop-rh-july --blank-open|write faces",
                "--shop-rh-january --shop-rh-july --blank-thickness|is the unit right?",
                "--shop-rh-january --shop-rh-july --work|class of work",
                "--shop-rh-january --shop-rh-july --stays|planned for one place"
            })
    void saysWhatWouldBeRight(String options, String said) {
        List<String> typed = new ArrayList<>();
        if (options != null) {
            for (String option : options.split(" ", -1)) {
                typed.add(option);
                typed.add(
                        switch (option) {
                            case "--shop-place" -> "oslo";
                            case "--shop-setting" -> "shed";
                            case "--shop-temp" -> "18 C";
                            case "--blank-open" -> "sides";
                            case "--blank-thickness" -> "25 in";
                            case "--work" -> "perfect";
                            case "--stays" -> "trip.csv";
                            default -> "40 %";
                        });
            }
        }
        List<String> who =
                options != null && options.contains("--stays") ? List.of("season", "--material", "maple-sugar") : WHO;
        Bench season = run(who, typed, List.of("--samples", "1"));
        assertEquals(ExitCode.WRONG_USAGE, season.code(), season.err());
        assertTrue(season.err().contains(said), season.err());
    }

    /** A reading that the workshop's air does not account for is believed, and both numbers are told. */
    @Test
    void goesByTheMeter() {
        Bench season = run(WHO, SHOP, List.of("--today", "2026-07-15", "--samples", "30", "--blank-moisture", "8 %"));
        assertEquals(ExitCode.DONE, season.code(), season.err());
        String told = flat(season).replace('\u00a0', ' ');
        assertTrue(told.contains("Your meter reads 8.0 % today, but"), told);
        assertTrue(told.contains("would hold 13.6 %") && told.contains("What follows goes by the meter"), told);
        assertTrue(told.contains("Glue-up today, 15 July: the stock is fit for it"), told);
        Bench same = run(WHO, SHOP, List.of("--today", "2026-07-15", "--samples", "1", "--blank-moisture", "13 %"));
        assertTrue(flat(same).contains("that goes together"), same.out());
    }

    @Test
    void tellsGlueUpFromSanding() {
        Bench season = run(WHO, SHOP, List.of("--today", "2026-10-15", "--samples", "30", "--glued-days", "28"));
        assertEquals(ExitCode.DONE, season.code(), season.err());
        assertTrue(flat(season).contains("it was glued 28 days ago at"), season.out());
        assertTrue(flat(season).contains("Glued today, it is sanded on 12 November"), season.out());
        assertTrue(flat(season).contains("Stress of glue and scale counts from glue-up"), season.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "maple-sugar,walnut-black|9 %|0|name one --material",
                "meteorite-iron|1 %|0|takes up no water",
                "linen-phenolic-le|9 %|0|meters are made for plain wood",
                "maple-sugar|45 %|0|from 0 % to 40 %",
                "maple-sugar|9|0|moisture content is a number and a %",
                "maple-sugar|9 %|400|0 to 180 days"
            })
    void readsOnlyWhatAMeterCanTell(String material, String reading, String days, String said) {
        Bench season = run(
                List.of("season", "--place", "duluth", "--material", material),
                SHOP,
                List.of("--samples", "1", "--blank-moisture", reading, "--glued-days", days));
        assertEquals(ExitCode.WRONG_USAGE, season.code(), season.err());
        assertTrue(season.err().contains(said), season.err());
    }

    @Test
    void asksForAMaterial() {
        Bench season = run(List.of("season", "--place", "duluth"), SHOP, List.of());
        assertEquals(ExitCode.WRONG_USAGE, season.code());
        assertTrue(season.err().contains("Name one --material or a few"), season.err());
    }

    /** The judgement of when stock is fit is a table of the user's. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "glue-coolest,3,C,own,assumed,|",
                "glue-coolest,3,F,own,assumed,|expected C",
                "glue-cold,3,C,own,assumed,|glue-coolest",
                "glue-coolest,99,C,own,assumed,|50",
                "glue-coolest,31,C,own,assumed,|not below glue-warmest"
            })
    void takesAWorkshopsOwnLimits(String row, String said) throws IOException {
        Files.writeString(folder.resolve("season.csv"), "limit,value,unit,source,evidence,says\n" + row + "\n");
        Bench season = run(
                WHO,
                List.of("--shop-rh-january", "35 %", "--shop-rh-july", "72 %", "--shop-temp", "8 C"),
                List.of("--today", "2026-01-15", "--samples", "1", "--tables", folder.toString()));
        if (said == null) {
            assertEquals(ExitCode.DONE, season.code(), season.err());
            assertTrue(!flat(season).contains("that glue usually wants"), season.out());
        } else {
            assertEquals(ExitCode.INVALID_INPUT, season.code(), season.err());
            assertTrue(season.err().contains(said), season.err());
        }
    }

    private static String flat(Bench bench) {
        return bench.out().replaceAll("\\s+", " ");
    }

    private static Bench run(List<String> who, List<String> shop, List<String> more) {
        return Bench.run(Stream.of(who, shop, more).flatMap(List::stream).toArray(String[]::new));
    }
}
