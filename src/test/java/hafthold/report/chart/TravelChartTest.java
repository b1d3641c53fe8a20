package hafthold.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.quantity.Band;
import hafthold.report.BenchStyle;
import java.util.List;
import java.util.OptionalDouble;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

class TravelChartTest {
    private static final double HALF_DIGIT = 0.05;

    @Test
    void drawsBarsToScaleOnEitherSideOfTheSteel() {
        Document svg = YearChartTest.parse(chart(List.of(
                        row("walnut", new Band(0.1, 0.2, 0.3), Band.exact(0)),
                        row("teak", new Band(0.05, 0.1, 0.15), new Band(0.02, 0.05, 0.07))))
                .svg(SheetFormat.WIDE));
        double[][] shy = YearChartTest.points(YearChartTest.line(svg, Ink.SHY));
        double[][] proud = YearChartTest.points(YearChartTest.line(svg, Ink.PROUD));
        double walnut = shy[0][0] - shy[1][0];
        double teak = shy[2][0] - shy[3][0];
        assertTrue(walnut > 0, "shy goes to the left");
        assertEquals(2, walnut / teak, 0.01);
        assertEquals(0.25 * walnut, proud[1][0] - proud[0][0], 2 * HALF_DIGIT + 1e-9);
        assertEquals(shy[0][0], proud[0][0], 1e-9, "both start at the steel");
    }

    @Test
    void standsTheFirstRowOnTop() {
        Document svg = YearChartTest.parse(chart(List.of(
                        row("best", Band.exact(0.1), Band.exact(0)), row("worst", Band.exact(0.2), Band.exact(0))))
                .svg(SheetFormat.WIDE));
        assertTrue(yOf(svg, "best") < yOf(svg, "worst"));
        double[][] bars = YearChartTest.points(YearChartTest.line(svg, Ink.SHY));
        assertTrue(bars[0][1] < bars[2][1]);
    }

    @Test
    void showsOnlyTheRangeOfWhatIsNotKnown() {
        TravelRow unknown = new TravelRow(
                1,
                "greywood",
                "unknown",
                new Band(0.0, 0.1, 0.4),
                Band.exact(0),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false);
        Document svg = YearChartTest.parse(chart(List.of(unknown)).svg(SheetFormat.WIDE));
        assertEquals(1, svg.select("path[stroke].ink-shy").size(), "the key only");
        assertEquals(1, svg.select("path[stroke-dasharray='2 2.5'].ink-text").size());
    }

    @Test
    void letsNoWordsRunOverTheEdges() {
        List<TravelRow> rows = List.of(row(
                "flat-sawn wood of a very long name indeed, resin in the pores and dyed",
                new Band(0.2, 0.3, 0.5),
                Band.exact(0)));
        rows = List.of(
                rows.get(0),
                new TravelRow(
                        0,
                        "with a diamond",
                        "",
                        Band.exact(0),
                        Band.exact(0.1),
                        OptionalDouble.empty(),
                        OptionalDouble.of(0.2),
                        true));
        for (SheetFormat format : SheetFormat.values()) {
            for (Element text : YearChartTest.parse(chart(rows).svg(format)).select("text")) {
                double width = format.widthOf(text.text());
                double x = Double.parseDouble(text.attr("x"));
                double start = text.attr("text-anchor").equals("start")
                        ? x
                        : text.attr("text-anchor").equals("end") ? x - width : x - width / 2;
                assertTrue(start >= -1 && start + width <= format.width() + 1, format + ": " + text.text());
            }
        }
    }

    @Test
    void refusesNoRows() {
        assertThrows(IllegalArgumentException.class, () -> chart(List.of()));
    }

    private static double yOf(Document svg, String words) {
        return svg.select("text").stream()
                .filter(text -> text.text().equals(words))
                .mapToDouble(text -> Double.parseDouble(text.attr("y")))
                .findFirst()
                .orElseThrow();
    }

    private static TravelRow row(String name, Band shy, Band proud) {
        return new TravelRow(1, name, "care", shy, proud, OptionalDouble.empty(), OptionalDouble.empty(), true);
    }

    private static TravelChart chart(List<TravelRow> rows) {
        return new TravelChart(
                "x",
                "title",
                "description",
                "mm a side",
                new ZeroLine("flush", "shy", "proud"),
                "as drilled",
                rows,
                List.of(new LimitMark("normal seasonal limit 0.12", -0.12), new LimitMark("retouch limit 0.25", -0.25)),
                BenchStyle.ENGLISH);
    }
}
