package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class ComparisonJsonTest {
    /** The names that scripts depend on, in the order agreed. */
    private static final List<String> AGREED = List.of(
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
            "worst_month",
            "verdict",
            "evidence");

    private final Comparison comparison = InventedComparison.glued();
    private final Map<String, String> leaves = leaves(ComparisonJson.of(comparison));

    @Test
    void hasTheAgreedKeysAtTheTop() {
        assertEquals(
                List.of("place", "setting", "made", "results", "findings"),
                leaves.keySet().stream()
                        .map(path -> path.split("[/.]", -1)[0])
                        .distinct()
                        .toList());
        assertEquals("20.0", leaves.get("made/temperature_c"));
        assertEquals("55.0", leaves.get("made/rh_percent"));
    }

    @Test
    void hasTheAgreedKeysInEveryResultAndAFewMore() {
        List<String> expected = new ArrayList<>(AGREED);
        expected.addAll(AGREED.indexOf("worst_month"), List.of("end_short_mm", "end_long_mm", "pin_crack_use"));
        expected.addAll(AGREED.indexOf("length_mismatch_mm"), List.of("tang_line_shy_mm", "tang_line_proud_mm"));
        expected.addAll(List.of(
                "rests_on",
                "samples",
                "probability",
                "class_probability",
                "median_mm",
                "drivers",
                "bonded",
                "reasons",
                "findings"));
        for (int i = 0; i < comparison.ranked().size(); i++) {
            String prefix = "results/" + i + "/";
            Set<String> keys = new LinkedHashSet<>();
            leaves.keySet().stream()
                    .filter(path -> path.startsWith(prefix))
                    .forEach(path -> keys.add(path.substring(prefix.length()).split("/", -1)[0]));
            assertEquals(expected, List.copyOf(keys), "result " + i);
        }
    }

    @Test
    void givesEveryMovementAsLowValueHighThatAreNotNegative() {
        for (int i = 0; i < comparison.ranked().size(); i++) {
            for (String key : AGREED) {
                if (key.endsWith("_mm")) {
                    double low = number("results/" + i + "/" + key + "/low");
                    double value = number("results/" + i + "/" + key + "/value");
                    double high = number("results/" + i + "/" + key + "/high");
                    assertTrue(0 <= low && low <= value && value <= high, key);
                }
            }
        }
    }

    @Test
    void carriesTheFiguresInMillimetresAndPercentWithinABillionth() {
        for (int i = 0; i < comparison.ranked().size(); i++) {
            Ranked answer = comparison.ranked().get(i);
            String at = "results/" + i + "/";
            assertEquals(1000 * answer.year().edge().bonded().shy().high(), number(at + "edge_shy_mm/high"), 0.5e-9);
            assertEquals(1000 * answer.year().pins().headSunk().value(), number(at + "pin_head_sunk_mm/value"), 0.5e-9);
            assertEquals(100 * answer.year().moisture().lowest(), number(at + "mc_min_percent"), 0.5e-9);
            assertEquals(answer.verdict().word(), leaves.get(at + "verdict"));
        }
    }

    @Test
    void givesEqualBytesForEqualRuns() {
        assertEquals(ComparisonJson.of(InventedComparison.glued()), ComparisonJson.of(InventedComparison.glued()));
    }

    @Test
    void keepsQuotesAndLineFeedsInsideNames() {
        UnaryOperator<String> nasty = text -> text + "\"\n\t\\ é";
        Map<String, String> odd = leaves(ComparisonJson.of(InventedComparison.glued(nasty)));
        assertTrue(odd.get("results/0/name").endsWith("\"\n\t\\ é"));
    }

    @Test
    void agreesWithTheFlatTableInEveryNumberAndWord() throws IOException {
        List<NamedCsvRecord> rows;
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(ComparisonCsv.of(comparison))) {
            rows = csv.stream().toList();
        }
        assertEquals(comparison.ranked().size(), rows.size());
        int compared = 0;
        for (int i = 0; i < rows.size(); i++) {
            for (String column : rows.get(i).getHeader()) {
                String path = "results/" + i + "/" + pathOf(column);
                String common = leaves.getOrDefault(pathOf(column), "");
                String expected = leaves.getOrDefault(path, isSettling(column) ? "" : common);
                assertEquals(expected, rows.get(i).getField(column), column);
                compared++;
            }
        }
        assertEquals(rows.size() * rows.get(0).getFieldCount(), compared);
    }

    @Test
    void settlingStandsInBoth() throws IOException {
        Comparison settling = InventedCard.english("walnut-black").offered();
        Map<String, String> json = leaves(ComparisonJson.of(settling));
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(ComparisonCsv.of(settling))) {
            NamedCsvRecord row = csv.stream().findFirst().orElseThrow();
            for (String column : List.of("shows_days_low", "shows_days_value", "shows_days_high", "do_not_sand_days")) {
                assertEquals(json.get("results/0/" + pathOf(column)), row.getField(column), column);
            }
        }
    }

    /** What takes up no water has none: an empty cell, no key. */
    private static boolean isSettling(String column) {
        return column.startsWith("shows_days") || column.equals("do_not_sand_days");
    }

    private static String pathOf(String column) {
        if (column.startsWith("made_")) {
            return "made/" + column.substring("made_".length());
        }
        return column.replaceFirst("^(.*)_(low|value|high)_mm$", "$1_mm/$2")
                .replaceFirst("^(pin_crack_use|shows_days)_(low|value|high)$", "$1/$2");
    }

    private double number(String path) {
        return Double.parseDouble(leaves.get(path));
    }

    /** Every value by its path, such as results/0/edge_shy_mm/low; an empty array counts as one value. */
    static Map<String, String> leaves(String text) {
        Map<String, String> leaves = new LinkedHashMap<>();
        try (JsonParser json = new JsonFactory().createParser(text)) {
            json.nextToken();
            collect(json, "", leaves);
            assertEquals(null, json.nextToken(), "one object only");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return leaves;
    }

    private static void collect(JsonParser json, String path, Map<String, String> leaves) throws IOException {
        if (json.currentToken() == JsonToken.START_OBJECT) {
            while (json.nextToken() != JsonToken.END_OBJECT) {
                String key = json.currentName();
                json.nextToken();
                collect(json, path.isEmpty() ? key : path + "/" + key, leaves);
            }
        } else if (json.currentToken() == JsonToken.START_ARRAY) {
            int index = 0;
            while (json.nextToken() != JsonToken.END_ARRAY) {
                collect(json, path + "/" + index++, leaves);
            }
            if (index == 0) {
                leaves.put(path, "");
            }
        } else {
            leaves.put(path, json.getText());
        }
    }
}
