package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareTest {
    private static final String[] ORDER = {
        "compare", "--place", "london", "--material", "walnut-black,teak+lumen-resin,acrylic-cast,meteorite-iron"
    };

    /** Keys that scripts depend on. */
    private static final List<String> AGREED_KEYS = List.of(
            "place",
            "setting",
            "made",
            "temperature_c",
            "rh_percent",
            "results",
            "rank",
            "material",
            "name",
            "family",
            "cut",
            "mc_finish_percent",
            "mc_min_percent",
            "mc_max_percent",
            "edge_shy_mm",
            "edge_proud_mm",
            "free_shy_mm",
            "free_proud_mm",
            "length_mismatch_mm",
            "pin_gap_mm",
            "pin_squeeze_mm",
            "pin_head_proud_mm",
            "pin_head_sunk_mm",
            "low",
            "value",
            "high",
            "worst_month",
            "verdict",
            "evidence");

    @TempDir
    private Path folder;

    @Test
    void jsonHasTheAgreedKeys() throws IOException {
        Set<String> keys =
                BrowseTest.keys(Bench.run(with(ORDER, "--format", "json")).out());
        assertTrue(keys.containsAll(AGREED_KEYS), keys.toString());
    }

    @Test
    void theSameInputsGiveTheSameBytesInAnyLanguage() {
        String first = Bench.run(with(ORDER, "--format", "json")).out();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(first, Bench.run(with(ORDER, "--format", "json")).out());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void theResultStreamHoldsTheResultOnly() {
        Bench bench = Bench.run(ORDER);
        assertEquals(ExitCode.DONE, bench.code());
        assertTrue(bench.out().startsWith("Handle materials for London"), bench.out());
        assertFalse(bench.out().contains("mind:"));
        assertTrue(bench.err().contains("mind: Open grain holds water and food"), bench.err());
    }

    @Test
    void aCautionIsSaidOnceWithTheMaterialsItIsForTheGeneralOnesFirst() {
        Bench bench = Bench.run(
                "compare",
                "--place",
                "london",
                "--samples",
                "1",
                "--material",
                "teak,wenge,iroko,padauk-african,bone-bovine");
        List<String> minded =
                bench.err().lines().filter(line -> line.startsWith("mind: ")).toList();
        assertEquals(minded.stream().distinct().toList(), minded);
        List<String> dust = minded.stream()
                .filter(line -> line.contains("irritates or sensitises"))
                .toList();
        assertEquals(1, dust.size(), bench.err());
        assertTrue(dust.get(0).endsWith(" (wenge; iroko and 2 more)"), dust.get(0));
        assertTrue(minded.get(0).endsWith("how strong your knife is."), minded.get(0));
        int firstNamed =
                (int) minded.stream().takeWhile(line -> !line.endsWith(")")).count();
        assertTrue(minded.stream().skip(firstNamed).allMatch(line -> line.endsWith(")")), bench.err());
        assertTrue(minded.stream().anyMatch(line -> line.endsWith("papers. (bone)")));
    }

    @Test
    void inchesShowThouToo() {
        Bench bench = Bench.run(with(ORDER, "--units", "inch"));
        assertTrue(bench.out().contains("thou"), bench.out());
    }

    @Test
    void aReportIsWrittenWholeAndTwiceTheSame() throws IOException {
        Bench bench = Bench.run(with(ORDER, "--out", folder.resolve("a").toString()));
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        String page = Files.readString(folder.resolve("a/comparison.html"));
        Bench.run(with(ORDER, "--out", folder.resolve("a").toString()));
        assertEquals(page, Files.readString(folder.resolve("a/comparison.html")));
        try (Stream<Path> files = Files.list(folder.resolve("a"))) {
            assertTrue(files.noneMatch(file -> file.toString().endsWith(".part")));
        }
    }

    @Test
    void aRecordedYearIsTakenInPlaceOfAPlace() throws IOException {
        StringBuilder year = new StringBuilder("hour,temperature_c,rh_percent\n");
        for (int hour = 0; hour < 8760; hour++) {
            year.append(hour).append(",28,80\n");
        }
        Path file = Files.writeString(folder.resolve("tropics.csv"), year);
        Bench bench = Bench.run(
                "compare",
                "--climate",
                file.toString(),
                "--setting",
                "outdoors",
                "--material",
                "walnut-black",
                "--format",
                "csv");
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        assertTrue(bench.out().lines().count() == 2, bench.out());
    }

    @Test
    void theDemoRunsTheMainJob() {
        Bench bench = Bench.run("demo", "--out", folder.resolve("demo").toString());
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        assertTrue(bench.out().contains("invented order"));
        assertTrue(bench.out().contains("Flat-sawn black walnut"));
        assertTrue(Files.exists(folder.resolve("demo/comparison.html")));
    }

    @Test
    void aTraceHasARowAnHourAndTheAgreedColumns() {
        Bench bench = Bench.run("trace", "--place", "london", "--material", "walnut-black");
        List<String> lines = bench.out().lines().toList();
        assertEquals(8761, lines.size());
        assertEquals(
                "hour,temperature_c,rh_percent,mc_mean_percent,mc_surface_percent,mc_back_percent,width_strain,"
                        + "thickness_strain,length_strain,edge_offset_mm,free_offset_mm",
                lines.get(0));
    }

    private static String[] with(String[] order, String... more) {
        return Stream.concat(Stream.of(order), Stream.of(more)).toArray(String[]::new);
    }
}
