package hafthold.simulate;

import java.util.Arrays;
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
    private static final int DIRECTIONS = 13;

    /** Courses that are read between computed ones: theirs is another hour. */
    private static final List<Doubt> BETWEEN =
            List.of(Doubt.alone(Input.DIFFUSIVITY, -0.5), Doubt.alone(Input.DIFFUSIVITY, 0.5));

    private final double[] furthest = new double[2 * DIRECTIONS];
    private final int[] where = new int[2 * DIRECTIONS];
    private final BitSet kept = new BitSet();

    private TellingSamples() {}

    /**
     * Numbers of the samples, ascending.
     *
     * @param parts moisture of each part
     * @param warmer temperature above that at finish, K, by sample
     */
    static int[] of(List<DoubtedMoisture> parts, double[] warmer) {
        TellingSamples telling = new TellingSamples();
        double perKelvin = perRange(warmer);
        for (DoubtedMoisture part : parts) {
            for (int number = 0; number < part.size(); number++) {
                telling.add(part.computed(number).mean(), warmer, perKelvin);
            }
            for (Doubt between : BETWEEN) {
                telling.add(part.course(between).mean(), warmer, perKelvin);
            }
        }
        return telling.kept.stream().toArray();
    }

    private void add(MoistureCourse course, double[] warmer, double perKelvin) {
        double[] mean = course.hourly();
        double[] moment = course.moment();
        double perMean = perRange(mean);
        double perMoment = perRange(moment);
        Arrays.fill(furthest, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < warmer.length; i++) {
            double a = perMean * mean[i];
            double b = perMoment * moment[i];
            double c = perKelvin * warmer[i];
            see(0, a, i);
            see(1, b, i);
            see(2, c, i);
            see(3, a + b, i);
            see(4, a - b, i);
            see(5, a + c, i);
            see(6, a - c, i);
            see(7, b + c, i);
            see(8, b - c, i);
            see(9, a + b + c, i);
            see(10, a + b - c, i);
            see(11, a - b + c, i);
            see(12, a - b - c, i);
        }
        for (int sample : where) {
            kept.set(sample);
        }
    }

    private void see(int direction, double reach, int sample) {
        if (reach > furthest[direction]) {
            furthest[direction] = reach;
            where[direction] = sample;
        }
        if (-reach > furthest[DIRECTIONS + direction]) {
            furthest[DIRECTIONS + direction] = -reach;
            where[DIRECTIONS + direction] = sample;
        }
    }

    /** One over the range of a series, 0 for one that stands still. */
    private static double perRange(double[] series) {
        Swing swing = Swing.of(series);
        double range = swing.most() - swing.least();
        return range > 0 ? 1 / range : 0;
    }
}
