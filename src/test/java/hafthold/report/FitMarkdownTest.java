package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.KnifeFit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FitMarkdownTest {

    @Test
    void readsTheNumbersOfAJsonByTheirPaths() {
        assertEquals(
                Map.of("a", 1.0, "b.low", 2.0, "c.1.d", 3.0, "c.2.d", 4.0, "e.1", 5.0),
                FitMarkdown.numbers("{\"a\":1,\"b\":{\"low\":2},\"c\":[{\"d\":3},{\"d\":4}],\"e\":[5],\"f\":\"x\"}"));
    }

    @Test
    void carriesEveryNumberOfTheJson() {
        KnifeFit fit = InventedFit.walnut();
        Map<String, List<String>> rows = new HashMap<>();
        FitMarkdown.of(fit, BenchStyle.ENGLISH)
                .lines()
                .dropWhile(line -> !line.startsWith("| Figure"))
                .takeWhile(line -> line.startsWith("|"))
                .skip(2)
                .map(line ->
                        Arrays.stream(line.split("\\|", -1)).map(String::strip).toList())
                .forEach(cells -> rows.put(cells.get(1), cells));
        Map<String, Double> json = FitMarkdown.numbers(FitJson.of(fit));
        assertTrue(json.size() > 50, "the fit has many numbers");
        json.forEach((path, number) -> {
            boolean low = path.endsWith(".low");
            boolean high = path.endsWith(".high");
            String row = path.replaceAll("\\.(low|value|high)$", "").replace('_', ' ');
            String cell = rows.get(row).get(low ? 3 : high ? 4 : 2);
            assertEquals(number, Double.parseDouble(cell), 0.0005 + 1e-12, path);
        });
    }
}
