package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtlasTest {
    private static final String MATERIALS = "walnut-black,acrylic-cast,antler-reindeer";
    private static final String PLACES = "oslo,singapore,phoenix";
    private static final String[] ORDER = {"atlas", "--material", MATERIALS, "--place", PLACES};

    @TempDir
    private Path folder;

    @Test
    void hasARowAMaterialAndPlaceInTheOrderAskedFor() throws IOException {
        List<NamedCsvRecord> rows = rows(run("--format", "csv").out());
        assertEquals(
                List.of(
                        "walnut-black oslo",
                        "walnut-black singapore",
                        "walnut-black phoenix",
                        "acrylic-cast oslo",
                        "acrylic-cast singapore",
                        "acrylic-cast phoenix",
                        "antler-reindeer oslo",
                        "antler-reindeer singapore",
                        "antler-reindeer phoenix"),
                rows.stream()
                        .map(row -> row.getField("material") + " " + row.getField("place"))
                        .toList());
        assertEquals(
                List.of("frosty-winter", "hot-damp", "hot-dry"),
                rows.stream().limit(3).map(row -> row.getField("climate")).toList());
    }

    @Test
    void saysOfEveryPairWhatCompareSaysOfIt() throws IOException {
        for (String samples : List.of("1", "100")) {
            Map<String, NamedCsvRecord> atlas = new LinkedHashMap<>();
            rows(run("--format", "csv", "--samples", samples).out())
                    .forEach(row -> atlas.put(row.getField("place") + row.getField("material"), row));
            int compared = 0;
            for (String place : PLACES.split(",", -1)) {
                Bench compare = Bench.run("compare", "--material", MATERIALS, "--place", place, "--format", "csv");
                for (NamedCsvRecord row : rows(compare.out())) {
                    NamedCsvRecord ours = atlas.get(place + row.getField("material"));
                    for (String column : row.getHeader()) {
                        if (column.startsWith("shows_days") || column.equals("do_not_sand_days")) {
                            continue; // how soon, which an atlas does not tell
                        }
                        boolean hangsOnBand = column.contains("_low")
                                || column.contains("_high")
                                || column.equals("evidence")
                                || column.equals("probability");
                        if (!hangsOnBand || samples.equals("100")) {
                            assertEquals(row.getField(column), ours.getField(column), place + " " + column);
                            compared++;
                        }
                    }
                }
            }
            assertTrue(compared > 200, "compared " + compared);
        }
    }

    @Test
    void givesTheSameBytesForAnyNumberOfThreads() {
        String one = run("--format", "json", "--threads", "1").out();
        assertEquals(one, run("--format", "json", "--threads", "2").out());
        assertEquals(one, run("--format", "json", "--threads", "5").out());
    }

    @Test
    void carriesTheSameFiguresInJsonCsvAndPage() throws IOException {
        Bench bench = run("--out", folder.resolve("a").toString());
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        List<NamedCsvRecord> rows = rows(Files.readString(folder.resolve("a/atlas.csv")));
        List<Map<String, String>> results = results(Files.readString(folder.resolve("a/atlas.json")));
        assertEquals(rows.size(), results.size());
        for (int i = 0; i < rows.size(); i++) {
            Map<String, String> result = results.get(i);
            for (String column : rows.get(i).getHeader()) {
                String path = column.replaceFirst("^(.*)_(low|value|high)(_mm)?$", "$1$3/$2");
                if (result.containsKey(path)) {
                    assertEquals(result.get(path), rows.get(i).getField(column), column);
                } else {
                    assertTrue(
                            column.equals("setting")
                                    || column.startsWith("made_")
                                    || rows.get(i).getField(column).isEmpty(),
                            column);
                }
            }
        }
        Document page = Jsoup.parse(Files.readString(folder.resolve("a/atlas.html")));
        List<String> cells = new ArrayList<>();
        for (Element table : page.select(".pairs table")) {
            table.select("tbody td").forEach(cell -> cells.add(cell.text().replace('\u00a0', ' ')));
        }
        assertEquals(rows.size(), cells.size());
        rows.forEach(row -> assertTrue(cells.remove(cellOf(row)), cellOf(row) + " in " + cells));
    }

    @Test
    void keepsMarkupFromTablesAsText() throws IOException {
        Path tables = Files.createDirectory(folder.resolve("tables"));
        Files.writeString(
                tables.resolve("places.csv"),
                Files.readAllLines(Path.of("material-tables/places.csv")).stream()
                        .filter(line -> line.startsWith("id,") || line.startsWith("oslo,"))
                        .map(line -> line.replaceFirst("^oslo,[^,]*,", "nasty,<script>alert(1)</script>,"))
                        .reduce("", (text, line) -> text + line + "\n"));
        Bench bench = Bench.run(
                "atlas",
                "--tables",
                tables.toString(),
                "--place",
                "nasty",
                "--material",
                "acrylic-cast",
                "--out",
                folder.resolve("b").toString());
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        Document page = Jsoup.parse(Files.readString(folder.resolve("b/atlas.html")));
        assertEquals(1, page.select("script").size(), "ours only");
        assertTrue(page.text().contains("<script>alert(1)</script>"));
    }

    @Test
    void aNameThatNoTableHasIsTold() {
        Bench bench = Bench.run("atlas", "--place", "oslo,singapoor", "--material", "teak");
        assertEquals(ExitCode.WRONG_USAGE, bench.code());
        assertTrue(bench.err().contains("did you mean singapore?"), bench.err());
        assertEquals("", bench.out());
    }

    @Test
    void refusesNoThreadsAndTooFewSamples() {
        assertEquals(ExitCode.WRONG_USAGE, run("--threads", "0").code());
        assertEquals(ExitCode.WRONG_USAGE, run("--samples", "7").code());
    }

    @Test
    void aMaterialOfWhichNothingIsKnownHasItsBandInAnyCase() throws IOException {
        List<NamedCsvRecord> rows =
                rows(Bench.run("atlas", "--material", "bloodwood,teak", "--place", "singapore", "--format", "csv")
                        .out());
        assertEquals("unknown", rows.get(0).getField("evidence"));
        assertFalse(rows.get(0).getField("edge_proud_low_mm").equals(rows.get(0).getField("edge_proud_high_mm")));
        assertEquals(rows.get(1).getField("edge_proud_low_mm"), rows.get(1).getField("edge_proud_high_mm"));
    }

    @Test
    void stoppedHalfWayLeavesNoFile() throws IOException, InterruptedException {
        Path out = folder.resolve("stopped");
        Process atlas = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "hafthold.cli.Hafthold",
                        "atlas",
                        "--setting",
                        "outdoors",
                        "--out",
                        out.toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (var err = atlas.errorReader()) {
            String progress = err.readLine();
            assertTrue(progress.matches("atlas: \\d+ of \\d+ places, about \\d+ (s|min) left"), progress);
            atlas.destroy();
            assertTrue(atlas.waitFor() != 0);
        }
        assertFalse(Files.exists(out), "no folder before there is a whole report");
    }

    private static Bench run(String... more) {
        return Bench.run(Stream.concat(Stream.of(ORDER), Stream.of(more)).toArray(String[]::new));
    }

    private static String cellOf(NamedCsvRecord row) {
        double shy = Double.parseDouble(row.getField("edge_shy_value_mm"));
        double proud = Double.parseDouble(row.getField("edge_proud_value_mm"));
        long size = Math.round(100 * Math.max(shy, proud));
        String sign = size == 0 ? "" : proud > shy ? "+" : "−";
        return row.getField("verdict").substring(0, 2) + " " + sign + size;
    }

    private static List<NamedCsvRecord> rows(String text) throws IOException {
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(text)) {
            return csv.stream().toList();
        }
    }

    /** Every result as values by path, such as edge_shy_mm/low. */
    private static List<Map<String, String>> results(String text) throws IOException {
        List<Map<String, String>> results = new ArrayList<>();
        try (JsonParser json = new JsonFactory().createParser(text)) {
            while (!"results".equals(json.currentName()) || json.currentToken() != JsonToken.START_ARRAY) {
                json.nextToken();
            }
            while (json.nextToken() == JsonToken.START_OBJECT) {
                Map<String, String> result = new LinkedHashMap<>();
                String outer = "";
                int depth = 1;
                while (depth > 0) {
                    JsonToken token = json.nextToken();
                    if (token == JsonToken.START_OBJECT) {
                        outer = json.currentName() + "/";
                        depth++;
                    } else if (token == JsonToken.END_OBJECT) {
                        outer = "";
                        depth--;
                    } else if (token != JsonToken.FIELD_NAME) {
                        result.put(outer + json.currentName(), json.getText());
                    }
                }
                results.add(result);
            }
        }
        return results;
    }
}
