package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.Event;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.simulate.EventWindow.Sample;
import java.util.Arrays;
import java.util.List;

/** One side of a bonded knife, scale and liners, through the year with events under one speed of water. */
final class BondedPassage {

    private final BondedEngine.Setup hourly;
    private final FullTangKnife knife;
    private final Cut cut;
    private final List<Hybrid.Part> parts;
    private final List<EventCourse> scale;
    private final List<EventCourse> liners;

    /**
     * Sends scale and liners through the year with events.
     *
     * @param hourly the knife in the hours of that year
     * @param run what sends them
     * @param doubt about the speed of water
     */
    BondedPassage(BondedEngine.Setup hourly, EventRun run, Cut cut, Doubt doubt) {
        this.hourly = hourly;
        this.knife = hourly.knife();
        this.cut = cut;
        Handle handle = SectionPlan.handle(knife);
        parts = HandleEngine.partsOf(knife.scale(), cut);
        double tang = knife.build().tang().thickness().metres();
        scale = parts.stream()
                .map(part -> EventScale.of(part.material(), part.cut(), handle, knife.finish(), tang, doubt)
                        .map(run::of)
                        .orElseGet(run::dry))
                .toList();
        liners = knife.liners().stream()
                .map(liner -> EventScale.ofLiner(liner, handle.tangWidth().metres() / 2, knife.finish(), doubt)
                        .map(run::of)
                        .orElseGet(run::dry))
                .toList();
    }

    private FreeStrains hourlySince(WorkState state) {
        AirSeries air = hourly.destination().air();
        double[] celsius = new double[air.size()];
        Arrays.setAll(celsius, air::temperatureCelsius);
        return FreeStrains.of(
                state,
                hourly,
                parts,
                Doubt.NONE,
                scale.stream().map(BondedPassage::hourlyCourse).toList(),
                liners.stream().map(BondedPassage::hourlyLiner).toList(),
                celsius);
    }

    /** The first part of the scale. */
    Hybrid.Part leadingPart() {
        return parts.get(0);
    }

    /** Moisture of the first part of the scale. */
    EventCourse leadingCourse() {
        return scale.get(0);
    }

    /** The hours of the year with events. */
    SideMovement hours() {
        FreeStrains glueUp = hourlySince(knife.build().glueUp());
        return new SideRun(
                        hourly,
                        cut,
                        Doubt.NONE,
                        hourlySince(knife.build().made()),
                        glueUp,
                        glueUp.relaxed(Doubt.NONE.lastingShare()))
                .movement();
    }

    /** All times of one event, sample by sample. */
    SideMovement about(Event event) {
        List<Integer> windows = EventReading.windowsOf(event, scale.get(0));
        List<Sample> leading = EventReading.samples(scale.get(0), windows);
        double[] celsius = leading.stream().mapToDouble(Sample::meanCelsius).toArray();
        List<LayeredCourse> courses = scale.stream()
                .map(course -> sampled(course, windows, LayerMoisture.LAYERS))
                .toList();
        List<LayeredCourse> edges =
                liners.stream().map(course -> sampled(course, windows, 1)).toList();
        AirSeries tang = new AirSeries(
                EventClock.HOUR,
                leading.stream().mapToDouble(Sample::backCelsius).toArray(),
                leading.stream().mapToDouble(Sample::airHumidity).toArray());
        BondedEngine.Setup setup = new BondedEngine.Setup(
                knife,
                hourly.destination().in(tang),
                hourly.draws(),
                hourly.moisture(),
                hourly.influences(),
                hourly.splits());
        FreeStrains made = FreeStrains.of(knife.build().made(), setup, parts, Doubt.NONE, courses, edges, celsius);
        FreeStrains glueUp = FreeStrains.of(knife.build().glueUp(), setup, parts, Doubt.NONE, courses, edges, celsius);
        return new SideRun(setup, cut, Doubt.NONE, made, glueUp, stressing(glueUp, windows)).movement();
    }

    /** Strains since glue-up less what has relaxed of those of the weeks before each event. */
    private FreeStrains stressing(FreeStrains glueUp, List<Integer> windows) {
        FreeStrains hours = hourlySince(knife.build().glueUp());
        FreeStrains left = hours.relaxed(Doubt.NONE.lastingShare());
        List<EventWindow> about =
                windows.stream().map(w -> scale.get(0).windows().get(w)).toList();
        double[][] series = new double[glueUp.series().length][];
        for (int d = 0; d < series.length; d++) {
            series[d] = glueUp.series()[d].clone();
            EasedBefore.takeOff(series[d], hours.series()[d], left.series()[d], about);
        }
        return new FreeStrains(glueUp.knife(), glueUp.scale(), glueUp.liners(), series, glueUp.closed());
    }

    private static LayeredCourse hourlyCourse(EventCourse course) {
        return new LayeredCourse(course.layers(), new MoistureCourse(course.mean(), course.moments()));
    }

    private static LayeredCourse hourlyLiner(EventCourse course) {
        return new LayeredCourse(new double[][] {course.mean()}, new MoistureCourse(course.mean(), course.moments()));
    }

    /** Samples of some windows. */
    private static LayeredCourse sampled(EventCourse course, List<Integer> windows, int layers) {
        List<Sample> samples = EventReading.samples(course, windows);
        int count = samples.size();
        double[] mean = new double[count];
        double[] moment = new double[count];
        double[][] layer = new double[layers][count];
        for (int i = 0; i < count; i++) {
            Sample sample = samples.get(i);
            mean[i] = sample.mean();
            moment[i] = EventCourse.moment(sample.layers());
            for (int k = 0; k < layers; k++) {
                layer[k][i] = layers == 1 ? sample.mean() : sample.layers()[k];
            }
        }
        return new LayeredCourse(layer, new MoistureCourse(mean, moment));
    }
}
