package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.air.EventSchedule;
import hafthold.knife.Bond;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Band;
import hafthold.simulate.EventWindow.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * One scale through the year with events, glued where the order says with what and it is wide enough, else only pinned.
 *
 * <p>Read it as the method statement: the year that repeats without events is where it starts; heat and water together lead
 * the scale through each event; strain and steps follow as in the year; whichever is worse is the answer. The run is done
 * at the value of the speed of water in the scale and at both ends of its range.
 */
public final class EventEngine {
    /** Tang of a knife of which only the width is known: 4 mm thick (assumed). */
    private static final double USUAL_TANG_METRES = 0.004;

    private static final List<Doubt> SPEEDS =
            List.of(Doubt.NONE, Doubt.alone(Input.DIFFUSIVITY, -1), Doubt.alone(Input.DIFFUSIVITY, 1));
    private static final double STEP_SECONDS = 300;

    private final Conditions order;
    private final EventSchedule schedule;
    private final LayerMoisture moisture;
    private final EventRun run;
    private final Optional<GluedSections> glued;

    /** An engine for one order, with samples every five minutes about an event. */
    public EventEngine(Conditions order, EventSchedule schedule) {
        this(order, schedule, STEP_SECONDS);
    }

    /**
     * An engine for one order.
     *
     * @param stepSeconds time between samples about an event
     */
    public EventEngine(Conditions order, EventSchedule schedule, double stepSeconds) {
        AirSeries air = order.destination().air();
        EventRun.unfit(air).ifPresent(what -> {
            throw new OutsideModelsException(what);
        });
        this.order = order;
        this.schedule = schedule;
        this.moisture = new LayerMoisture(order.destination());
        this.glued = order.bond()
                .filter(bond -> HandleEngine.isWideEnough(order.handle()))
                .map(bond -> new GluedSections(order.handle(), bond));
        this.run = new EventRun(air, order.destination().outdoors(), schedule, stepSeconds);
    }

    /** The year with events of a scale whose year without is known. */
    public EventYear year(ScaleMaterial material, Cut cut, HandleYear quiet) {
        List<Hybrid.Part> parts = HandleEngine.partsOf(material, cut);
        Optional<GluedSections.Readings> sections = sectionsUnder(parts);
        List<ScalePassage> passages = new ArrayList<>();
        for (Doubt doubt : SPEEDS) {
            if (doubt.isNone()
                    || parts.stream().anyMatch(part -> part.material().water().isPresent())) {
                passages.add(passage(parts, sections, doubt));
            }
        }
        List<EventAnswer> answers =
                schedule.events().stream().map(event -> answer(event, passages)).toList();
        ScalePassage value = passages.get(0);
        List<Material> scale = parts.stream().map(Hybrid.Part::material).toList();
        EventCourse course = value.leadingCourse();
        int last = course.mean().length - 1;
        double above = 0;
        for (int hour = 0; hour <= last; hour++) {
            above += course.above(hour) / (last + 1);
        }
        return new EventYear(
                worse(quiet, passages),
                answers,
                EventHeat.of(withGlue(scale), answers).margin(),
                EventHeat.of(scale, answers).margin(),
                course.above(last),
                above);
    }

    /** What an event heats: the scale, and the glue under it. */
    private List<Material> withGlue(List<Material> scale) {
        return Stream.concat(scale.stream(), order.bond().map(Bond::adhesive).stream())
                .toList();
    }

    private Optional<GluedSections.Readings> sectionsUnder(List<Hybrid.Part> parts) {
        return glued.map(handle -> handle.under(ScaleElasticity.of(parts, Doubt.NONE)));
    }

    /** The year of a scale hour by hour and in finer steps about events, everything at its value. */
    public EventTrace trace(ScaleMaterial material, Cut cut) {
        List<Hybrid.Part> parts = HandleEngine.partsOf(material, cut);
        ScalePassage value = passage(parts, sectionsUnder(parts), Doubt.NONE);
        return new EventTrace(
                order, value.courses(), value.hourlyMotions(), value.hourlyOffsets(), value.offsetsAboutEvents());
    }

    private ScalePassage passage(List<Hybrid.Part> parts, Optional<GluedSections.Readings> sections, Doubt doubt) {
        List<EventCourse> courses = parts.stream()
                .map(part -> EventScale.of(
                                part.material(), part.cut(), order.handle(), order.finish(), USUAL_TANG_METRES, doubt)
                        .map(run::of)
                        .orElseGet(run::dry))
                .toList();
        return new ScalePassage(order, schedule.years(), moisture, parts, courses, sections);
    }

    private EventAnswer answer(Event event, List<ScalePassage> passages) {
        List<Integer> windows = EventReading.windowsOf(event, passages.get(0).leadingCourse());
        List<Movement> moves =
                passages.stream().map(passage -> passage.about(windows)).toList();
        return EventReading.answer(
                event,
                passages.stream().map(passage -> passage.leadingCourse()).toList(),
                EventReading.band(moves, Movement::edgeShy),
                EventReading.band(moves, Movement::edgeProud),
                ScaleStrength.of(passages.get(0).parts())
                        .besidePins(
                                EventReading.band(moves, move -> move.free().pinSqueeze()),
                                EventReading.band(moves, move -> move.free().pinCrackUse())),
                EventReading.endGrain(
                        event,
                        passages.get(0).parts().get(0).material(),
                        order.handle(),
                        order.madeTemperature().celsius()));
    }

    /** The worse of the year without and with events in every movement. */
    private HandleYear worse(HandleYear quiet, List<ScalePassage> passages) {
        List<Integer> all = passages.get(0).all();
        List<Movement> about =
                passages.stream().map(passage -> passage.about(all)).toList();
        List<Movement> moves = passages.stream().map(ScalePassage::hours).toList();
        Function<ToDoubleFunction<Movement>, Band> band =
                of -> EventReading.larger(EventReading.band(about, of), EventReading.band(moves, of));
        Function<ToDoubleFunction<FreeMovement>, Band> free = of -> band.apply(move -> of.applyAsDouble(move.free()));
        Band squeeze = free.apply(FreeMovement::pinSqueeze);
        EdgeSteps edge = new EdgeSteps(
                new Step(band.apply(Movement::edgeShy), band.apply(Movement::edgeProud)),
                new Step(free.apply(FreeMovement::edgeShy), free.apply(FreeMovement::edgeProud)),
                new Step(band.apply(Movement::tangLineShy), band.apply(Movement::tangLineProud)));
        boolean worst =
                edge.bonded().larger().value() > quiet.edge().bonded().larger().value();
        EventCourse course = passages.get(0).leadingCourse();
        List<Sample> samples = EventReading.samples(course, all);
        return new HandleYear(
                quiet.scale(),
                quiet.moisture()
                        .stretchedTo(
                                -EventReading.most(samples, sample -> -sample.mean()),
                                EventReading.most(samples, Sample::mean)),
                quiet.edge().worse(edge),
                quiet.ends()
                        .worse(new EndSteps(
                                free.apply(FreeMovement::lengthMismatch),
                                band.apply(Movement::endShort),
                                band.apply(Movement::endLong))),
                quiet.pins()
                        .worse(new WorstPins(
                                free.apply(FreeMovement::pinGap),
                                squeeze,
                                ScaleStrength.of(passages.get(0).parts())
                                        .besidePins(squeeze, free.apply(FreeMovement::pinCrackUse)),
                                band.apply(Movement::pinHeadProud),
                                band.apply(Movement::pinHeadSunk))),
                quiet.joint(),
                quiet.load().map(load -> worse(load, passages.get(0).load())),
                worst ? month(about.get(0), moves.get(0), course) : quiet.worstMonth(),
                quiet.grounds().withoutSamples(),
                quiet.days(),
                List.of());
    }

    private static HandleYear.Load worse(HandleYear.Load year, Optional<HandleYear.Load> event) {
        return event.map(load -> new HandleYear.Load(
                        EventReading.worse(year.glueUse(), load.glueUse()),
                        EventReading.worse(year.splitUse(), load.splitUse())))
                .orElse(year);
    }

    /** Month of the larger edge step, about an event or in the hours between. */
    private static int month(Movement about, Movement hours, EventCourse course) {
        double hour = larger(hours) > larger(about) ? hours.worstSample() : hour(course, about.worstSample());
        return CommonYear.monthOfHour((int) (hour % CommonYear.HOURS));
    }

    private static double larger(Movement move) {
        return Math.max(move.edgeShy(), move.edgeProud());
    }

    /** Hour of a sample, numbered through all windows. */
    private static double hour(EventCourse course, int sample) {
        int left = sample;
        for (EventWindow window : course.windows()) {
            if (left < window.samples().size()) {
                return window.hour(window.samples().get(left));
            }
            left -= window.samples().size();
        }
        throw new IllegalStateException("sample " + sample + " lies beyond the last event");
    }
}
