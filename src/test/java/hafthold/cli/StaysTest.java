package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.table.BuildFile;
import hafthold.table.StaysFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A knife made here, stored there, moved in June. */
class StaysTest {
    private static final String HEADER = "from,name,place,climate,setting,temperature,humidity\n";

    @TempDir
    private Path folder;

    @Test
    void theExampleIsAcceptedByCompareFitAndTrace() throws IOException {
        Bench example = Bench.run("trace", "--stays-example");
        assertEquals(StaysFile.example(), example.out());
        String stays = write("stays.csv", example.out());
        String json = compare(stays, "--format", "json").out();
        assertTrue(json.contains("\"worst_stay\": \"Singapore\""), json);
        assertTrue(json.contains("\"place\": \"Singapore\""), json);
        Path report = folder.resolve("report");
        compare(stays, "--out", report.toString());
        assertTrue(Files.readString(report.resolve("stays.svg")).contains("dealer in Phoenix"));
        assertTrue(Files.readString(report.resolve("comparison.html")).contains("Stay by stay at the edge"));
        String knife = write("knife.toml", BuildFile.example());
        Bench fit = Bench.run(
                "fit", knife, "--stays", stays, "--out", folder.resolve("fit").toString());
        assertTrue(Files.readString(folder.resolve("fit").resolve("fit.html")).contains("Stay by stay at the edge"));
        assertEquals(ExitCode.DONE, fit.code(), fit.err());
        assertTrue(fit.out().contains("Stay by stay"), fit.out());
        assertTrue(fit.out().contains("dealer in Phoenix   "), fit.out());
        Bench stack = Bench.run("fit", write("stack.toml", BuildFile.stackExample()), "--stays", stays);
        assertEquals(ExitCode.DONE, stack.code(), stack.err());
        assertTrue(stack.out().contains("length against the steel"), stack.out());
    }

    @Test
    void thePageHoldsTheTableThatRepeatsIt() throws IOException {
        String stays = write("stays.csv", StaysFile.example());
        compare(stays, "--samples", "1", "--out", folder.resolve("echo").toString());
        String page = Files.readString(folder.resolve("echo/comparison.html"));
        String again = page.substring(page.indexOf("To run this again"));
        assertTrue(again.contains("--stays " + stays), again);
        StaysFile.example().lines().forEach(line -> assertTrue(again.contains(line), line));
    }

    @Test
    void eventsAreAskedForInOnePlace() throws IOException {
        Bench bench = compare(write("stays.csv", StaysFile.example()), "--event", "dishwasher");
        assertEquals(ExitCode.WRONG_USAGE, bench.code());
        assertTrue(bench.err().contains("instead of --stays"), bench.err());
        assertEquals("", bench.out());
    }

    /** Analytic: in air that is that of final sanding nothing moves, however the stays follow each other. */
    @Test
    void wherTheAirNeverChangesNothingMoves() throws IOException {
        String stays = write("still.csv", HEADER + "2026-07-06,shop,,,,20 C,50 %\n2026-08-06,parcel,,,,20 C,50 %\n");
        List<String> rows = trace(stays);
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",", -1);
            assertEquals(0, Double.parseDouble(cells[10]), 1e-5, row);
        }
    }

    /** The year that repeats at the end is the one that the place alone gives, and what is told of it too. */
    @Test
    void theLastStaysYearIsThatOfThePlaceAlone() throws IOException {
        String stays = write("one.csv", HEADER + "2026-01-01,shop,,,,20 C,50 %\n2027-01-01,,oslo,,heated-home,,\n");
        List<String> through = trace(stays);
        List<String> alone = Bench.run("trace", "--place", "oslo", "--material", "walnut-black", "--cut", "flat")
                .out()
                .lines()
                .toList();
        int repeats = (365 + 365) * 24 + 1;
        for (int hour = 1; hour < 8760; hour += 97) {
            String[] one = through.get(repeats + hour).split(",", -1);
            String[] other = alone.get(1 + hour).split(",", -1);
            for (int column = 1; column < one.length; column++) {
                assertEquals(Double.parseDouble(other[column]), Double.parseDouble(one[column]), 2e-3);
            }
        }
    }

    @Test
    void theStartIsTheStateOfFinalSanding() throws IOException {
        String stays = write("dry.csv", HEADER + "2026-07-06,home,,,,20 C,20 %\n");
        List<String> rows = trace(stays);
        assertEquals("9.2711", rows.get(1).split(",", -1)[3]);
        assertEquals(4.5, Double.parseDouble(rows.get(rows.size() - 1).split(",", -1)[3]), 0.1);
        String json = compare(stays, "--format", "json").out();
        assertTrue(json.contains("\"worst_date\": \"2027-"), json);
    }

    /** Analytic: sanded in the air of a shop that is held, nothing moves as long as it lies there. */
    @Test
    void aFirstStayOfHeldAirIsTheAirOfFinalSanding() throws IOException {
        String stays =
                write("shop-first.csv", HEADER + "2026-07-06,shop,,,,23 C,35 %\n2026-09-06,,oslo,,heated-home,,\n");
        List<String> rows = trace(stays);
        for (String row : rows.subList(1, 60 * 24)) {
            assertEquals(0, Double.parseDouble(row.split(",", -1)[10]), 1e-5, row);
        }
        String text = compare(stays, "--samples", "1").out();
        assertTrue(text.contains("23 \u00b0C and 35 % humidity"), text);
        assertTrue(text.replaceAll("\\s+", " ").contains("taken from the first stay"), text);
        String said = compare(stays, "--samples", "1", "--made-rh", "50 %").out();
        assertTrue(said.contains("23 \u00b0C and 50 % humidity"), said);
    }

    @Test
    void aRecordedFileOfAFewWeeksCountsAsRecordedWhereItCovers() throws IOException {
        StringBuilder text = new StringBuilder("time,temperature_c,rh_percent\n");
        for (int hour = 0; hour < 40 * 24; hour++) {
            text.append(String.format(
                    Locale.ROOT,
                    "2026-07-%02dT%02d:00,22,61\n".replace("07", hour < 31 * 24 ? "07" : "08"),
                    hour / 24 % 31 + 1,
                    hour % 24));
        }
        write("shop.csv", text.toString());
        String good =
                write("good.csv", HEADER + "2026-07-06,shop,,shop.csv,outdoors,,\n2026-08-05,,oslo,,heated-home,,\n");
        assertEquals("61", trace(good).get(100).split(",", -1)[2]);
        String late =
                write("late.csv", HEADER + "2026-07-06,shop,,shop.csv,outdoors,,\n2026-09-05,,oslo,,heated-home,,\n");
        assertFault(
                late,
                "late.csv line 2, column climate: 'shop.csv' is not right: expected a file with readings from 2026-07-06 to"
                        + " 2026-09-05; this one has 1 July, 0:00 to 9 August, 23:00");
        String last = write("last.csv", HEADER + "2026-07-06,shop,,shop.csv,outdoors,,\n");
        assertFault(last, "shop.csv: covers 40 of 365 days");
    }

    @Test
    void faultsNameTheCell() throws IOException {
        assertFault(
                write("a.csv", HEADER + "6.7.2026,shop,oslo,,,,\n"),
                "a.csv line 2, column from: '6.7.2026' is not right: expected a day written as year-month-day, such as"
                        + " 2026-07-18");
        assertFault(
                write("b.csv", HEADER + "2026-07-06,shop,oslo,,,,\n2026-07-06,x,oslo,,,,\n"),
                "b.csv line 3, column from: '2026-07-06' is not right: expected a day after 2026-07-06");
        assertFault(write("m.csv", HEADER + "2026-13-06,shop,oslo,,,,\n"), "such as 2026-07-18; there is no month 13");
        assertFault(
                write("c.csv", HEADER + "2026-07-06,shop,Osslo,,,,\n"),
                "c.csv line 2, column place: 'Osslo' is not right: expected the id of a place; did you mean oslo?");
        assertFault(
                write("d.csv", HEADER + "2026-07-06,shop,oslo,,garage,,\n"),
                "d.csv line 2, column setting: 'garage' is not right");
        assertFault(
                write("e.csv", HEADER + "2026-07-06,shop,oslo,,,21 C,55 %\n"),
                "e.csv line 2, column place: 'oslo' is not right: expected one of three: a place, a climate file, or a"
                        + " temperature with a humidity");
        assertFault(
                write("f.csv", HEADER + "2026-07-06,shop,,,,21 C,550 %\n"),
                "f.csv line 2, column humidity: '550 %' is not right: expected a humidity such as \"45 %\"");
        assertFault(
                write("g.csv", "from,town\n2026-07-06,oslo\n"),
                "g.csv line 1, column town: 'town' is not right: expected");
        assertFault(write("h.csv", HEADER), "h.csv: holds no stay");
        assertFault(folder.resolve("none.csv").toString(), "none.csv: is not there; expected a table of stays");
    }

    @Test
    void semicolonsAndDecimalCommasAreRead() throws IOException {
        String stays = write("s.csv", "from;temperature;humidity\n2026-07-06;20,5 C;50 %\n");
        assertEquals("20.5", trace(stays).get(50).split(",", -1)[1]);
    }

    @Test
    void staysAndAPlaceExcludeEachOther() throws IOException {
        String stays = write("stays.csv", StaysFile.example());
        for (String[] more : new String[][] {{"--place", "oslo"}, {"--setting", "shed"}, {"--humidifier", "40 %"}}) {
            Bench bench = compare(stays, more);
            assertEquals(ExitCode.WRONG_USAGE, bench.code(), bench.err());
            assertTrue(bench.err().contains("--stays says where the knife goes"), bench.err());
        }
    }

    @Test
    void finerRowsAgreeWithTheHours() {
        List<String> hours = Bench.run("trace", "--place", "oslo", "--material", "teak", "--cut", "flat")
                .out()
                .lines()
                .toList();
        List<String> halves = Bench.run(
                        "trace", "--place", "oslo", "--material", "teak", "--cut", "flat", "--every", "30")
                .out()
                .lines()
                .toList();
        assertEquals(2 * 8760 + 1, halves.size());
        assertEquals("0.5", halves.get(2).split(",", -1)[0]);
        for (int hour = 0; hour < 8760; hour += 501) {
            String[] one = hours.get(1 + hour).split(",", -1);
            String[] other = halves.get(1 + 2 * hour).split(",", -1);
            assertEquals(Double.parseDouble(one[3]), Double.parseDouble(other[3]), 2e-3);
            assertEquals(Double.parseDouble(one[1]), Double.parseDouble(other[1]), 1e-9);
        }
        Bench wrong = Bench.run("trace", "--place", "oslo", "--material", "teak", "--every", "7");
        assertEquals(ExitCode.WRONG_USAGE, wrong.code());
        assertTrue(wrong.err().contains("divide an hour"));
    }

    @Test
    void staysAreTracedFinerThanAnHourToo() throws IOException {
        String stays = write("stays.csv", HEADER + "2026-07-06,shop,,,,21 C,55 %\n2026-07-20,,oslo,,heated-home,,\n");
        List<String> hours = trace(stays);
        Bench halves =
                Bench.run("trace", "--stays", stays, "--material", "walnut-black", "--cut", "flat", "--every", "30");
        assertEquals(ExitCode.DONE, halves.code(), halves.err());
        List<String> rows = halves.out().lines().toList();
        assertEquals(2 * (hours.size() - 1) + 1, rows.size());
        for (int hour = 0; hour < hours.size() - 1; hour += 101) {
            String[] one = hours.get(1 + hour).split(",", -1);
            String[] other = rows.get(1 + 2 * hour).split(",", -1);
            assertEquals(Double.parseDouble(one[3]), Double.parseDouble(other[3]), 2e-3);
            assertEquals(Double.parseDouble(one[10]), Double.parseDouble(other[10]), 1e-4);
        }
    }

    /** Held air needs no hours, but its days are counted all the same. */
    @Test
    void staysInHeldAirAloneAreCompared() throws IOException {
        String stays = write("held.csv", HEADER + "2026-07-06,shop,,,,20 C,50 %\n2026-08-06,dry room,,,,20 C,30 %\n");
        String text = compare(stays).out();
        assertTrue(text.contains("dry room, from then on  every year"), text);
        assertTrue(text.contains("Worst on 2027-"), text);
    }

    @Test
    void humidifierCoolingAndVapourChangeTheHome() {
        assertTrue(least("--humidifier", "40 %") >= 40);
        assertTrue(least() < 20);
        assertTrue(least("--indoor-vapour", "810 Pa") > least() + 10);
        Bench wrong = Bench.run(
                "compare", "--place", "oslo", "--setting", "shed", "--humidifier", "40 %", "--material", "teak");
        assertEquals(ExitCode.WRONG_USAGE, wrong.code());
        assertTrue(wrong.err().contains("--humidifier goes with a home"), wrong.err());
        Bench noCooling = Bench.run("compare", "--place", "oslo", "--air-conditioning", "45 %", "--material", "teak");
        assertTrue(noCooling.err().contains("goes with --setting air-conditioned"), noCooling.err());
        Bench cooled = Bench.run(
                "compare",
                "--place",
                "singapore",
                "--setting",
                "air-conditioned",
                "--air-conditioning",
                "45 %",
                "--material",
                "acrylic-cast");
        assertTrue(cooled.out().contains("never above 24.5 C and 45 %"), cooled.out());
        assertFalse(cooled.out().contains("55 %."), cooled.out());
    }

    @Test
    void gapsOfRecordedAirAreToldAndLongOnesAllowedWhereAskedFor() throws IOException {
        StringBuilder text = new StringBuilder("hour,temperature_c,rh_percent\n");
        for (int hour = 0; hour < 8760; hour++) {
            if (hour < 500 || hour >= 600) {
                text.append(hour).append(",20,50\n");
            }
        }
        String file = write("gap.csv", text.toString());
        String[] command = {"compare", "--climate", file, "--setting", "outdoors", "--material", "teak", "--cut", "flat"
        };
        Bench strict = Bench.run(command);
        assertEquals(ExitCode.INVALID_INPUT, strict.code());
        assertTrue(strict.err().contains("gap.csv: has nothing for 100 hours after 21 January, 19:00"), strict.err());
        String[] allowed = java.util.Arrays.copyOf(command, command.length + 1);
        allowed[command.length] = "--allow-gaps";
        Bench bridged = Bench.run(allowed);
        assertEquals(ExitCode.DONE, bridged.code(), bridged.err());
        assertTrue(
                bridged.out().replaceAll("\\s+", " ").contains("lacks 100 of its hours in 1 gap, the longest of 100"),
                bridged.out());
    }

    private static double least(String... more) {
        String[] command = {"trace", "--place", "yakutsk", "--material", "acrylic-cast"};
        String[] all = java.util.Arrays.copyOf(command, command.length + more.length);
        System.arraycopy(more, 0, all, command.length, more.length);
        return Bench.run(all)
                .out()
                .lines()
                .skip(1)
                .mapToDouble(row -> Double.parseDouble(row.split(",", -1)[2]))
                .min()
                .orElseThrow();
    }

    private static List<String> trace(String stays) {
        Bench bench = Bench.run("trace", "--stays", stays, "--material", "walnut-black", "--cut", "flat");
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        return bench.out().lines().toList();
    }

    private static Bench compare(String stays, String... more) {
        String[] command = {"compare", "--stays", stays, "--material", "walnut-black", "--cut", "flat"};
        String[] all = java.util.Arrays.copyOf(command, command.length + more.length);
        System.arraycopy(more, 0, all, command.length, more.length);
        return Bench.run(all);
    }

    private static void assertFault(String stays, String message) {
        Bench bench = compare(stays);
        assertEquals(ExitCode.INVALID_INPUT, bench.code(), bench.err());
        assertTrue(bench.err().contains(message), bench.err());
        assertEquals("", bench.out());
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }
}
