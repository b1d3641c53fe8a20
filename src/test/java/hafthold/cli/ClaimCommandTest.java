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

class ClaimCommandTest {
    private static final String LEAST = """
            [knife]
            place = "duluth"
            [tang]
            width = "26 mm"
            [scales]
            material = "walnut-black"
            [since]
            suspected = ["soak"]
            [measured]
            on = 2026-02-10
            edges = "%s"
            """;

    @TempDir
    private Path folder;

    @Test
    void theExampleIsAcceptedAsItIsPrintedAndWritesItsReport() throws IOException {
        Path report = folder.resolve("report");
        Bench claim = Bench.run(
                "claim", file(Bench.run("claim", "--example").out()), "--samples", "100", "--out", report.toString());
        assertEquals(ExitCode.DONE, claim.code(), claim.err());
        assertTrue(claim.out().startsWith("Walnut of last summer back from Duluth"), claim.out());
        assertTrue(claim.out().contains("What comes back by itself"), claim.out());
        assertTrue(claim.err().contains("report: " + report.resolve("claim.html")), claim.err());
        assertTrue(Files.readString(report.resolve("claim.txt")).startsWith(claim.out()));
        for (String name : new String[] {"claim.html", "claim.json", "claim.csv", "claim-course.svg"}) {
            assertTrue(Files.size(report.resolve(name)) > 300, name);
        }
    }

    /** A maker on the phone: a knife, a town, one number and its day. What else is taken is said. */
    @Test
    void aKnifeATownAndOneNumberAreEnough() throws IOException {
        Bench claim = Bench.run("claim", file(LEAST.formatted("tang proud 0.12 mm")), "--samples", "50");
        assertEquals(ExitCode.DONE, claim.code(), claim.err());
        assertTrue(claim.out().lines().findFirst().orElseThrow().contains("the weather"), claim.out());
        String flat = claim.out().replaceAll("\\s+", " ");
        for (String taken : new String[] {"a year before the first measuring", "0.05 mm is taken", "heated-home"}) {
            assertTrue(flat.contains(taken), taken);
        }
        assertTrue(flat.contains("All was measured at the customer"), flat);
    }

    @Test
    void checkAnswersFourUnlessItIsTheWeather() throws IOException {
        String usual = file(LEAST.formatted("0.12 mm shy"));
        assertEquals(
                ExitCode.DONE,
                Bench.run("claim", usual, "--samples", "50", "--check").code());
        String odd = file(LEAST.formatted("0.9 mm proud"));
        Bench claim = Bench.run("claim", odd, "--samples", "50", "--check", "--format", "json");
        assertEquals(ExitCode.ADVERSE_VERDICT, claim.code(), claim.err());
        assertTrue(claim.out().contains("\"verdict\": \"not-explained\""), claim.out());
    }

    @Test
    void optionsWinOverTheFile() throws IOException {
        Bench claim = Bench.run(
                "claim",
                file(LEAST.formatted("flush")),
                "--samples",
                "50",
                "--place",
                "singapore",
                "--setting",
                "uncooled-home",
                "--format",
                "json");
        assertEquals(ExitCode.DONE, claim.code(), claim.err());
        assertTrue(claim.out().contains("\"place\": \"singapore\""), claim.out());
        assertTrue(claim.out().contains("\"setting\": \"uncooled-home\""), claim.out());
    }

    /** The way through several stays says itself when the knife was finished; readings before it are refused. */
    @Test
    void staysStandInForThePlace() throws IOException {
        String knife = LEAST.formatted("0.12 mm shy").replace("place = \"duluth\"", "");
        Path stays = Files.writeString(folder.resolve("stays.csv"), """
                from,name,place,climate,setting,temperature,humidity
                2025-08-01,own shop,,,,20 C,50 %
                2025-09-01,Duluth,duluth,,heated-home,,
                """);
        Bench claim = Bench.run("claim", file(knife), "--samples", "50", "--stays", stays.toString());
        assertEquals(ExitCode.DONE, claim.code(), claim.err());
        assertTrue(claim.out().contains("1 August 2025"), claim.out());
        Bench early = Bench.run("claim", file(knife.replace("2026-02-10", "2025-02-10")), "--stays", stays.toString());
        assertEquals(ExitCode.WRONG_USAGE, early.code(), early.err());
        assertTrue(early.err().contains("the first stay is that of final sanding"), early.err());
    }

    @Test
    void csvHasARowAStepAndEqualCallsGiveEqualBytes() throws IOException {
        String file = file(LEAST.formatted("0.12 mm shy") + "pin_heads = \"0.05 mm proud\"\n");
        String csv =
                Bench.run("claim", file, "--samples", "50", "--format", "csv").out();
        assertEquals(3, csv.lines().count(), csv);
        assertTrue(csv.startsWith("on,at,point,step_mm,error_mm,"), csv);
        assertEquals(
                csv,
                Bench.run("claim", file, "--samples", "50", "--format", "csv").out());
    }

    @Test
    void anEventOnTheCommandLineWinsOverTheFileAndNotesTakeMarkdown() throws IOException {
        String file = file(LEAST.formatted("0.12 mm shy"));
        Bench claim = Bench.run("claim", file, "--samples", "50", "--event", "dishwasher,hot-car", "--format", "json");
        assertEquals(ExitCode.DONE, claim.code(), claim.err());
        assertTrue(claim.out().contains("use:dishwasher") && !claim.out().contains("soak"), claim.out());
        Bench note = Bench.run("claim", file, "--samples", "50", "--format", "markdown");
        assertTrue(note.out().startsWith("# This knife back from Duluth"), note.out());
        Bench unknown = Bench.run("claim", file, "--event", "dishwaser");
        assertTrue(unknown.err().contains("dishwasher"), unknown.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "edges = \"0.2 mm\" | measured[1].edges | a step and its side",
                "edges = \"9 mm shy\" | measured[1].edges | 5 mm at most",
                "edge = \"0.2 mm shy\" | measured[1].edge | did you mean edges?",
                "weight = \"182 g\" | measured[1].weight | measure an edge",
                "bolster = \"0.2 mm shy\" | bolster | it has no bolster",
                "error = \"0.05 mm\" | measured[1].on | nothing was measured on that day",
            })
    void aFaultIsNamedWithItsLineAndKey(String line, String key, String hint) throws IOException {
        String text = LEAST.replace("[measured]", "[[measured]]").replace("edges = \"%s\"", line);
        Bench claim = Bench.run("claim", file(text));
        assertEquals(ExitCode.INVALID_INPUT, claim.code(), claim.err());
        assertTrue(claim.err().contains(key) && claim.err().contains(hint), claim.err());
        assertTrue(claim.err().contains("line "), claim.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "on = 2026-02-10 | on = \"10 Feb\" | year-month-day",
                "[measured] | [bench]\\nback = 2024-01-01\\n[measured] | a day after it was delivered",
                "suspected | delivered = 2027-01-01\\nsuspected | a day before the first measuring",
                "suspected = [\"soak\"] | finished = 2026-01-01\\ndelivered = 2025-12-01 | the day of finishing or a later one",
            })
    void daysOutOfOrderAreNamed(String right, String wrong, String hint) throws IOException {
        String text = LEAST.formatted("0.1 mm shy").replace(right, wrong.replace("\\n", "\n"));
        Bench claim = Bench.run("claim", file(text));
        assertEquals(ExitCode.INVALID_INPUT, claim.code(), claim.err());
        assertTrue(claim.err().contains(hint), claim.err());
    }

    @Test
    void usageFaultsAreNamed() throws IOException {
        assertEquals(ExitCode.WRONG_USAGE, Bench.run("claim").code());
        String file = file(LEAST.formatted("flush"));
        assertEquals(
                ExitCode.WRONG_USAGE, Bench.run("claim", file, "--samples", "1").code());
        Bench nothing = Bench.run("claim", file(LEAST.substring(0, LEAST.indexOf("[measured]"))));
        assertEquals(ExitCode.INVALID_INPUT, nothing.code());
        assertTrue(nothing.err().contains("what was measured, and when?"), nothing.err());
        Bench unknown = Bench.run("claim", file(LEAST.formatted("flush").replace("soak", "sok")));
        assertTrue(unknown.err().contains("soak"), unknown.err());
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("knife.toml"), text).toString();
    }
}
