package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is printed of a scale whose strength across the grain nobody knows: the built-in elastomer. */
class UnknownStrengthTest {
    private static final String MEASURE = "enter the stress as tension_strength";

    @TempDir
    private Path folder;

    private static Bench compare(String... more) {
        List<String> words = new java.util.ArrayList<>(List.of(
                "compare", "--place", "london", "--material", "elastomer", "--made-rh", "65 %", "--samples", "30"));
        words.addAll(List.of(more));
        return Bench.run(words.toArray(new String[0]));
    }

    @Test
    void textSaysThatItCouldNotBeJudgedAndWhatToMeasure() {
        String text = compare().out().replaceAll("\\s+", " ");
        assertTrue(text.contains("whether it splits at its pins could not be judged"), text);
        assertTrue(text.contains(MEASURE), text);
        assertFalse(text.contains("holds in"), text);
    }

    @Test
    void csvLeavesTheCellsEmpty() {
        List<String> lines = compare("--format", "csv").out().lines().toList();
        List<String> head = List.of(lines.get(0).split(",", -1));
        String[] row = lines.get(1).split(",", -1);
        for (String end : List.of("low", "value", "high")) {
            assertEquals("", row[head.indexOf("pin_crack_use_" + end)]);
            assertFalse(row[head.indexOf("pin_squeeze_" + end + "_mm")].isEmpty());
        }
        assertEquals("", row[head.indexOf("probability")]);
        assertEquals("unknown", row[head.indexOf("verdict")]);
    }

    @Test
    void jsonSaysNull() {
        String json = compare("--format", "json").out();
        for (String key : List.of("pin_crack_use", "split_use", "probability", "class_probability")) {
            assertTrue(json.contains("\"" + key + "\": null"), key + json);
        }
    }

    @Test
    void aFitSaysItInNoteDataAndPage() throws IOException {
        String printed = Bench.run("fit", "--example").out();
        String order = printed.replaceFirst("material = \"[^\"]*\"", "material = \"elastomer\"")
                .replaceAll("(?m)^cut = .*$", "");
        assertFalse(order.equals(printed));
        Path file = folder.resolve("rubber.toml");
        Files.writeString(file, order);
        Bench note =
                Bench.run("fit", file.toString(), "--out", folder.resolve("out").toString());
        assertEquals(ExitCode.DONE, note.code(), note.err());
        String text = note.out().replaceAll("\\s+", " ");
        assertTrue(text.contains("how much of what the scale bears before it splits is unknown"), text);
        assertTrue(text.contains("how much of what it bears across the grain that takes is unknown"), text);
        assertTrue(text.contains(MEASURE), text);
        String json = Bench.run("fit", file.toString(), "--format", "json").out();
        for (String key : List.of("pin_crack_use", "crack_use", "middle_use", "tear_use")) {
            assertTrue(json.contains("\"" + key + "\": null"), key);
        }
        try (var files = Files.walk(folder.resolve("out"))) {
            String page = Files.readString(files.filter(path -> path.toString().endsWith(".html"))
                    .findFirst()
                    .orElseThrow());
            assertTrue(page.contains("The scale is not drawn: what it bears across the grain is unknown."), page);
        }
    }
}
