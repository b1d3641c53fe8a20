package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.air.EventSchedule;
import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Band;
import hafthold.simulate.EventWindow.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * One scale, unglued, through the year with events.
 *
 * <p>Read it as the method statement: the year that repeats without events is where it starts; heat and water together lead
 * the scale through each event; strain and steps follow as in the year; whichever is worse is the answer. The run is done
 * at the value of the speed of water in the scale and at both ends of its range.
 */
public final class EventEngine {
    private static final double SECONDS_AN_HOUR = 3600;
    /** Tang of a knife of which only the width is known: 4 mm thick (assumed). */
    private static final double USUAL_TANG_METRES = 0.004;

    private static final List<Doubt> SPEEDS =
            List.of(Doubt.NONE, new Doubt(Doubt.Input.DIFFUSIVITY, -1), new Doubt(Doubt.Input.DIFFUSIVITY, 1));
    private static final double STEP_SECONDS = 300;

    private final Conditions order;
    private final EventSchedule schedule;
    private final LayerMoisture moisture;
    private final EventRun run;

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
        this.run = new EventRun(air, order.destination().outdoors(), schedule, stepSeconds);
    }

    /** The year with events of a scale whose year without is known. */
    public EventYear year(ScaleMaterial material, Cut cut, HandleYear quiet) {
        List<Hybrid.Part> parts = HandleEngine.partsOf(material, cut);
        List<Passage> passages = new ArrayList<>();
        for (Doubt doubt : SPEEDS) {
            if (doubt.equals(Doubt.NONE)
                    || parts.stream().anyMatch(part -> part.material().water().isPresent())) {
                passages.add(new Passage(parts, doubt));
            }
        }
        List<EventAnswer> answers =
                schedule.events().stream().map(event -> answer(event, passages)).toList();
        Passage value = passages.get(0);
        EventHeat heat = EventHeat.of(parts.stream().map(Hybrid.Part::material).toList(), answers);
        EventCourse course = value.courses.get(0);
        int last = course.mean().length - 1;
        double above = 0;
        for (int hour = 0; hour <= last; hour++) {
            above += course.above(hour) / (last + 1);
        }
        return new EventYear(
                worse(quiet, passages), answers, heat.marginKelvin(), heat.softens(), course.above(last), above);
    }

    /** The year of a scale hour by hour and in finer steps about events, everything at its value. */
    public EventTrace trace(ScaleMaterial material, Cut cut) {
        Passage value = new Passage(HandleEngine.partsOf(material, cut), Doubt.NONE);
        return new EventTrace(order, value.courses, value.motions(List.of()));
    }

    /** All parts of a scale under one doubt. */
    private final class Passage {
        private final List<Hybrid.Part> parts;
        private final List<EventCourse> courses;

        Passage(List<Hybrid.Part> parts, Doubt doubt) {
            this.parts = parts;
            courses = parts.stream()
                    .map(part -> EventScale.of(
                                    moisture,
                                    part.material(),
                                    part.cut(),
                                    order.handle(),
                                    order.finish(),
                                    USUAL_TANG_METRES,
                                    doubt)
                            .map(run::of)
                            .orElseGet(run::dry))
                    .toList();
        }

        /** Motions of all parts over the samples of some windows, then, where none is named, every hour. */
        List<PartMotion> motions(List<Integer> windows) {
            List<PartMotion> motions = new ArrayList<>();
            for (int p = 0; p < parts.size(); p++) {
                Hybrid.Part part = parts.get(p);
                EventCourse course = courses.get(p);
                double[] values = windows.isEmpty()
                        ? course.mean()
                        : samples(course, windows).stream()
                                .mapToDouble(Sample::mean)
                                .toArray();
                motions.add(PartMotion.of(
                        part.material(),
                        part.cut(),
                        part.share().value(),
                        moisture.stockFraction(part.material(), made(), Doubt.NONE),
                        new MoistureCourse(values, 1, 0),
                        PinCrack.perStrain(part.material(), part.cut()).orElse(0.0),
                        Doubt.NONE));
            }
            return motions;
        }

        FreeMovement about(List<Integer> windows) {
            return FreeMovement.of(motions(windows), order.at(with(samples(courses.get(0), windows))));
        }

        FreeMovement hours() {
            return FreeMovement.of(motions(List.of()), order.at(repeated()));
        }
    }

    private WorkState made() {
        return new WorkState.SettledAir(order.madeHumidity(), order.madeTemperature());
    }

    private static List<Sample> samples(EventCourse course, List<Integer> windows) {
        return EventWindow.samples(
                windows.stream().map(i -> course.windows().get(i)).toList());
    }

    /** The destination with the scale's own temperature for air, sample by sample: what strain is worked out from. */
    private Destination with(List<Sample> samples) {
        return order.destination()
                .in(new AirSeries(
                        SECONDS_AN_HOUR,
                        samples.stream().mapToDouble(Sample::meanCelsius).toArray(),
                        samples.stream().mapToDouble(Sample::airHumidity).toArray()));
    }

    private Destination repeated() {
        return order.destination().in(EventTrace.repeated(order.destination().air(), schedule.years()));
    }

    private EventAnswer answer(Event event, List<Passage> passages) {
        List<Integer> windows =
                EventReading.windowsOf(event, passages.get(0).courses.get(0));
        List<FreeMovement> moves =
                passages.stream().map(passage -> passage.about(windows)).toList();
        return EventReading.answer(
                event,
                passages.stream().map(passage -> passage.courses.get(0)).toList(),
                EventReading.band(moves, FreeMovement::edgeShy),
                EventReading.band(moves, FreeMovement::edgeProud),
                EventReading.band(moves, FreeMovement::pinCrackUse),
                EventReading.endGrain(
                        event,
                        passages.get(0).parts.get(0).material(),
                        order.handle(),
                        order.madeTemperature().celsius()));
    }

    /** The worse of the year without and with events in every movement. */
    private HandleYear worse(HandleYear quiet, List<Passage> passages) {
        List<Integer> all = new ArrayList<>();
        List<EventWindow> windows = passages.get(0).courses.get(0).windows();
        for (int i = 0; i < windows.size(); i++) {
            all.add(i);
        }
        if (all.isEmpty()) {
            return quiet;
        }
        List<FreeMovement> moves = new ArrayList<>();
        List<FreeMovement> about = passages.stream().map(p -> p.about(all)).toList();
        for (int i = 0; i < passages.size(); i++) {
            moves.add(passages.get(i).hours());
        }
        Function<ToDoubleFunction<FreeMovement>, Band> band =
                of -> EventReading.larger(EventReading.band(about, of), EventReading.band(moves, of));
        Band shy = EventReading.worse(quiet.freeShy(), band.apply(FreeMovement::edgeShy));
        Band proud = EventReading.worse(quiet.freeProud(), band.apply(FreeMovement::edgeProud));
        double held = held(quiet);
        boolean worst = Math.max(shy.value(), proud.value())
                > Math.max(quiet.freeShy().value(), quiet.freeProud().value());
        List<Sample> samples = samples(passages.get(0).courses.get(0), all);
        Sample at = samples.get(Math.min(samples.size() - 1, about.get(0).worstSample()));
        EventCourse course = passages.get(0).courses.get(0);
        return new HandleYear(
                quiet.materialId(),
                quiet.materialName(),
                quiet.family(),
                quiet.cut(),
                quiet.moistureFinish(),
                Math.min(quiet.moistureLowest(), -EventReading.most(samples, sample -> -sample.mean())),
                Math.max(quiet.moistureHighest(), EventReading.most(samples, Sample::mean)),
                EventReading.worse(quiet.edgeShy(), shy.times(held)),
                EventReading.worse(quiet.edgeProud(), proud.times(held)),
                shy,
                proud,
                EventReading.worse(quiet.lengthMismatch(), band.apply(FreeMovement::lengthMismatch)),
                EventReading.worse(quiet.endShort(), band.apply(FreeMovement::endShort)),
                EventReading.worse(quiet.endLong(), band.apply(FreeMovement::endLong)),
                EventReading.worse(quiet.pinGap(), band.apply(FreeMovement::pinGap)),
                EventReading.worse(quiet.pinSqueeze(), band.apply(FreeMovement::pinSqueeze)),
                EventReading.worse(quiet.pinCrackUse(), band.apply(FreeMovement::pinCrackUse)),
                EventReading.worse(quiet.pinHeadProud(), band.apply(FreeMovement::pinHeadProud)),
                EventReading.worse(quiet.pinHeadSunk(), band.apply(FreeMovement::pinHeadSunk)),
                quiet.joint(),
                worst ? month(course, at) : quiet.worstMonth(),
                quiet.restsOn(),
                quiet.findings(),
                quiet.dailyEdgeOffset(),
                quiet.dailyMoisture());
    }

    /** Where the year is told of a glued edge, the share of its free movement that is left. */
    private static double held(HandleYear quiet) {
        double free = quiet.freeShy().value() + quiet.freeProud().value();
        double edge = quiet.edgeShy().value() + quiet.edgeProud().value();
        return free > 0 ? Math.min(1, edge / free) : 1;
    }

    private static int month(EventCourse course, Sample at) {
        for (EventWindow window : course.windows()) {
            if (window.samples().contains(at)) {
                return CommonYear.monthOfHour((int) (window.hour(at) % CommonYear.HOURS));
            }
        }
        return 1;
    }
}
