package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.air.EventOccurrence;
import hafthold.air.EventSchedule;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.knife.MeasuringPoint;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one event leaves of itself in the steps of a knife, day by day after it: daily means with the event less those
 * without, everything but the speed of water at its value, and what it takes off the width for good.
 */
final class UseTrace {
    /** Longest that is looked back, days. */
    static final int DAYS = 60;

    private static final double STEP_SECONDS = 300;
    private static final double DAY_SECONDS = 86_400;
    private static final double NOON_SECONDS = DAY_SECONDS / 2;

    private final FullTangKnife knife;
    private final BondedEngine.Setup setup;
    private final Handle handle;
    private final Map<MeasuringPoint, double[]> byDay = new EnumMap<>(MeasuringPoint.class);
    private final double set;

    /**
     * Follows an event that happened some weeks before a day.
     *
     * @param setup the knife where it lives, in the hours of a year
     * @param before the day
     * @param points where steps are wanted
     * @param speed the speed of water in the scale
     */
    UseTrace(BondedEngine.Setup setup, Event event, LocalDate before, List<MeasuringPoint> points, Doubt speed) {
        this.setup = setup;
        this.knife = setup.knife();
        this.handle = SectionPlan.handle(knife);
        int day = Math.floorMod(Math.min(before.getDayOfYear(), CommonYear.DAYS) - 1 - DAYS / 2, CommonYear.DAYS);
        // What would run beyond the year's end is moved back to it: a few weeks of season more or less.
        int first = Math.min(day, CommonYear.DAYS - DAYS - 2);
        EventSchedule once = new EventSchedule(
                List.of(new EventOccurrence(event, first * DAY_SECONDS + NOON_SECONDS, Double.POSITIVE_INFINITY, 1)),
                1);
        Years with = new Years(once, speed);
        Years without = new Years(EventSchedule.none(), speed);
        int from = first + (int) Math.ceil(event.seconds() / DAY_SECONDS);
        PointSteps after = new PointSteps(setup, Doubt.NONE, with.days(from));
        PointSteps quiet = new PointSteps(setup, Doubt.NONE, without.days(from));
        for (MeasuringPoint point : points) {
            byDay.put(point, YearSeries.difference(after.at(point), quiet.at(point)));
        }
        set = Math.max(0, with.set() - without.set());
    }

    /**
     * What is left of it.
     *
     * @param daysAfter days since, 0 for the day it was over
     */
    double at(MeasuringPoint point, long daysAfter) {
        double[] days = byDay.get(point);
        double moisture = daysAfter < days.length ? days[(int) daysAfter] : 0;
        return moisture - (showsWidth(point) ? set : 0);
    }

    /** What it takes off each edge for good, m. */
    double set() {
        return set;
    }

    /** True for points at which the width of the scale shows. */
    static boolean showsWidth(MeasuringPoint point) {
        return point.isEdge() || point == MeasuringPoint.BOLSTER;
    }

    /** A year of all parts, with the event or without. */
    private final class Years {
        private final List<List<EventCourse>> scales = new ArrayList<>();
        private final List<EventCourse> liners;

        Years(EventSchedule schedule, Doubt speed) {
            EventRun run =
                    new EventRun(setup.destination().air(), setup.destination().outdoors(), schedule, STEP_SECONDS);
            double tang = knife.build().tang().thickness().metres();
            for (Cut cut : knife.sides()) {
                scales.add(HandleEngine.partsOf(knife.scale(), cut).stream()
                        .map(part -> of(
                                run, EventScale.of(part.material(), part.cut(), handle, knife.finish(), tang, speed)))
                        .toList());
            }
            liners = knife.liners().stream()
                    .map(liner ->
                            of(run, EventScale.ofLiner(liner, handle.tangWidth().metres() / 2, knife.finish(), speed)))
                    .toList();
        }

        private static EventCourse of(EventRun run, Optional<EventScale> scale) {
            return scale.map(run::of).orElseGet(run::dry);
        }

        KnifeMoments days(int from) {
            AirSeries air = setup.destination().air();
            double[] celsius = new double[air.size()];
            Arrays.setAll(celsius, air::temperatureCelsius);
            return new KnifeMoments(
                    scales.stream()
                            .map(parts -> parts.stream()
                                    .map(part -> daily(part, from, true))
                                    .toList())
                            .toList(),
                    liners.stream().map(part -> daily(part, from, false)).toList(),
                    daily(celsius, from));
        }

        private static LayeredCourse daily(EventCourse course, int from, boolean layered) {
            MoistureCourse mean = new MoistureCourse(daily(course.mean(), from), daily(course.moments(), from));
            return new LayeredCourse(
                    layered
                            ? Arrays.stream(course.layers())
                                    .map(layer -> daily(layer, from))
                                    .toArray(double[][]::new)
                            : new double[][] {mean.hourly()},
                    mean);
        }

        private static double[] daily(double[] hourly, int from) {
            int first = from * CommonYear.HOURS_A_DAY;
            return YearSeries.dailyMean(
                    Arrays.copyOfRange(hourly, first, Math.min(hourly.length, first + DAYS * CommonYear.HOURS_A_DAY)));
        }

        /** Lasting loss of half the width, the larger of both scales, m. */
        double set() {
            double largest = 0;
            for (int side = 0; side < scales.size(); side++) {
                List<Hybrid.Part> parts =
                        HandleEngine.partsOf(knife.scale(), knife.sides().get(side));
                FreeStrains sinceGlueUp = FreeStrains.of(
                        knife.build().glueUp(),
                        setup,
                        parts,
                        Doubt.NONE,
                        scales.get(side).stream()
                                .map(course -> new LayeredCourse(
                                        course.layers(), new MoistureCourse(course.mean(), course.moments())))
                                .toList(),
                        liners.stream()
                                .map(course -> new LayeredCourse(
                                        new double[][] {course.mean()},
                                        new MoistureCourse(course.mean(), course.moments())))
                                .toList(),
                        new double[setup.destination().air().size()]);
                StiffnessNodes width = StiffnessNodes.of(
                        setup,
                        parts,
                        Doubt.NONE,
                        stiffness -> new SectionPlan(knife, parts, stiffness)
                                .acrossWidth(SectionPlan.positions(knife).get(0)));
                largest = Math.max(largest, ScaleSet.metres(width, parts, sinceGlueUp, Doubt.NONE.lastingShare()));
            }
            return largest;
        }
    }
}
