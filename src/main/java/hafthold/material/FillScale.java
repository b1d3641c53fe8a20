package hafthold.material;

import hafthold.quantity.Band;
import java.util.Comparator;
import java.util.List;

/**
 * What is known of resin in lumens, whatever the wood.
 *
 * @param resinDensity kg/m3
 * @param points how fast wood drinks by how far it is filled, least filled first
 */
public record FillScale(Band resinDensity, List<Point> points) {

    /** Puts the points in order. */
    public FillScale {
        points = points.stream()
                .sorted(Comparator.comparingDouble(Point::filledFraction))
                .toList();
    }

    /**
     * One filling.
     *
     * @param filledFraction share of the lumens that holds resin
     * @param uptakeRatio early rate of water uptake over that of the plain wood
     */
    public record Point(double filledFraction, double uptakeRatio) {}

    /** Early rate of uptake over that of plain wood, on straight lines from 1 where nothing is filled. */
    public double uptakeRatio(double filledFraction) {
        Point below = new Point(0, 1);
        for (Point above : points) {
            if (filledFraction <= above.filledFraction()) {
                double share =
                        (filledFraction - below.filledFraction()) / (above.filledFraction() - below.filledFraction());
                return (1 - share) * below.uptakeRatio() + share * above.uptakeRatio();
            }
            below = above;
        }
        return below.uptakeRatio();
    }
}
