package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ComparisonChartsTest {
    private static final int LARGEST_BYTES = 150_000;

    private final Comparison comparison = InventedComparison.glued();
    private final List<ReportChart> charts = new ComparisonCharts(
                    BenchStyle.ENGLISH, Optional.of("walnut-black"), InventedComparison.limits())
            .of(comparison);

    @Test
    void readAndCountAsTheyDidBefore() throws IOException {
        StringBuilder text = new StringBuilder();
        for (ReportChart chart : charts) {
            text.append(chart.title()).append('\n').append(chart.reading()).append('\n');
            text.append(chart.numbers().caption()).append('\n');
            text.append(String.join(" | ", chart.numbers().head())).append('\n');
            chart.numbers()
                    .rows()
                    .forEach(row -> text.append(String.join(" | ", row)).append('\n'));
            text.append('\n');
        }
        String fresh = Paragraph.plain(text.toString());
        assertEquals(Golden.text("charts.txt", fresh), fresh);
    }

    @Test
    void areSmall() {
        for (ReportChart chart : charts) {
            for (String svg : List.of(chart.wideSvg(), chart.narrowSvg(), chart.fileSvg())) {
                assertTrue(svg.getBytes(StandardCharsets.UTF_8).length < LARGEST_BYTES, chart.id());
            }
        }
    }

    @Test
    void giveEqualBytesForEqualRuns() {
        List<ReportChart> again = new ComparisonCharts(
                        BenchStyle.ENGLISH, Optional.of("walnut-black"), InventedComparison.limits())
                .of(InventedComparison.glued());
        assertEquals(charts, again);
    }

    @Test
    void drawTheNamedMaterialFirstThenWorstAndBest() {
        List<Ranked> drawn = ChosenAnswers.drawn(comparison, Optional.of("teak"), 5);
        List<Ranked> judged = ChosenAnswers.judged(comparison);
        assertEquals(5, drawn.size());
        assertEquals("teak", drawn.get(0).year().scale().id());
        assertEquals("teak", drawn.get(1).year().scale().id());
        assertEquals(judged.get(judged.size() - 1), drawn.get(2));
        assertEquals(judged.get(0), drawn.get(3));
    }

    @Test
    void leaveOutWhatHasNoDays() {
        Comparison bare = new Comparison(
                comparison.placeId(),
                comparison.placeName(),
                comparison.settingId(),
                comparison.settingRule(),
                comparison.handle(),
                comparison.madeTemperature(),
                comparison.madeHumidity(),
                comparison.finishName(),
                List.of(),
                List.of(),
                comparison.ranked(),
                comparison.findings());
        List<String> ids = new ComparisonCharts(BenchStyle.ENGLISH, Optional.empty(), List.of())
                .of(bare).stream().map(ReportChart::id).toList();
        assertEquals(List.of("ranking", "edge-year", "moisture-year"), ids);
    }
}
