package hafthold.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.report.chart.MonthPanels.Panel;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

class MonthPanelsTest {
    private static final MonthPanels.Words WORDS = new MonthPanels.Words(
            "mm",
            "level",
            "handle up",
            "steel up",
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"),
            ",");

    @Test
    void drawsOnePanelAHandleOnOneScale() {
        Document svg = parse(panels(panel("one", 0.2), panel("two", 0.1)).svg(SheetFormat.WIDE));
        double first = height(svg, Ink.FIRST);
        double second = height(svg, Ink.SECOND);
        assertEquals(2, first / second, 0.02, "twice the movement is drawn twice as high");
        assertTrue(svg.text().contains("one") && svg.text().contains("two"));
    }

    @Test
    void standsThemBelowEachOtherOnAPhone() {
        Document narrow = parse(panels(panel("one", 0.2), panel("two", 0.1)).svg(SheetFormat.NARROW));
        Document wide = parse(panels(panel("one", 0.2), panel("two", 0.1)).svg(SheetFormat.WIDE));
        assertTrue(number(narrow, "height") > 1.5 * number(wide, "height"));
        assertTrue(number(narrow, "width") <= 336);
    }

    @Test
    void labelsLimitsAndTheWorstDay() {
        String svg = panels(panel("", 0.2)).svg(SheetFormat.WIDE);
        assertTrue(svg.contains("call us from here"));
        assertTrue(svg.contains("0,2 mm in Jan"));
        assertFalse(panels(panel("", 0.001)).svg(SheetFormat.WIDE).contains("call us from here"));
    }

    @Test
    void writesTicksInTheLanguagesStyle() {
        String text = parse(panels(panel("", 0.23)).svg(SheetFormat.WIDE)).text();
        assertTrue(text.contains("0,2"), text);
        assertFalse(text.contains("0.2"), text);
    }

    @Test
    void refusesMoreThanThree() {
        Panel panel = panel("x", 0.1);
        assertThrows(IllegalArgumentException.class, () -> panels(panel, panel, panel, panel));
        assertThrows(IllegalArgumentException.class, () -> panels());
        assertThrows(IllegalArgumentException.class, () -> new Panel("x", List.of(1.0), List.of(), List.of(), ""));
    }

    private static Panel panel(String name, double size) {
        List<Double> daily = IntStream.range(0, 365)
                .mapToObj(day -> -size * Math.cos(2 * Math.PI * day / 365))
                .toList();
        return new Panel(
                name,
                daily,
                daily.stream().map(value -> value - 0.01).toList(),
                daily.stream().map(value -> value + 0.01).toList(),
                "0,2 mm in Jan");
    }

    private static MonthPanels panels(Panel... panels) {
        return new MonthPanels(
                "x",
                "title",
                "what it shows",
                List.of(panels),
                WORDS,
                List.of(new LimitMark("call us from here", -0.15)));
    }

    private static Document parse(String svg) {
        return Jsoup.parse(svg, "", Parser.xmlParser());
    }

    private static double number(Document svg, String attribute) {
        return Double.parseDouble(svg.selectFirst("svg").attr(attribute));
    }

    /** Height of the longest stroked path of an ink: the year's line. */
    private static double height(Document svg, Ink ink) {
        Element line = svg.select("path[stroke]." + ink.cssClass()).stream()
                .max((a, b) -> Integer.compare(a.attr("d").length(), b.attr("d").length()))
                .orElseThrow();
        List<Double> y = java.util.Arrays.stream(line.attr("d").substring(1).split("[ML]", -1))
                .map(point -> Double.valueOf(point.split(" ", -1)[1]))
                .toList();
        return Collections.max(y) - Collections.min(y);
    }
}
