package hafthold.simulate;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The moisture of one part on some days under any doubt, put together day by day: the weather that a day had behind it need
 * not be that of another.
 *
 * @param days moisture of the days in order, of each by itself or of several that are put together alike
 */
record DatedMoisture(List<DoubtedMoisture> days) {

    /** Keeps its own copy. */
    DatedMoisture {
        days = List.copyOf(days);
    }

    /** A course that no doubt changes. */
    static DatedMoisture certain(LayeredCourse course) {
        return new DatedMoisture(List.of(DoubtedMoisture.certain(course)));
    }

    /** The days under a doubt. */
    LayeredCourse course(Doubt doubt) {
        List<LayeredCourse> courses =
                days.stream().map(day -> day.course(doubt)).toList();
        double[][] layer = IntStream.range(0, courses.get(0).layer().length)
                .mapToObj(k -> joined(courses, course -> course.layer()[k]))
                .toArray(double[][]::new);
        return new LayeredCourse(
                layer,
                new MoistureCourse(
                        joined(courses, course -> course.mean().hourly()),
                        joined(courses, course -> course.mean().moment())));
    }

    private static double[] joined(List<LayeredCourse> courses, Function<LayeredCourse, double[]> series) {
        return courses.stream()
                .flatMapToDouble(course -> DoubleStream.of(series.apply(course)))
                .toArray();
    }

    /** One of the days of a course. */
    static LayeredCourse day(LayeredCourse course, int number) {
        return new LayeredCourse(
                Arrays.stream(course.layer())
                        .map(layer -> new double[] {layer[number]})
                        .toArray(double[][]::new),
                new MoistureCourse(
                        new double[] {course.mean().hourly()[number]},
                        new double[] {course.mean().moment()[number]}));
    }
}
