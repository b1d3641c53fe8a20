package hafthold.simulate;

import java.util.Arrays;
import java.util.function.Function;
import java.util.function.IntFunction;

/**
 * The moisture of one part under any doubt: a few courses that were computed, one of them with everything at its value, and
 * how any other is put together from them.
 */
final class DoubtedMoisture {
    private final int size;
    private final int value;
    private final IntFunction<LayeredCourse> compute;
    /** Those asked for so far; two threads may compute the same one, and it is the same. */
    private final LayeredCourse[] computed;

    private final Reading reading;

    /** How a course is put together. */
    interface Reading {
        /** Weight of each computed course; may be longer than there are courses. */
        double[] weights(Doubt doubt);

        /** What happens to their sum. */
        CourseChange change(Doubt doubt);
    }

    /**
     * Courses that are computed when they are asked for.
     *
     * @param size how many there are
     * @param value number of the one with everything at its value
     * @param compute the course of a number from 0; the same answer each time
     */
    DoubtedMoisture(int size, int value, IntFunction<LayeredCourse> compute, Reading reading) {
        this.size = size;
        this.value = value;
        this.compute = compute;
        this.computed = new LayeredCourse[size];
        this.reading = reading;
    }

    /** A course that no doubt changes. */
    static DoubtedMoisture certain(LayeredCourse course) {
        return new DoubtedMoisture(1, 0, any -> course, new Reading() {
            @Override
            public double[] weights(Doubt doubt) {
                return new double[] {1};
            }

            @Override
            public CourseChange change(Doubt doubt) {
                return CourseChange.NONE;
            }
        });
    }

    /** Number of computed courses. */
    int size() {
        return size;
    }

    /** A computed course. */
    LayeredCourse computed(int number) {
        LayeredCourse known = computed[number];
        if (known == null) {
            known = compute.apply(number);
            computed[number] = known;
        }
        return known;
    }

    /** The course with everything at its value. */
    LayeredCourse value() {
        return computed(value);
    }

    /** The course under a doubt. */
    LayeredCourse course(Doubt doubt) {
        if (doubt.isNone()) {
            return value();
        }
        double[] weights = reading.weights(doubt);
        CourseChange change = reading.change(doubt);
        int layers = value().layer().length;
        double[][] layer = new double[layers][];
        for (int k = 0; k < layers; k++) {
            int index = k;
            layer[k] = sum(weights, course -> course.layer()[index]);
            change.applyTo(layer[k]);
        }
        double[] mean = sum(weights, course -> course.mean().hourly());
        change.applyTo(mean);
        double[] moment = sum(weights, course -> course.mean().moment());
        change.applyToMoment(moment);
        return new LayeredCourse(layer, new MoistureCourse(mean, moment));
    }

    private double[] sum(double[] weights, Function<LayeredCourse, double[]> series) {
        double[] sum = new double[value().mean().hours()];
        for (int number = 0; number < size; number++) {
            if (weights[number] != 0) {
                add(sum, weights[number], series.apply(computed(number)));
            }
        }
        return sum;
    }

    private static void add(double[] sum, double weight, double[] course) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += weight * course[i];
        }
    }

    /** The same of each course with its series taken otherwise, such as at some samples only; all are computed for it. */
    DoubtedMoisture mapped(Function<double[], double[]> series) {
        LayeredCourse[] courses = new LayeredCourse[size];
        for (int number = 0; number < size; number++) {
            LayeredCourse course = computed(number);
            courses[number] = new LayeredCourse(
                    Arrays.stream(course.layer()).map(series).toArray(double[][]::new),
                    new MoistureCourse(
                            series.apply(course.mean().hourly()),
                            series.apply(course.mean().moment())));
        }
        return new DoubtedMoisture(size, value, number -> courses[number], reading);
    }
}
