package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import hafthold.decide.Comparison;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ComparisonMarkdownTest {
    private static final Pattern BAND = Pattern.compile("(-?[\\d.]+) \\((-?[\\d.]+) to (-?[\\d.]+)\\)");
    private final Comparison comparison = InventedComparison.glued();
    private final String text = ComparisonMarkdown.of(comparison, BenchStyle.ENGLISH, Optional.of("walnut-black"));

    @Test
    void carriesTheMovementsOfTheCsv() {
        List<List<String>> rows = table("## Movements");
        List<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(ComparisonCsv.of(comparison)).stream()
                .toList();
        assertEquals(csv.size(), rows.size());
        for (int i = 0; i < rows.size(); i++) {
            assertEquals(csv.get(i).getField("rank"), rows.get(i).get(0));
            for (int k = 0; k < AnswerFigures.MOVEMENTS.size(); k++) {
                AnswerFigures.BandKey key = AnswerFigures.MOVEMENTS.get(k);
                MatchResult band = BAND.matcher(rows.get(i).get(k + 2))
                        .results()
                        .findFirst()
                        .orElseThrow();
                List<String> ends = List.of("value", "low", "high");
                for (int end = 0; end < ends.size(); end++) {
                    assertEquals(
                            Double.parseDouble(csv.get(i).getField(key.key(ends.get(end)))),
                            Double.parseDouble(band.group(end + 1)),
                            0.0005 + 1e-12,
                            key.key());
                }
            }
        }
    }

    @Test
    void carriesVerdictMonthAndMoistureOfTheCsv() {
        List<List<String>> rows = table("## Ranking");
        List<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(ComparisonCsv.of(comparison)).stream()
                .toList();
        for (int i = 0; i < rows.size(); i++) {
            assertEquals(csv.get(i).getField("verdict"), rows.get(i).get(3));
            assertEquals(
                    MonthWord.of(Integer.parseInt(csv.get(i).getField("worst_month"))),
                    rows.get(i).get(4));
            assertEquals(
                    Double.parseDouble(csv.get(i).getField("mc_max_percent")),
                    Double.parseDouble(rows.get(i).get(7)),
                    0.0005 + 1e-12);
        }
    }

    @Test
    void namesWithMarkupStayText() {
        String odd = ComparisonMarkdown.of(
                InventedComparison.glued(name -> name + "<script>|*"), BenchStyle.ENGLISH, Optional.empty());
        assertFalse(odd.contains("<script>"));
        assertFalse(Pattern.compile("[^\\\\]\\*").matcher(odd).find());
    }

    private List<List<String>> table(String heading) {
        return text.substring(text.indexOf(heading))
                .lines()
                .dropWhile(line -> !line.startsWith("|"))
                .takeWhile(line -> line.startsWith("|"))
                .skip(2)
                .map(line -> Arrays.stream(line.split("(?<!\\\\)\\|", -1))
                        .map(String::strip)
                        .toList())
                .map(cells -> cells.subList(1, cells.size() - 1))
                .toList();
    }
}
