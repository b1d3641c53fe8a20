package hafthold.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.report.BenchStyle;
import hafthold.simulate.SectionPose;
import java.util.Arrays;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SectionDrawingTest {
    /** Half of the last digit a coordinate is written with. */
    private static final double HALF_DIGIT = 0.05;

    private static final SectionPose DRY = pose(-1);
    private static final SectionPose WET = pose(0.3);

    @ParameterizedTest
    @EnumSource(SheetFormat.class)
    void drawsTheTangToScale(SheetFormat format) {
        double[][] tang = corners(parse(drawing(DRY, WET), format).selectFirst("path.ink-steel"));
        assertEquals(26 / 4.0, height(tang) / width(tang), 0.03, "26 mm wide, 4 mm thick");
    }

    @Test
    void movesTheOuterCornerAsFarAsItSays() {
        SectionDrawing drawing = drawing(DRY, WET);
        Document svg = parse(drawing, SheetFormat.WIDE);
        double[][] tang = corners(svg.selectFirst("path.ink-steel"));
        double unitsPerMillimetre = height(tang) / 26;
        double flush =
                Arrays.stream(tang).mapToDouble(corner -> corner[1]).min().orElseThrow();
        double[][] scale = YearChartTest.points(svg.selectFirst("path.ink-scale"));
        double[] outer = Arrays.stream(scale)
                .min((a, b) -> Double.compare(a[0] + a[1] / 1000, b[0] + b[1] / 1000))
                .orElseThrow();
        assertEquals(10, drawing.exaggeration());
        assertEquals(0.22 * 10 * unitsPerMillimetre, outer[1] - flush, 3 * HALF_DIGIT);
        assertTrue(svg.text().contains("movement is drawn 10 times as large"));
    }

    @Test
    void dimensionsEveryStepInMillimetres() {
        String words = parse(drawing(DRY, WET), SheetFormat.WIDE).select("text").text();
        for (String number : List.of("0.22", "0.16", "0.07", "0.26")) {
            assertTrue(words.contains(number), number);
        }
        assertTrue(words.contains("face in 0.15"), words);
        assertTrue(words.contains("if not glued"));
    }

    @Test
    void dimensionsBothScalesOfAnOddPair() {
        SectionPanel panel = new SectionPanel("Lowest", DRY, WET);
        SectionDrawing drawing =
                new SectionDrawing("x", "t", "d", List.of(panel), "left", "right", "tang", BenchStyle.ENGLISH);
        List<String> words = parse(drawing, SheetFormat.WIDE).select("text").eachText();
        assertEquals(2, words.stream().filter("half way"::equals).count());
        assertTrue(words.contains("0.16") && words.contains("0.05"), words.toString());
        assertFalse(words.contains("if not glued"));
    }

    @Test
    void showsNothingWhereNothingMoves() {
        SectionDrawing drawing = drawing(pose(-0.01), pose(0.005));
        assertEquals(20, drawing.exaggeration());
        Document svg = parse(drawing, SheetFormat.WIDE);
        double[][] tang = corners(svg.selectFirst("path.ink-steel"));
        double[][] scale = YearChartTest.points(svg.selectFirst("path.ink-scale"));
        assertEquals(height(tang), height(scale), 1.0);
        assertEquals(
                10,
                svg.select("text[font-weight]").eachText().stream()
                        .filter("0"::equals)
                        .count(),
                "four numbers at the edge and one at the face, twice");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-3, -1, -0.1, 0, 0.3, 1, 2})
    void letsNoWordsRunOverTheEdgesOrOverEachOther(double movement) {
        for (SheetFormat format : SheetFormat.values()) {
            List<Element> texts =
                    parse(drawing(pose(movement), pose(-movement)), format).select("text");
            for (int i = 0; i < texts.size(); i++) {
                Element text = texts.get(i);
                double[] span = span(format, text);
                assertTrue(span[0] >= -1 && span[1] <= format.width() + 1, format + ": " + text.text());
                for (Element other : texts.subList(0, i)) {
                    double[] others = span(format, other);
                    boolean sameLine = Math.abs(y(text) - y(other)) < 4;
                    boolean covers = span[0] + 4 < others[1] && others[0] + 4 < span[1];
                    assertFalse(sameLine && covers, text.text() + " over " + other.text());
                }
            }
        }
    }

    @Test
    void takesHandlesOfAnySize() {
        for (double halfWidth : new double[] {0.0025, 0.045}) {
            for (double thickness : new double[] {0.0008, 0.04}) {
                SectionPose pose =
                        new SectionPose(0, halfWidth, 0.0005, 0.0001, thickness, 0, 1e-5, 2e-5, 3e-5, 4e-5, 1e-5, 1e-5);
                Document svg = parse(drawing(pose, pose), SheetFormat.NARROW);
                assertEquals(
                        SheetFormat.NARROW.width(),
                        Integer.parseInt(svg.selectFirst("svg").attr("width")));
                assertFalse(svg.html().contains("NaN"));
            }
        }
    }

    @Test
    void refusesNoMoments() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new SectionDrawing("x", "t", "d", List.of(), "left", "right", "tang", BenchStyle.ENGLISH));
    }

    private static SectionDrawing drawing(SectionPose dry, SectionPose wet) {
        return new SectionDrawing(
                "x",
                "title",
                "description",
                List.of(
                        new SectionPanel("Lowest, 1 January", dry, dry),
                        new SectionPanel("Highest, 23 July", wet, wet)),
                "scale 8 mm",
                "scale 8 mm",
                "tang 4 mm, glue 0.1 mm",
                BenchStyle.ENGLISH);
    }

    private static SectionPose pose(double share) {
        return new SectionPose(
                0,
                0.013,
                0.004,
                0.0001,
                0.008,
                share * 0.02e-3,
                share * 0.07e-3,
                share * 0.16e-3,
                share * 0.22e-3,
                share * 0.26e-3,
                share * 0.15e-3,
                share * 0.09e-3);
    }

    private static Document parse(SectionDrawing drawing, SheetFormat format) {
        return YearChartTest.parse(drawing.svg(format));
    }

    /** Corners of a shape of one move, then H and V. */
    private static double[][] corners(Element path) {
        double[] numbers = java.util.regex.Pattern.compile("-?[0-9.]+")
                .matcher(path.attr("d"))
                .results()
                .mapToDouble(found -> Double.parseDouble(found.group()))
                .toArray();
        return new double[][] {
            {numbers[0], numbers[1]}, {numbers[2], numbers[1]}, {numbers[2], numbers[3]}, {numbers[4], numbers[3]}
        };
    }

    private static double width(double[][] points) {
        return spread(points, 0);
    }

    private static double height(double[][] points) {
        return spread(points, 1);
    }

    private static double spread(double[][] points, int axis) {
        double low =
                Arrays.stream(points).mapToDouble(point -> point[axis]).min().orElseThrow();
        double high =
                Arrays.stream(points).mapToDouble(point -> point[axis]).max().orElseThrow();
        return high - low;
    }

    private static double[] span(SheetFormat format, Element text) {
        double width = format.widthOf(text.text());
        double x = Double.parseDouble(text.attr("x"));
        double start = text.attr("text-anchor").equals("start")
                ? x
                : text.attr("text-anchor").equals("end") ? x - width : x - width / 2;
        return new double[] {start, start + width};
    }

    private static double y(Element text) {
        return Double.parseDouble(text.attr("y"));
    }
}
