package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import hafthold.decide.EventComparison;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What events do is the same in every form of a comparison. */
class EventFormsTest {
    private static final EventComparison WASHED = InventedEvents.weekly(InventedComparison.glued());

    @Test
    void theCsvHasEveryNumberOfTheJsonOnceARowAMaterialAndEvent() {
        List<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(ComparisonCsv.of(WASHED)).stream()
                .toList();
        assertEquals(WASHED.comparison().ranked().size(), rows.size());
        Map<String, Double> json = FitMarkdown.numbers(ComparisonJson.of(WASHED));
        for (int i = 0; i < rows.size(); i++) {
            NamedCsvRecord row = rows.get(i);
            assertEquals("dishwasher", row.getField("event"));
            String result = (i + 1) + ".";
            json.forEach((path, number) -> {
                String key = path.substring(path.indexOf('.') + 1);
                boolean isEvent = key.startsWith("events.1.") || key.startsWith("event_");
                if (path.startsWith(result) && isEvent) {
                    assertEquals(number, Double.parseDouble(row.getField(column(key))), 1e-9, key);
                }
            });
        }
    }

    /** The column of a path of the JSON: events.1.edge_shy_mm.low is event_edge_shy_low_mm. */
    private static String column(String path) {
        String flat = path.replaceFirst("^events\\.1\\.", "event_");
        int end = flat.indexOf('.');
        if (end < 0) {
            return flat;
        }
        String name = flat.substring(0, end);
        String which = flat.substring(end + 1);
        int unit = name.lastIndexOf('_');
        boolean hasUnit = List.of("mm", "points", "c", "k").contains(name.substring(unit + 1));
        return hasUnit ? name.substring(0, unit) + "_" + which + name.substring(unit) : name + "_" + which;
    }

    @Test
    void withoutEventsTheCsvHasNoColumnsForThem() {
        String quiet = ComparisonCsv.of(InventedComparison.glued());
        assertEquals(quiet, ComparisonCsv.of(EventComparison.quiet(InventedComparison.glued())));
        assertTrue(quiet.lines().findFirst().orElseThrow().endsWith("bonded,probability"));
    }

    @Test
    void theMarkdownHasEveryNumberToThreeDigits() {
        String markdown = ComparisonMarkdown.of(WASHED, BenchStyle.ENGLISH, Optional.empty());
        String head = markdown.lines()
                .filter(line -> line.contains("mc face max percent"))
                .findFirst()
                .orElseThrow();
        String row = markdown.lines()
                .skip(markdown.lines().toList().indexOf(head) + 2L)
                .findFirst()
                .orElseThrow();
        assertTrue(row.contains("dishwasher | 52 | 28.100 |"), row);
        assertTrue(row.contains("0.043 (0.020 to 0.080)"), row);
        assertTrue(row.contains("31.250"), row);
        assertTrue(row.contains("−4.250 (−9.500 to 1.000)"), row);
        assertEquals(
                head.chars().filter(c -> c == '|').count(),
                row.chars().filter(c -> c == '|').count());
        assertEquals(4 + EventFigures.ALL.size() + EventFigures.OF_YEAR.size(), row.split(" \\| ", -1).length);
    }

    @Test
    void whatSoftensFirstIsNamedAndWhereNothingStatesItThatIsSaid() {
        EventComparison unstated = InventedEvents.weekly(InventedComparison.glued(), Optional.empty());
        String text = new ComparisonText(BenchStyle.ENGLISH, Optional.empty()).of(unstated);
        String named = new ComparisonText(BenchStyle.ENGLISH, Optional.empty()).of(WASHED);
        assertTrue(text.contains("nothing in it states a softening temperature"), text);
        assertTrue(named.replaceAll("[\\s\u00a0]+", " ").contains("hotter than black walnut bears for long"), named);
        assertTrue(ComparisonJson.of(unstated).contains("\"event_softening_margin_k\": null"));
        assertTrue(ComparisonJson.of(unstated).contains("\"event_softens_first\": null"));
    }
}
