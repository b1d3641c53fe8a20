package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What would strain a scale and its liners if nothing held them, hour by hour since a moment of the work.
 *
 * @param knife whose scale it is
 * @param scale motion of each part of the scale
 * @param liners motion of each liner, from the tang outwards
 * @param series what {@link SectionDrive} takes: moisture change of each layer of each part, of each liner, and warming
 * @param closed whether the last hour is followed by the first; else nothing was strained before the first
 */
record FreeStrains(
        FullTangKnife knife, List<PartMotion> scale, List<PartMotion> liners, double[][] series, boolean closed) {
    private static final int HOURS_A_DAY = 24;

    /** Stress that lasts less than this hardly relaxes (assumed). */
    static final int RELAXATION_DAYS = 30;

    /** Strains since glue-up or finish, under a doubt. */
    static FreeStrains since(WorkState state, BondedEngine.Setup setup, List<Hybrid.Part> parts, Doubt doubt) {
        FullTangKnife knife = setup.knife();
        LayerMoisture moisture = setup.moisture();
        Handle handle = SectionPlan.handle(knife);
        List<LayeredCourse> scale = parts.stream()
                .map(part -> moisture.scale(part.material(), part.cut(), handle, knife.finish(), doubt))
                .toList();
        List<LayeredCourse> liners = knife.liners().stream()
                .map(liner -> moisture.liner(liner, handle.tangWidth().metres() / 2, knife.finish(), doubt))
                .toList();
        AirSeries air = setup.destination().air();
        double[] celsius = new double[air.size()];
        Arrays.setAll(celsius, air::temperatureCelsius);
        return of(state, setup, parts, doubt, scale, liners, celsius);
    }

    /**
     * Strains since a moment of the work along moisture and temperature worked out elsewhere.
     *
     * @param scaleCourses one a part
     * @param linerCourses one a liner
     * @param celsius temperature of the scale, one a sample of the courses
     */
    static FreeStrains of(
            WorkState state,
            BondedEngine.Setup setup,
            List<Hybrid.Part> parts,
            Doubt doubt,
            List<LayeredCourse> scaleCourses,
            List<LayeredCourse> linerCourses,
            double[] celsius) {
        FullTangKnife knife = setup.knife();
        LayerMoisture moisture = setup.moisture();
        List<PartMotion> scale = new ArrayList<>();
        List<PartMotion> liners = new ArrayList<>();
        List<double[]> series = new ArrayList<>();
        for (int p = 0; p < parts.size(); p++) {
            Hybrid.Part part = parts.get(p);
            LayeredCourse course = scaleCourses.get(p);
            double from = moisture.stockFraction(part.material(), state, doubt);
            PartMotion motion = PartMotion.of(
                    new GrainLie(part.material(), part.cut()), part.share().value(), from, course.mean(), 0, doubt);
            scale.add(motion);
            for (int k = 0; k < LayerMoisture.LAYERS; k++) {
                series.add(change(course, k, motion));
            }
        }
        for (int l = 0; l < linerCourses.size(); l++) {
            Material liner = knife.liners().get(l);
            LayeredCourse course = linerCourses.get(l);
            double from = moisture.stockFraction(liner, state, doubt);
            PartMotion motion = PartMotion.of(new GrainLie(liner, Cut.NONE), 1, from, course.mean(), 0, doubt);
            liners.add(motion);
            series.add(change(course, 0, motion));
        }
        double[] warmer = new double[celsius.length];
        Arrays.setAll(warmer, hour -> celsius[hour] - state.temperature().celsius());
        series.add(warmer);
        return new FreeStrains(
                knife,
                scale,
                liners,
                series.toArray(new double[0][]),
                setup.destination().repeatsFromStart());
    }

    private static double[] change(LayeredCourse course, int layer, PartMotion motion) {
        double[] change = new double[course.mean().hours()];
        Arrays.setAll(
                change,
                hour -> Math.min(course.fraction(layer, hour), motion.stillAboveFraction()) - motion.finishFraction());
        return change;
    }

    /** Temperature above that of the moment, K. */
    double[] warmer() {
        return series[series.length - 1];
    }

    /** These strains acting on a section. */
    SectionDrive on(StiffnessNodes section) {
        return new SectionDrive(
                section, scale, liners, SectionPlan.expansion(knife.steel()), SectionPlan.expansion(knife.adhesive()));
    }

    /**
     * The part of the strains that stresses: each series less what has relaxed of its mean over the last weeks, so that
     * quick changes count in full and lasting ones by their lasting share.
     *
     * @param lastingShare share of a stress that is left after weeks
     */
    FreeStrains relaxed(double lastingShare) {
        double[][] left = Arrays.stream(series)
                .map(values -> relaxed(values, 1 - lastingShare, RELAXATION_DAYS * HOURS_A_DAY, closed))
                .toArray(double[][]::new);
        return new FreeStrains(knife, scale, liners, left, closed);
    }

    /**
     * A series less what has relaxed of its mean over the last weeks.
     *
     * @param gone share of a lasting stress that is gone
     * @param month samples in {@link #RELAXATION_DAYS}
     * @param closed true where the last sample is followed by the first
     */
    static double[] relaxed(double[] values, double gone, int month, boolean closed) {
        int window = Math.min(values.length, month);
        double sum = 0;
        for (int back = 1; closed && back <= window; back++) {
            sum += values[values.length - back];
        }
        double[] result = new double[values.length];
        for (int hour = 0; hour < values.length; hour++) {
            int leaves = hour - window;
            double left = leaves >= 0 ? values[leaves] : closed ? values[leaves + values.length] : 0;
            sum += values[hour] - left;
            result[hour] = values[hour] - gone * sum / window;
        }
        return result;
    }
}
