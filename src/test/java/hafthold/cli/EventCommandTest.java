package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Events on the command line: what is asked for in words is answered for each material, knife and moment. */
class EventCommandTest {
    private static final String WASH = "dishwasher from 2026-02-10 20:00";

    @Test
    void compareTellsEachEventAndJudgesByTheWorse() {
        Bench quiet = compare();
        Bench washed = compare("--event", "dishwasher from 08-10 20:00", "--event", "dashboard from 07-10");
        assertAll(
                () -> assertEquals(ExitCode.DONE, washed.code(), washed.err()),
                () -> assertFalse(quiet.out().contains("\"events\"")),
                () -> assertTrue(washed.out().contains("\"event\": \"dashboard\"")),
                () -> assertTrue(number(washed.out(), "mc_max_percent") > number(quiet.out(), "mc_max_percent")),
                () -> assertTrue(
                        number(washed.out(), "event_softening_margin_k\": \\{\\s*\"low\": [-0-9.]+,\\s*\"value") < 0),
                () -> assertTrue(washed.err().contains("A loose handle is a hazard"), washed.err()),
                () -> assertTrue(washed.err().contains("rusts the tang"), washed.err()));
    }

    @Test
    void theSameEventsGiveTheSameBytes() {
        assertEquals(compare("--event", WASH).out(), compare("--event", WASH).out());
    }

    @Test
    void theTextNamesTheRuleOfTheEvent() {
        Bench bench = Bench.run(
                "compare", "--place", "oslo", "--material", "linen-phenolic-le", "--event", WASH, "--cut", "flat");
        assertTrue(bench.out().contains("30 min wet at 55 C, then 10 min wet at 65 C"), bench.out());
    }

    /** A knife that is glued with room-temperature epoxy and washed at 65 C must not be told to have margin. */
    @Test
    void fitTakesTheHeatOfTheEvent(@TempDir Path folder) throws IOException {
        Path knife = folder.resolve("knife.toml");
        Files.writeString(knife, Bench.run("fit", "--example").out());
        Bench quiet = Bench.run("fit", knife.toString(), "--format", "json");
        Bench washed = Bench.run("fit", knife.toString(), "--format", "json", "--event", WASH);
        String margin = "softening_margin_k\": \\{\\s*\"low\": [-0-9.]+,\\s*\"value";
        assertAll(
                () -> assertEquals(ExitCode.DONE, washed.code(), washed.err()),
                () -> assertTrue(number(quiet.out(), margin) > 0),
                () -> assertTrue(number(washed.out(), margin) < 0),
                () -> assertTrue(number(washed.out(), "\"glue_use\": \\{\\s*\"low\": [-0-9.]+,\\s*\"value")
                        >= number(quiet.out(), "\"glue_use\": \\{\\s*\"low\": [-0-9.]+,\\s*\"value")),
                () -> assertTrue(washed.out().contains("\"split_use\"")));
    }

    /** Advice and some figures are those of the year without events: that has to be seen where they stand. */
    @Test
    void fitSaysWhatIsToldWithoutEvents(@TempDir Path folder) throws IOException {
        Path knife = folder.resolve("knife.toml");
        Files.writeString(knife, Bench.run("fit", "--example").out());
        String quiet = Bench.run("fit", knife.toString()).out();
        String washed = flat(Bench.run("fit", knife.toString(), "--event", WASH).out());
        String noted = Bench.run("fit", knife.toString(), "--event", WASH, "--format", "markdown")
                .out();
        assertAll(
                () -> assertTrue(quiet.lines().findFirst().orElseThrow().contains(", as built: "), quiet),
                () -> assertFalse(quiet.contains("Without events:"), quiet),
                () -> assertFalse(washed.contains("as built"), washed),
                () -> assertTrue(washed.contains("What to do for the year without events"), washed),
                () -> assertTrue(washed.contains("Without events: Along the handle"), washed),
                () -> assertTrue(washed.substring(0, washed.indexOf("Lives")).contains("beyond where glue"), washed),
                () -> assertTrue(noted.contains("## What to do for the year without events"), noted));
    }

    @Test
    void anEventWithoutADateSaysWhichDayWasTaken() {
        Bench car = compare("--event", "hot-car");
        Bench frost = compare("--event", "freezer");
        assertAll(
                () -> assertTrue(car.out().contains("No date was said, so hot car is taken on "), car.out()),
                () -> assertTrue(car.out().contains("the middle of the hottest week outdoors"), car.out()),
                () -> assertTrue(frost.out().contains("the middle of the coldest week outdoors"), frost.out()),
                () -> assertFalse(compare("--event", WASH).out().contains("No date was said")),
                () -> assertTrue(Bench.run("compare", "--help").out().contains("hottest week")));
    }

    /** Walnut bears 65 C, room-cured epoxy does not: the glue is what to warn of. */
    @Test
    void compareWarnsOfTheGlueThatSoftensFirst() {
        Bench washed = compare("--event", WASH);
        assertTrue(
                Pattern.compile("event_softens_first\": \"[^\"]*epoxy")
                        .matcher(washed.out())
                        .find(),
                washed.out());
    }

    /** Ten days of soaking twice a day in August wet walnut further than anything else in the year of a heated home. */
    @Test
    void theWorstMonthIsThatOfTheEventsWhereTheseAreTheWorse() {
        Bench quiet = compare();
        Bench soaked = compare("--event", "soak from 08-12 every 12 h 20 times");
        assertTrue(number(quiet.out(), "worst_month") != 8, quiet.out());
        assertEquals(8, number(soaked.out(), "worst_month"), soaked.out());
    }

    /** The glue is as hot under all of them: what ranks them is how far they move. */
    @Test
    void theHeatOfTheGlueDoesNotRankTheMaterials() {
        String out = Bench.run(
                        "compare",
                        "--place",
                        "oslo",
                        "--material",
                        "walnut-black,linen-phenolic-le,teak",
                        "--cut",
                        "flat",
                        "--event",
                        WASH,
                        "--format",
                        "json")
                .out();
        int linen = out.indexOf("\"material\": \"linen-phenolic-le\"");
        int teak = out.indexOf("\"material\": \"teak\"");
        int walnut = out.indexOf("\"material\": \"walnut-black\"");
        assertTrue(0 < linen && linen < teak && teak < walnut, () -> linen + " " + teak + " " + walnut);
    }

    private static String flat(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ");
    }

    @Test
    void aStackIsSentToCompare(@TempDir Path folder) throws IOException {
        Path stack = folder.resolve("stack.toml");
        Files.writeString(stack, Bench.run("fit", "--example", "stack").out());
        Bench bench = Bench.run("fit", stack.toString(), "--event", WASH);
        assertEquals(ExitCode.WRONG_USAGE, bench.code());
        assertTrue(bench.err().contains("full-tang knives"), bench.err());
    }

    @Test
    void traceGoesMinuteByMinuteThroughTheEventAndHourByHourElsewhere() {
        Bench bench = Bench.run(
                "trace",
                "--place",
                "oslo",
                "--material",
                "walnut-black",
                "--cut",
                "flat",
                "--event",
                WASH,
                "--step",
                "1 min");
        List<String> lines = bench.out().lines().toList();
        List<Double> hours = lines.stream()
                .skip(1)
                .map(line -> Double.parseDouble(line.substring(0, line.indexOf(','))))
                .toList();
        double start = 40 * 24 + 20;
        assertAll(
                () -> assertEquals(ExitCode.DONE, bench.code(), bench.err()),
                () -> assertEquals(0, hours.get(0), 0),
                () -> assertEquals(8759, hours.get(hours.size() - 1), 0),
                () -> assertEquals(start + 1 / 60.0, hours.get(40 * 24 + 21), 1e-3),
                () -> assertTrue(hours.stream()
                                .filter(h -> h > start && h < start + 100.5 / 60.0)
                                .count()
                        >= 100),
                () -> {
                    for (int i = 1; i < hours.size(); i++) {
                        assertTrue(hours.get(i) > hours.get(i - 1), "row " + i);
                    }
                });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dishwahser | did you mean dishwasher?",
                "dishwasher tomorrow | from, every or N times",
                "dishwasher every 1 h | starts anew before it is over",
            })
    void wrongWordsAreAnsweredInOneLine(String words, String part) {
        Bench bench = compare("--event", words);
        assertEquals(ExitCode.WRONG_USAGE, bench.code());
        assertTrue(bench.err().contains(part), bench.err());
        assertEquals("", bench.out());
    }

    @Test
    void stepsAndYearsHaveBounds() {
        assertTrue(compare("--event", WASH, "--event-years", "0").err().contains("1 to 20"));
        Bench bench = Bench.run(
                "trace", "--place", "oslo", "--material", "teak", "--cut", "flat", "--event", WASH, "--step", "1 s");
        assertEquals(ExitCode.WRONG_USAGE, bench.code());
        assertTrue(bench.err().contains("write 10 s to 1 h"), bench.err());
    }

    @Test
    void theEventsAreListedWithTheirRules() {
        Bench bench = Bench.run("materials", "--events");
        assertTrue(bench.out().contains("parcel-gel"), bench.out());
        assertTrue(bench.out().contains("10 g of dry gel"), bench.out());
    }

    private static Bench compare(String... more) {
        String[] all = new String[9 + more.length];
        String[] first = {
            "compare", "--place", "oslo", "--material", "walnut-black", "--cut", "flat", "--format", "json"
        };
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return Bench.run(all);
    }

    private static double number(String json, String key) {
        Matcher found = Pattern.compile(key + "\": ([-0-9.E]+)").matcher(json);
        assertTrue(found.find(), () -> key + " in " + json);
        return Double.parseDouble(found.group(1));
    }
}
