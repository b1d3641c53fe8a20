package hafthold.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.report.BenchStyle;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

class EdgeSketchTest {
    private static final double FLUSH = 52;

    @Test
    void drawsAShyScaleBelowTheTangAndAProudOneAbove() {
        assertEquals(
                FLUSH + 10,
                highestOf(new EdgeSketch("x", "t", -0.1, "0.1 mm shy", false, 100, BenchStyle.ENGLISH)),
                0.05);
        assertEquals(
                FLUSH - 10,
                highestOf(new EdgeSketch("x", "t", 0.1, "0.1 mm proud", false, 100, BenchStyle.ENGLISH)),
                0.05);
    }

    @Test
    void holdsAGluedScaleAtTheTang() {
        double[][] outline = scale(new EdgeSketch("x", "t", -0.1, "0.1 mm shy", true, 100, BenchStyle.ENGLISH));
        assertEquals(FLUSH, outline[0][1], 0.05);
        assertEquals(FLUSH + 10, outline[3][1], 0.05);
    }

    @Test
    void neverDrawsAStepOutOfTheSketch() {
        assertTrue(highestOf(new EdgeSketch("x", "t", 50, "50 mm proud", false, 100, BenchStyle.ENGLISH)) > 0);
    }

    @Test
    void tellsHowMuchTooTallItIs() {
        // A scale of 8 mm is drawn 62 units wide, 7.75 a millimetre.
        assertEquals(20, EdgeSketch.exaggeration(155));
    }

    private static double highestOf(EdgeSketch sketch) {
        double highest = Double.MAX_VALUE;
        for (double[] point : scale(sketch)) {
            highest = Math.min(highest, point[1]);
        }
        return highest;
    }

    private static double[][] scale(EdgeSketch sketch) {
        Element scale = YearChartTest.parse(sketch.svg()).selectFirst("path.ink-scale");
        return YearChartTest.points(scale);
    }
}
