package hafthold.report.chart;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.intermediate.commands.AffineTransformCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.Command;
import de.erichseifert.vectorgraphics2d.intermediate.commands.DrawShapeCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.FillShapeCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.SetColorCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.SetPaintCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.SetStrokeCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.SetTransformCommand;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.style.markers.Marker;

/**
 * Traces what XChart paints into SVG paths. XChart draws a line as hundreds of single strokes; they are joined again
 * here, or dashes would start afresh at every day and the file would grow tenfold.
 */
final class PlotTrace {
    private final StringBuilder svg = new StringBuilder();
    private final StringBuilder openPath = new StringBuilder();
    private Color color = Color.BLACK;
    private BasicStroke stroke = new BasicStroke(1);
    private AffineTransform transform = new AffineTransform();
    private Point2D openEnd = new Point2D.Double(Double.NaN, Double.NaN);

    private PlotTrace() {}

    /** The paths of a chart in its own coordinates. */
    static String of(XYChart chart) {
        VectorGraphics2D recorder = new VectorGraphics2D();
        chart.paint(recorder, chart.getWidth(), chart.getHeight());
        return of(recorder);
    }

    /** The path of one marker. */
    static String of(Marker marker, Ink ink, double x, double y) {
        VectorGraphics2D recorder = new VectorGraphics2D();
        recorder.setColor(ink.color());
        marker.paint(recorder, x, y, HouseStyle.MARKER_SIZE);
        return of(recorder);
    }

    private static String of(VectorGraphics2D recorder) {
        PlotTrace trace = new PlotTrace();
        for (Command<?> command : recorder.getCommands()) {
            trace.follow(command);
        }
        trace.close();
        return trace.svg.toString();
    }

    private void follow(Command<?> command) {
        if (command instanceof DrawShapeCommand draw) {
            draw(transform.createTransformedShape(draw.getValue()), draw.getValue() instanceof Line2D);
        } else if (command instanceof FillShapeCommand fill) {
            fill(transform.createTransformedShape(fill.getValue()));
        } else if (command instanceof SetColorCommand set) {
            switchTo(set.getValue(), stroke);
        } else if (command instanceof SetPaintCommand set && set.getValue() instanceof Color paint) {
            switchTo(paint, stroke);
        } else if (command instanceof SetStrokeCommand set && set.getValue() instanceof BasicStroke other) {
            switchTo(color, other);
        } else if (command instanceof SetTransformCommand set) {
            transform = new AffineTransform(set.getValue());
        } else if (command instanceof AffineTransformCommand change) {
            transform.concatenate(change.getValue());
        }
    }

    private void switchTo(Color newColor, BasicStroke newStroke) {
        if (!newColor.equals(color) || !newStroke.equals(stroke)) {
            close();
            color = newColor;
            stroke = newStroke;
        }
    }

    private void draw(Shape shape, boolean isSingleStroke) {
        if (color.getAlpha() == 0 || stroke.getLineWidth() < 0.01f) {
            return;
        }
        if (isSingleStroke) {
            PathIterator ends = shape.getPathIterator(null);
            double[] at = new double[6];
            ends.currentSegment(at);
            Point2D start = new Point2D.Double(at[0], at[1]);
            ends.next();
            ends.currentSegment(at);
            if (!start.equals(openEnd)) {
                openPath.append('M').append(point(start.getX(), start.getY()));
            }
            openPath.append('L').append(point(at[0], at[1]));
            openEnd = new Point2D.Double(at[0], at[1]);
        } else {
            openPath.append(pathData(shape));
            openEnd = new Point2D.Double(Double.NaN, Double.NaN);
        }
    }

    private void fill(Shape shape) {
        close();
        if (color.getAlpha() > 0) {
            svg.append("<path d=\"").append(pathData(shape)).append('"').append(SvgSheet.colour(inkOf(color), "fill"));
            if (color.getAlpha() < 255) {
                svg.append(" fill-opacity=\"")
                        .append(SvgSheet.number(color.getAlpha() / 255.0))
                        .append('"');
            }
            svg.append("/>\n");
        }
    }

    private void close() {
        if (openPath.length() > 0) {
            svg.append("<path fill=\"none\" d=\"")
                    .append(openPath)
                    .append('"')
                    .append(SvgSheet.colour(inkOf(color), "stroke"))
                    .append(SvgSheet.stroke(stroke))
                    .append("/>\n");
            openPath.setLength(0);
            openEnd = new Point2D.Double(Double.NaN, Double.NaN);
        }
    }

    private static Ink inkOf(Color color) {
        return Ink.of(color).orElseThrow(() -> new IllegalStateException("no ink has the colour " + color));
    }

    private static String pathData(Shape shape) {
        StringBuilder data = new StringBuilder();
        double[] at = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            switch (i.currentSegment(at)) {
                case PathIterator.SEG_MOVETO -> data.append('M').append(point(at[0], at[1]));
                case PathIterator.SEG_LINETO -> data.append('L').append(point(at[0], at[1]));
                case PathIterator.SEG_QUADTO ->
                    data.append('Q').append(point(at[0], at[1])).append(' ').append(point(at[2], at[3]));
                case PathIterator.SEG_CUBICTO ->
                    data.append('C')
                            .append(point(at[0], at[1]))
                            .append(' ')
                            .append(point(at[2], at[3]))
                            .append(' ')
                            .append(point(at[4], at[5]));
                default -> data.append('Z');
            }
        }
        return data.toString();
    }

    private static String point(double x, double y) {
        return SvgSheet.number(x) + " " + SvgSheet.number(y);
    }
}
