package hafthold.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * How every picture of ours is drawn: XChart places and draws the data on a bare plot; words are set round it as text
 * by {@link SvgSheet}, so that they can be read aloud, searched and recoloured, and no installed font changes a byte.
 */
final class HouseStyle {
    static {
        System.setProperty("java.awt.headless", "true");
    }

    /** Lines a picture may hold; more cannot be told apart. */
    static final int MOST_LINES = 5;

    /** Width of markers in user units. */
    static final int MARKER_SIZE = 7;

    /** No line at all, for series that are only markers. */
    static final BasicStroke NO_LINE = new BasicStroke(0.0001f);

    private static final List<float[]> DASHES = List.of(
            new float[0], new float[] {7, 3}, new float[] {2, 2.5f}, new float[] {9, 3, 2, 3}, new float[] {15, 4});
    private static final List<Marker> MARKERS = List.of(
            SeriesMarkers.CIRCLE,
            SeriesMarkers.SQUARE,
            SeriesMarkers.TRIANGLE_UP,
            SeriesMarkers.DIAMOND,
            SeriesMarkers.TRIANGLE_DOWN);
    private static final Color CLEAR = new Color(255, 255, 255, 0);

    private HouseStyle() {}

    /** A plot without axes, words or background that fills its whole area from one end of both spans to the other. */
    static XYChart barePlot(int width, int height, Span x, Span y) {
        XYChart chart = new XYChart(width, height);
        XYStyler styler = chart.getStyler();
        styler.setLocale(Locale.ROOT);
        styler.setBaseFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
        styler.setDecimalPattern("0.###");
        styler.setChartTitleVisible(false);
        styler.setLegendVisible(false);
        styler.setAxisTitlesVisible(false);
        styler.setAxisTicksVisible(false);
        styler.setPlotGridLinesVisible(false);
        styler.setPlotTicksMarksVisible(false);
        styler.setPlotBorderVisible(false);
        styler.setChartPadding(0);
        styler.setPlotMargin(0);
        styler.setPlotContentSize(1);
        styler.setMarkerSize(MARKER_SIZE);
        styler.setChartBackgroundColor(CLEAR);
        styler.setPlotBackgroundColor(CLEAR);
        styler.setXAxisMin(x.lowest());
        styler.setXAxisMax(x.highest());
        styler.setYAxisMin(y.lowest());
        styler.setYAxisMax(y.highest());
        return chart;
    }

    /** Adds separate strokes: two points each, as (x1, y1, x2, y2). */
    static void strokes(XYChart chart, String name, Ink ink, BasicStroke stroke, List<double[]> strokes) {
        if (strokes.isEmpty()) {
            return;
        }
        double[] x = new double[3 * strokes.size()];
        double[] y = new double[3 * strokes.size()];
        for (int i = 0; i < strokes.size(); i++) {
            double[] ends = strokes.get(i);
            x[3 * i] = ends[0];
            y[3 * i] = ends[1];
            x[3 * i + 1] = ends[2];
            y[3 * i + 1] = ends[3];
            x[3 * i + 2] = ends[2];
            y[3 * i + 2] = Double.NaN;
        }
        style(chart.addSeries(name, x, y), ink, stroke, SeriesMarkers.NONE);
    }

    /** Adds a line through points. */
    static void line(XYChart chart, String name, Ink ink, BasicStroke stroke, double[] x, double[] y) {
        style(chart.addSeries(name, x, y), ink, stroke, SeriesMarkers.NONE);
    }

    /** Adds marks only. */
    static void marks(XYChart chart, String name, Ink ink, Marker marker, List<double[]> points) {
        if (points.isEmpty()) {
            return;
        }
        double[] x = points.stream().mapToDouble(point -> point[0]).toArray();
        double[] y = points.stream().mapToDouble(point -> point[1]).toArray();
        XYSeries series = chart.addSeries(name, x, y);
        style(series, ink, NO_LINE, marker);
        series.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
    }

    /** Adds an area between two lines over the same x. */
    static void area(XYChart chart, String name, Ink ink, double[] x, double[] low, double[] high) {
        int n = x.length;
        double[] aroundX = new double[2 * n];
        double[] aroundY = new double[2 * n];
        for (int i = 0; i < n; i++) {
            aroundX[i] = x[i];
            aroundY[i] = high[i];
            aroundX[2 * n - 1 - i] = x[i];
            aroundY[2 * n - 1 - i] = low[i];
        }
        XYSeries series = chart.addSeries(name, aroundX, aroundY);
        style(series, ink, NO_LINE, SeriesMarkers.NONE);
        series.setLineColor(CLEAR);
        series.setFillColor(ink.color(44));
        series.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
    }

    /** A solid stroke with square ends. */
    static BasicStroke solid(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    /** A dashed stroke. */
    static BasicStroke dashed(double width, float... dash) {
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    /** Stroke of the n-th line of a picture, counted from 0: each has its own dash, to be told apart in grey. */
    static BasicStroke ofLine(int order) {
        float[] dash = DASHES.get(order);
        return dash.length == 0 ? solid(2.2) : dashed(2.2, dash);
    }

    /** Marker of the n-th line. */
    static Marker markerOf(int order) {
        return MARKERS.get(order);
    }

    private static void style(XYSeries series, Ink ink, BasicStroke stroke, Marker marker) {
        series.setLineStyle(stroke);
        series.setLineColor(ink.color());
        series.setFillColor(ink.color());
        series.setMarker(marker);
        series.setMarkerColor(ink.color());
        series.setXYSeriesRenderStyle(XYSeriesRenderStyle.Line);
    }
}
