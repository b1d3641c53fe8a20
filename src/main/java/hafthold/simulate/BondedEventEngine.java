package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.Event;
import hafthold.air.EventSchedule;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * One full-tang knife, bonded, through the year with events.
 *
 * <p>Read it as the method statement: each part of the scale and each liner goes through the year with events by itself;
 * about each event strain follows its layers sample by sample, and what has lasted for weeks before it stresses by its
 * lasting share, the event in full; glue has the temperature of the tang. The hours of the year with events give what
 * builds up: the set above all. Whichever is worse, without or with events, is the answer. The run is done at the value of
 * the speed of water in the scale and at both ends of its range.
 */
public final class BondedEventEngine {
    private static final double STEP_SECONDS = 300;
    private static final List<Doubt> SPEEDS =
            List.of(Doubt.NONE, Doubt.alone(Input.DIFFUSIVITY, -1), Doubt.alone(Input.DIFFUSIVITY, 1));

    private final FullTangKnife knife;
    private final Destination destination;
    private final EventSchedule schedule;
    private final LayerMoisture moisture;
    private final Handle handle;
    private final EventRun run;
    private final BondedEngine.Setup hourly;

    /** An engine for one knife in one place. */
    public BondedEventEngine(FullTangKnife knife, Destination destination, EventSchedule schedule) {
        EventRun.unfit(destination.air()).ifPresent(what -> {
            throw new OutsideModelsException(what);
        });
        this.knife = knife;
        this.destination = destination;
        this.schedule = schedule;
        moisture = new LayerMoisture(destination);
        handle = SectionPlan.handle(knife);
        run = new EventRun(destination.air(), destination.outdoors(), schedule, STEP_SECONDS);
        hourly = new BondedEngine.Setup(
                knife,
                with(EventTrace.repeated(destination.air(), schedule.years())),
                new Draws(Sampling.VALUE_ONLY),
                moisture,
                new ConcurrentHashMap<>(),
                new ConcurrentHashMap<>());
    }

    /** The year with events of a knife whose year without is known. */
    public BondedEventYear year(FitYear quiet) {
        List<List<BondedPassage>> bySpeed = SPEEDS.parallelStream()
                .map(doubt -> knife.sides().stream()
                        .map(cut -> new BondedPassage(hourly, run, cut, doubt))
                        .toList())
                .toList();
        List<List<List<SideMovement>>> about = new ArrayList<>();
        for (Event event : schedule.events()) {
            about.add(moves(bySpeed, passage -> passage.about(event)));
        }
        List<List<SideMovement>> hours = moves(bySpeed, BondedPassage::hours);
        List<BondedEventAnswer> answers = new ArrayList<>();
        for (int e = 0; e < schedule.events().size(); e++) {
            answers.add(answer(schedule.events().get(e), bySpeed, about.get(e)));
        }
        EventCourse course = bySpeed.get(0).get(0).leadingCourse();
        double above = 0;
        for (int hour = 0; hour < course.mean().length; hour++) {
            above += course.above(hour) / course.mean().length;
        }
        List<List<List<SideMovement>>> all = new ArrayList<>(about);
        all.add(hours);
        return new BondedEventYear(
                new WorseOfEvents(
                                knife, quiet, bands(all), hours.get(0), band(hours, SideMovement::set), answers, course)
                        .year(),
                answers,
                course.above(course.mean().length - 1),
                above);
    }

    private static List<List<SideMovement>> moves(
            List<List<BondedPassage>> bySpeed, Function<BondedPassage, SideMovement> of) {
        return bySpeed.parallelStream()
                .map(passages -> passages.stream().map(of).toList())
                .toList();
    }

    private Destination with(AirSeries air) {
        return destination.in(air);
    }

    private BondedEventAnswer answer(Event event, List<List<BondedPassage>> bySpeed, List<List<SideMovement>> moves) {
        BondedPassage value = bySpeed.get(0).get(0);
        SideBands bands = bands(List.of(moves));
        Step edge = bands.step(SideMovement::mid);
        return new BondedEventAnswer(
                EventReading.answer(
                        event,
                        bySpeed.stream()
                                .map(passages -> passages.get(0).leadingCourse())
                                .toList(),
                        edge.shy(),
                        edge.proud(),
                        bands.pinUse(),
                        EventReading.endGrain(
                                event,
                                value.leadingPart().material(),
                                handle,
                                knife.build().made().temperature().celsius())),
                bands.band(side -> side.glue().use()),
                bands.splitUse(),
                bands.pinUse());
    }

    /** The worst of several events, end by end. */
    private SideBands bands(List<List<List<SideMovement>>> events) {
        return SideBands.of(
                knife,
                of -> events.stream()
                        .map(moves -> band(moves, of))
                        .reduce(EventReading::larger)
                        .orElseThrow());
    }

    private static Band band(List<List<SideMovement>> bySpeed, ToDoubleFunction<SideMovement> of) {
        return EventReading.band(
                bySpeed, sides -> sides.stream().mapToDouble(of).max().orElse(0));
    }
}
