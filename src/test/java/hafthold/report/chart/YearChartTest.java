package hafthold.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.report.BenchStyle;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TimeZone;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

class YearChartTest {
    /** Half of the last digit a coordinate is written with. */
    private static final double HALF_DIGIT = 0.05;

    private static final double PLOT_HEIGHT = 290;
    private static final double PLOT_WIDTH = 510;

    @Test
    void drawsEveryDayWhereItsValueLies() {
        List<Double> daily = wave(0.1);
        Document svg = parse(chart(List.of(YearLine.of("walnut", daily)), true).svg(SheetFormat.WIDE));
        double[][] points = points(line(svg, Ink.FIRST));
        assertEquals(daily.size(), points.length, "one joined path, or dashes would start afresh every day");
        double top = highestTick(svg);
        double perUnit = PLOT_HEIGHT / (top + lowestTick(svg));
        for (int day = 0; day < points.length; day++) {
            assertEquals((day + 0.5) / 365 * PLOT_WIDTH, points[day][0], HALF_DIGIT + 1e-9);
            assertEquals((top - daily.get(day)) * perUnit, points[day][1], HALF_DIGIT + 1e-9);
        }
    }

    @Test
    void drawsTheBandRoundItsLine() {
        List<Double> daily = wave(0.1);
        List<Double> low = daily.stream().map(value -> value - 0.02).toList();
        List<Double> high = daily.stream().map(value -> value + 0.02).toList();
        YearLine line = new YearLine("walnut", daily, low, high, OptionalDouble.empty());
        Document svg = parse(chart(List.of(line), true).svg(SheetFormat.WIDE));
        Element area = svg.selectFirst("path[fill-opacity]");
        double perUnit = PLOT_HEIGHT / (highestTick(svg) + lowestTick(svg));
        double[][] outline = points(area);
        assertEquals(0.04 * perUnit, outline[730 - 1][1] - outline[0][1], 2 * HALF_DIGIT + 1e-9);
    }

    @Test
    void drawsALimitOnlyWhereTheDataComeNearIt() {
        String near = chart(List.of(YearLine.of("walnut", wave(0.1))), true).svg(SheetFormat.WIDE);
        String far = chart(List.of(YearLine.of("glass", wave(0.001))), true).svg(SheetFormat.WIDE);
        assertTrue(near.contains("seasonal 0.12"));
        assertFalse(near.contains("retouch 0.25"));
        assertFalse(far.contains("seasonal 0.12"));
    }

    @Test
    void namesEveryLineInBothFormats() {
        List<YearLine> lines = IntStream.range(0, 5)
                .mapToObj(i -> YearLine.of("material " + i, wave(0.02 * i)))
                .toList();
        for (SheetFormat format : SheetFormat.values()) {
            String words = parse(chart(lines, true).svg(format)).select("text").text();
            IntStream.range(0, 5).forEach(i -> assertTrue(words.contains("material " + i)));
        }
    }

    @Test
    void givesEveryLineADashOfItsOwn() {
        List<YearLine> lines = IntStream.range(0, 5)
                .mapToObj(i -> YearLine.of("material " + i, wave(0.02 * i)))
                .toList();
        Document svg = parse(chart(lines, true).svg(SheetFormat.WIDE));
        List<String> dashes = List.of(Ink.FIRST, Ink.SECOND, Ink.THIRD, Ink.FOURTH, Ink.FIFTH).stream()
                .map(ink -> line(svg, ink).attr("stroke-dasharray"))
                .toList();
        assertEquals(5, dashes.stream().distinct().count(), dashes.toString());
    }

    @Test
    void refusesMoreLinesThanCanBeToldApart() {
        List<YearLine> six = Collections.nCopies(6, YearLine.of("walnut", wave(0.1)));
        assertThrows(IllegalArgumentException.class, () -> chart(six, true));
    }

    @Test
    void refusesABandOfOtherLengthThanItsLine() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new YearLine("x", List.of(1.0, 2.0), List.of(1.0), List.of(1.0), OptionalDouble.empty()));
    }

    @Test
    void carriesTitleAndDescriptionAndKeepsMarkupInNamesAsText() {
        YearChart chart = new YearChart(
                "x",
                "a <b> title",
                "what & why",
                "mm",
                List.of(YearLine.of("<script>", wave(0.1))),
                List.of(),
                List.of(),
                Optional.of(new ZeroLine("flush", "shy", "proud")),
                1,
                BenchStyle.ENGLISH);
        Document svg = parse(chart.svg(SheetFormat.NARROW));
        assertEquals("a <b> title", svg.selectFirst("title").text());
        assertEquals("what & why", svg.selectFirst("desc").text());
        assertTrue(svg.select("script").isEmpty());
        assertTrue(svg.select("text").text().contains("<script>"));
    }

    @Test
    void givesEqualBytesWhateverTheLocaleAndTimeZone() {
        String before = chart(List.of(YearLine.of("walnut", wave(0.1))), true).fileSvg();
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            assertEquals(
                    before,
                    chart(List.of(YearLine.of("walnut", wave(0.1))), true).fileSvg());
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    private static YearChart chart(List<YearLine> lines, boolean zero) {
        List<LimitMark> limits = List.of(new LimitMark("seasonal 0.12", -0.12), new LimitMark("retouch 0.25", -0.25));
        return new YearChart(
                "x",
                "title",
                "description",
                "mm a side",
                lines,
                List.of(-0.02, 0.0, 0.02),
                limits,
                zero ? Optional.of(new ZeroLine("flush", "shy", "proud")) : Optional.empty(),
                1,
                BenchStyle.ENGLISH);
    }

    private static List<Double> wave(double depth) {
        return IntStream.range(0, 365)
                .mapToObj(day -> -depth * (0.6 + 0.4 * Math.cos(2 * Math.PI * day / 365)))
                .toList();
    }

    static Document parse(String svg) {
        return Jsoup.parse(svg, Parser.xmlParser());
    }

    /** The longest path of an ink: the line itself, not its key. */
    static Element line(Document svg, Ink ink) {
        return svg.select("g path[stroke]." + ink.cssClass()).stream()
                .max((a, b) -> Integer.compare(a.attr("d").length(), b.attr("d").length()))
                .orElseThrow();
    }

    static double[][] points(Element path) {
        return java.util.regex.Pattern.compile("(-?[0-9.]+) (-?[0-9.]+)")
                .matcher(path.attr("d"))
                .results()
                .map(found -> new double[] {Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))})
                .toArray(double[][]::new);
    }

    private static double highestTick(Document svg) {
        return tick(svg, true);
    }

    private static double lowestTick(Document svg) {
        return tick(svg, false);
    }

    /** The label at the upper or lower end of the upright axis, as a size without sign; "flush" is 0. */
    private static double tick(Document svg, boolean upper) {
        List<Element> labels = svg.select("text[text-anchor=end].ink-muted");
        Element end = labels.stream()
                .min((a, b) -> (upper ? 1 : -1)
                        * Double.compare(Double.parseDouble(a.attr("y")), Double.parseDouble(b.attr("y"))))
                .orElseThrow();
        return end.text().equals("flush") ? 0 : Double.parseDouble(end.text());
    }
}
