package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.Setting;
import hafthold.report.PretendLanguage;
import hafthold.source.Finding;
import hafthold.table.BuildFile;
import hafthold.table.ClaimFile;
import hafthold.table.CouponFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whole runs in the pretend language: what is printed, what is said on the error stream, and every page and picture hold
 * nothing that does not come from its file, but what is listed here.
 */
class SecondLanguageTest {
    /** Alike in every language that is written in Latin letters. */
    private static final List<String> SYMBOLS = List.of("MPa");

    /** Options as they would be typed. */
    private static final List<String> OPTIONS = List.of(
            "--setting heated-home, --made-rh 50 %, --made-temp 20 C,",
            "--finish bare, --width 26 mm, --thickness 8 mm, --length 110 mm, --tang 4 mm, --pin 6 mm, --clearance 0 mm",
            "--climate",
            "--samples");

    /** Ids of classes and sources, for who looks them up. */
    private static final List<String> IDS = List.of(
            "hardwood-medium",
            "tropical-medium",
            "tropical-dense",
            "maple-sugar",
            "cotton-phenolic",
            "rosen-hashin-1970",
            "dental-dehydration-2009");

    /** Names of materials, finishes and places are those of the tables; in the columns of a text they stand in pieces. */
    private static final List<String> NAMES = List.of(
            "Oslo (Blindern), Norway",
            "Oslo (Blindern)",
            "Phoenix AZ, United States",
            "Singapore",
            "Yakutsk, Russia",
            "Duluth MN, United States",
            "bare",
            "black walnut",
            "black walnut, resin in the lumens",
            "black walnut, resin in the cell wall (phenolic, low molecular weight)",
            "resin in the lumens",
            "the lumens",
            "black walnut, resin in",
            "maple burl cast in epoxy",
            "maple burl cast in",
            "maple burl",
            "cast epoxy resin",
            "epoxy",
            "mammoth molar",
            "reindeer antler",
            "antler",
            "teak",
            "glass-epoxy laminate (G-10, FR-4)",
            "fine cotton (\"linen\") phenolic (grade LE)",
            "two-part epoxy, slow",
            "polyurethane glue",
            "free-cutting brass",
            "brass free cutting",
            "martensitic stainless blade steel",
            "carbon or low-alloy tool steel",
            "vulcanised fibre",
            "vegetable-tanned leather",
            "red deer antler (stag)");

    @TempDir
    private Path folder;

    private Path trip;

    @BeforeEach
    void layOutATrip() throws IOException {
        trip = folder.resolve("trip.csv");
        Files.writeString(trip, Bench.run("trace", "--stays-example").out());
    }

    @Test
    void compareTellsOfMaterials() throws IOException {
        String rack = "walnut-black,walnut-black+lumen-resin,hybrid-maple-burl-epoxy,molar-mammoth,antler-reindeer,"
                + "maple-burl,amboina wood,tropical-dense:bloodwood";
        // What is not in the tables is called so in its name.
        assertNothingBut(
                run("compare", "--place", "oslo", "--material", rack, "--samples", "30"),
                "amboina wood (not in the tables)",
                "bloodwood (not in the tables)",
                "amboina wood (not in",
                "bloodwood (not in the",
                "the tables)",
                "tables)",
                "amboina wood",
                "bloodwood",
                "amboina-wood",
                "amboyna",
                "medium tropical wood rich in extractives, unknown",
                "dense tropical wood rich in extractives, unknown");
    }

    @Test
    void compareTellsOfEvents() throws IOException {
        assertNothingBut(run(
                "compare",
                "--place",
                "phoenix",
                "--material",
                "walnut-black",
                "--samples",
                "1",
                "--event",
                "dishwasher every 90 d",
                "--event",
                "hot-car",
                "--event",
                "freezer",
                "--event",
                "parcel-gel",
                "--event",
                "parcel-pack",
                "--event",
                "parcel",
                "--event",
                "wet-sheath",
                "--event",
                "soak every 1 d 3 times"));
    }

    @Test
    void compareTellsOfStays() throws IOException {
        assertNothingBut(
                run("compare", "--stays", trip.toString(), "--material", "walnut-black", "--samples", "30"),
                "own shop",
                "parcel",
                "dealer in Phoenix");
    }

    @Test
    void compareTellsOfRecordedAir() throws IOException {
        Path logger = folder.resolve("logger.csv");
        Files.write(
                logger,
                Stream.concat(
                                Stream.of("time,temperature_c,rh_percent", "2025-01-01T00:00Z,,"),
                                Stream.iterate(0, hour -> hour < 500 * 24, hour -> hour + 6)
                                        .filter(hour -> hour < 4000 || hour > 4006)
                                        .map(hour -> LocalDateTime.of(2024, 1, 1, 0, 0)
                                                        .plusHours(hour) + "Z," + (10 + hour % 9) + ","
                                                + (50 + hour % 31)))
                        .toList());
        assertNothingBut(
                run("compare", "--climate", logger.toString(), "--material", "teak", "--samples", "1"), "logger.csv");
    }

    @Test
    void everySettingTellsItsRule() {
        for (String setting : Setting.all().stream().map(Setting::id).toList()) {
            Bench bench = Bench.run(
                    "compare",
                    "--place",
                    "oslo",
                    "--material",
                    "teak",
                    "--samples",
                    "1",
                    "--setting",
                    setting,
                    "--language",
                    PretendLanguage.CODE);
            assertNothingBut(
                    Map.of("printed", bench.out(), "error stream", bench.err()), "--made-rh 50 %, --made-temp 20 C,");
        }
    }

    @Test
    void fitTellsOfATangWithScales() throws IOException {
        assertNothingBut(knife("full-tang"), "Walnut for the north", "bolster.material", "yakutsk", "good-new");
    }

    /** As little as the file may say, so that every default is told; ids that it would take are typed words. */
    @Test
    void fitTellsOfWhatTheFileLeavesOut() throws IOException {
        Path least = folder.resolve("least.toml");
        Files.writeString(least, """
                [knife]
                kitchen = true
                [tang]
                width = "26 mm"
                [scales]
                material = "walnut-black"
                cut_left = "quarter"
                [bolster]
                material = "brass-free-cutting"
                [[liners]]
                [[pins]]
                [[pins]]
                fill = "open"
                [glue_up]
                humidity = "40 %"
                """);
        assertNothingBut(
                run("fit", least.toString(), "--place", "singapore", "--samples", "1", "--event", "dishwasher"),
                typed(BuildFile.read(least).findings()));
    }

    @Test
    void couponsTellOfFiguresAndWarnings() throws IOException {
        Path strips = folder.resolve("strips.toml");
        Files.writeString(strips, Bench.run("coupon", "--example").out() + """
                [[coupon]]
                name = "short odd"
                material = "teak"
                width = "20 mm"
                thickness = "6 mm"
                length = "60 mm"
                balance = "1 g"
                [[coupon.reading]]
                humidity = "50 %"
                weight = "9 g"
                width = "20 mm"
                [[coupon.reading]]
                humidity = "55 %"
                weight = "8 g"
                width = "19 mm"
                """);
        Stream<String> keys = Stream.concat(
                CouponFile.read(strips).findings().stream().map(Finding::subject),
                Stream.of(
                        "coupon.cut",
                        "walnut strip 1",
                        "burl offcut",
                        "burl-of-the-old-stock",
                        "walnut-black",
                        "short odd",
                        "walnut for Yakutsk, edges in January",
                        "walnut for Yakutsk, edges in",
                        "beech for the boat, edges in August",
                        "beech for the boat, edges in",
                        "January",
                        "August"));
        assertNothingBut(run("coupon", strips.toString(), "--samples", "600"), keys.toArray(String[]::new));
    }

    @Test
    void fitTellsOfAStack() throws IOException {
        assertNothingBut(knife("stack"), "Stack for a dry house", "duluth", "seasonal");
    }

    @Test
    void fitTellsOfWhatTheFileOfAStackLeavesOut() throws IOException {
        Path least = folder.resolve("least.toml");
        Files.writeString(least, """
                [knife]
                build = "tang-stack"
                [tang]
                width = "8 mm"
                [grip]
                [[parts]]
                material = "walnut-black"
                length = "60 mm"
                [[parts]]
                material = "leather-vegetable-tanned"
                length = "10 mm"
                """);
        assertNothingBut(
                run("fit", least.toString(), "--place", "oslo", "--samples", "1"),
                typed(BuildFile.read(least).findings()));
    }

    @Test
    void claimTellsOfAReturnedKnife() throws IOException {
        Path knife = folder.resolve("returned.toml");
        Files.writeString(knife, Bench.run("claim", "--example").out());
        assertNothingBut(
                run("claim", knife.toString(), "--samples", "60"),
                Stream.concat(
                                Stream.of(typed(ClaimFile.read(knife).build().findings())),
                                Stream.of("Walnut of last summer", "duluth", "bolster.material"))
                        .toArray(String[]::new));
    }

    @Test
    void atlasTellsOfPlaces() throws IOException {
        assertNothingBut(run(
                "atlas",
                "--material",
                "walnut-black,teak,hybrid-maple-burl-epoxy",
                "--place",
                "oslo,singapore,phoenix"));
    }

    @Test
    void seasonTellsOfWeeks() throws IOException {
        for (String day : List.of("2026-01-15", "2026-07-15")) {
            assertNothingBut(
                    run(
                            "season",
                            "--place",
                            "duluth",
                            "--material",
                            "walnut-black,glass-epoxy-g10,maple-burl",
                            "--shop-place",
                            "oslo",
                            "--shop-setting",
                            "shed",
                            "--today",
                            day,
                            "--samples",
                            "30"),
                    "--setting heated-home,",
                    "--blank-thickness 25 mm, --blank-width 40 mm, --blank-length 130 mm, --blank-open faces,edges,ends",
                    "glass-epoxy laminate",
                    "(G-10, FR-4)");
        }
        assertNothingBut(
                run(
                        "season",
                        "--place",
                        "phoenix",
                        "--material",
                        "teak",
                        "--shop-rh-january",
                        "35 %",
                        "--shop-rh-july",
                        "72 %",
                        "--today",
                        "2026-07-15",
                        "--blank-moisture",
                        "9 %",
                        "--glued-days",
                        "7",
                        "--samples",
                        "1"),
                "--setting heated-home,",
                "--blank-thickness 25 mm, --blank-width 40 mm, --blank-length 130 mm, --blank-open faces,edges,ends");
    }

    @Test
    void cardTellsTheCustomer() throws IOException {
        assertNothingBut(
                run("card", "--place", "oslo", "--material", "walnut-black", "--customer", "Ms Example"), "Ms Example");
        assertNothingBut(
                run("card", "--stays", trip.toString(), "--material", "walnut-black"),
                "own shop",
                "parcel",
                "dealer in Phoenix");
    }

    /** Keys of a build file, and the ids it could have named: who fills them in types them as they are. */
    private static String[] typed(List<Finding> findings) {
        return Stream.concat(
                        findings.stream().map(Finding::subject),
                        Stream.of(
                                "knife.setting",
                                "full-tang",
                                "good-new",
                                "heated-home",
                                "oslo",
                                "singapore",
                                "steel-stainless-martensitic",
                                "brass-free-cutting",
                                "vulcanised-fibre",
                                "hard-epoxy",
                                "epoxy-two-part"))
                .toArray(String[]::new);
    }

    /** What scripts read does not hang on who reads the page beside it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "compare --place oslo --material walnut-black,hybrid-maple-burl-epoxy --event freezer --format json",
                "compare --place oslo --material walnut-black --format csv",
                "atlas --place oslo,singapore --material teak --format json"
            })
    void scriptsReadTheSameInAnyLanguage(String command) {
        String[] english = (command + " --samples 1").split(" ", -1);
        String[] pretend = (command + " --samples 1 --language " + PretendLanguage.CODE).split(" ", -1);
        assertEquals(Bench.run(english).out(), Bench.run(pretend).out());
    }

    /** The example, and blocks of which as little is said as may be, in every state a block can be in. */
    @Test
    void stockTellsOfBlocks() throws IOException {
        Path blocks = folder.resolve("blocks.toml");
        Files.writeString(blocks, Bench.run("stock", "--example").out());
        assertNothingBut(
                run("stock", blocks.toString(), "--samples", "200"),
                "Walnut from the fair",
                "Maple, a slice dried in the oven",
                "Maple, a slice dried in",
                "the oven",
                "Stabilised burl",
                "maple burl, resin in the lumens",
                "sugar (hard) maple",
                "maple-sugar",
                "burl");
        Files.writeString(blocks, """
                [storage]
                place = "oslo"
                [[block]]
                material = "walnut-black"
                length = "120 mm"
                width = "40 mm"
                thickness = "30 mm"
                sealed = "all"
                reading = { on = 2026-03-01, weight = "95 g", meter = "14 %" }
                [[block]]
                material = "teak"
                length = "120 mm"
                width = "40 mm"
                thickness = "30 mm"
                reading = { on = 2026-03-01, weight = "900 g" }
                """);
        assertNothingBut(
                run("stock", blocks.toString(), "--place", "singapore", "--samples", "200"),
                "flat",
                "shed",
                "table salt (sodium chloride)");
    }

    private Map<String, String> knife(String kind) throws IOException {
        Path knife = folder.resolve(kind + ".toml");
        Files.writeString(knife, Bench.run("fit", "--example", kind).out());
        return run("fit", knife.toString(), "--samples", "30");
    }

    /** What a run leaves to be read, by the name of the file. */
    private Map<String, String> run(String... args) throws IOException {
        Path out = folder.resolve("out" + args.length);
        List<String> all = new ArrayList<>(Arrays.asList(args));
        all.addAll(List.of("--language", PretendLanguage.CODE, "--out", out.toString()));
        Bench bench = Bench.run(all.toArray(String[]::new));
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        Map<String, String> files = new LinkedHashMap<>();
        files.put("printed", bench.out());
        files.put("error stream", withoutPaths(bench.err()));
        try (Stream<Path> written = Files.walk(out)) {
            for (Path file : written.filter(path -> path.toString().matches(".*\\.(html|svg|txt|md)"))
                    .toList()) {
                files.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        assertTrue(files.size() > 2, files.keySet().toString());
        return files;
    }

    /** Where a report lies and how far a long run has come is the program's own speech, in English like its help. */
    private static String withoutPaths(String err) {
        return err.lines()
                .filter(line -> !line.matches("(report|card|\\r?atlas): .*"))
                .collect(Collectors.joining("\n"));
    }

    private static void assertNothingBut(Map<String, String> files, String... data) {
        List<String> phrases = Stream.of(SYMBOLS, OPTIONS, IDS, NAMES, List.of(data))
                .flatMap(List::stream)
                .flatMap(phrase ->
                        Stream.of(phrase, phrase.substring(0, 1).toUpperCase(Locale.ROOT) + phrase.substring(1)))
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
        Map<String, List<String>> left = new LinkedHashMap<>();
        files.forEach((name, content) -> PretendLanguage.seen(name, content).forEach((where, said) -> {
            List<String> words = PretendLanguage.wordsOutside(said, phrases);
            if (!words.isEmpty()) {
                left.put(where, words);
            }
        }));
        assertEquals(Map.of(), left);
    }
}
