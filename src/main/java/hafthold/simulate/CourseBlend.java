package hafthold.simulate;

import java.util.ArrayList;
import java.util.List;

/** A year of moisture that was not computed, put together from some that were. */
final class CourseBlend {
    private static final double NO_SEASONS = 1e-4;

    private final List<Part> parts = new ArrayList<>();

    /** A computed year and its weight. */
    private record Part(double weight, LayeredCourse course) {}

    void add(double weight, LayeredCourse course) {
        parts.add(new Part(weight, course));
    }

    /**
     * The year put together.
     *
     * @param factor multiplies all moisture
     * @param shift added all year round before that, kg/kg
     * @param drySeason added at the driest, kg/kg at rest
     * @param dampSeason added at the dampest, kg/kg at rest
     * @param seasons from the driest to the dampest season at rest, kg/kg
     */
    LayeredCourse course(double factor, double shift, double drySeason, double dampSeason, double seasons) {
        int layers = parts.get(0).course().layer().length;
        double[][] layer = new double[layers][];
        for (int k = 0; k < layers; k++) {
            int index = k;
            double[] blended = new double[parts.get(0).course().layer()[k].length];
            parts.forEach(part -> add(blended, part.weight(), part.course().layer()[index]));
            layer[k] = changed(blended, factor, shift, drySeason, dampSeason, seasons);
        }
        double[] mean = new double[parts.get(0).course().mean().hours()];
        parts.forEach(part -> add(mean, part.weight(), part.course().mean().hourly()));
        double[] moment = new double[mean.length];
        parts.forEach(part -> add(moment, part.weight(), part.course().mean().moment()));
        for (int i = 0; i < moment.length; i++) {
            moment[i] *= factor;
        }
        return new LayeredCourse(
                layer, new MoistureCourse(changed(mean, factor, shift, drySeason, dampSeason, seasons), moment));
    }

    private static void add(double[] sum, double weight, double[] course) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += weight * course[i];
        }
    }

    /** Stretches and shifts a course in place. */
    private static double[] changed(
            double[] course, double factor, double shift, double drySeason, double dampSeason, double seasons) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double fraction : course) {
            least = Math.min(least, fraction);
            most = Math.max(most, fraction);
        }
        double swing = most - least;
        double follows = seasons > NO_SEASONS ? Math.min(1, swing / seasons) : 1;
        double dry = follows * drySeason;
        double perSwing = swing > 0 ? follows * (dampSeason - drySeason) / swing : 0;
        for (int i = 0; i < course.length; i++) {
            double season = dry + perSwing * (course[i] - least);
            course[i] = Math.max(0, factor * (course[i] + season + shift));
        }
        return course;
    }
}
