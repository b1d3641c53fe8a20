package hafthold.simulate;

import java.util.BitSet;
import java.util.List;

/**
 * The few samples of a year at which a movement is, to about a fiftieth, at its worst, whatever the doubt.
 *
 * <p>Every movement is a sum of the mean moisture, its first moment and the temperature, each times a number that the doubt
 * decides. Such a sum is largest at a corner of the cloud of points (mean, moment, temperature) of the year. Kept are the
 * samples at which the cloud of each computed course, and of some between, reaches furthest in 26 directions: along each
 * axis, between each two and between all three, every axis by its own range. What is lost that way stands in accuracy.md
 * and is held by a test.
 */
final class TellingSamples {
    /** Along each axis, between each two and between all three; each is also looked along the other way. */
    private static final double[][] DIRECTIONS = {
        {1, 0, 0},
        {0, 1, 0},
        {0, 0, 1},
        {1, 1, 0},
        {1, -1, 0},
        {1, 0, 1},
        {1, 0, -1},
        {0, 1, 1},
        {0, 1, -1},
        {1, 1, 1},
        {1, 1, -1},
        {1, -1, 1},
        {1, -1, -1}
    };

    /** Courses that are read between computed ones: theirs is another hour. */
    private static final List<Doubt> BETWEEN =
            List.of(Doubt.alone(Input.DIFFUSIVITY, -0.5), Doubt.alone(Input.DIFFUSIVITY, 0.5));

    private final double[] warmer;
    private final BitSet kept = new BitSet();

    private TellingSamples(double[] warmer) {
        this.warmer = byRange(warmer);
    }

    /**
     * Numbers of the samples, ascending.
     *
     * @param parts moisture of each part
     * @param warmer temperature above that at finish, K, by sample
     */
    static int[] of(List<DoubtedMoisture> parts, double[] warmer) {
        TellingSamples telling = new TellingSamples(warmer);
        for (DoubtedMoisture part : parts) {
            for (int number = 0; number < part.size(); number++) {
                telling.add(part.computed(number).mean());
            }
            for (Doubt between : BETWEEN) {
                telling.add(part.course(between).mean());
            }
        }
        return telling.kept.stream().toArray();
    }

    private void add(MoistureCourse course) {
        double[] mean = byRange(course.hourly());
        double[] moment = byRange(course.moment());
        for (double[] direction : DIRECTIONS) {
            keepEnds(direction[0], mean, direction[1], moment, direction[2]);
        }
    }

    private void keepEnds(double ofMean, double[] mean, double ofMoment, double[] moment, double ofWarmer) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        int leastAt = 0;
        int mostAt = 0;
        for (int i = 0; i < warmer.length; i++) {
            double reach = ofMean * mean[i] + ofMoment * moment[i] + ofWarmer * warmer[i];
            if (reach < least) {
                least = reach;
                leastAt = i;
            }
            if (reach > most) {
                most = reach;
                mostAt = i;
            }
        }
        kept.set(leastAt);
        kept.set(mostAt);
    }

    /** A series in parts of its own range; one that stands still is 0. */
    private static double[] byRange(double[] series) {
        Swing swing = Swing.of(series);
        double range = swing.most() - swing.least();
        double perRange = range > 0 ? 1 / range : 0;
        double[] parts = new double[series.length];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = perRange * series[i];
        }
        return parts;
    }
}
