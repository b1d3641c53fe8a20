package hafthold.report.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import org.knowm.xchart.style.markers.Marker;

/** Marks that XChart does not have. */
final class EndMark {
    private static final BasicStroke FINE = HouseStyle.solid(1.4);

    private EndMark() {}

    /** A short upright bar: the end of a range. */
    static Marker upright() {
        return new Marker() {
            @Override
            public void paint(Graphics2D g, double x, double y, int size) {
                g.setStroke(FINE);
                g.draw(new Line2D.Double(x, y - size * 0.5, x, y + size * 0.5));
            }
        };
    }

    /** An open diamond. */
    static Marker openDiamond() {
        return new Marker() {
            @Override
            public void paint(Graphics2D g, double x, double y, int size) {
                double r = size * 0.62;
                Path2D.Double diamond = new Path2D.Double();
                diamond.moveTo(x - r, y);
                diamond.lineTo(x, y - r);
                diamond.lineTo(x + r, y);
                diamond.lineTo(x, y + r);
                diamond.closePath();
                g.setStroke(FINE);
                g.draw(diamond);
            }
        };
    }
}
