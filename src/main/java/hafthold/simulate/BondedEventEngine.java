package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.air.EventSchedule;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.quantity.Band;
import hafthold.simulate.EventWindow.Sample;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
    private static final double SECONDS_AN_HOUR = 3600;
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
        List<Cut> cuts = knife.cutLeft() == knife.cutRight() || knife.scale() instanceof Hybrid
                ? List.of(knife.cutLeft())
                : List.of(knife.cutLeft(), knife.cutRight());
        List<List<Passage>> bySpeed = SPEEDS.parallelStream()
                .map(doubt -> cuts.stream().map(cut -> new Passage(cut, doubt)).toList())
                .toList();
        List<List<List<SideMovement>>> about = new ArrayList<>();
        for (Event event : schedule.events()) {
            about.add(moves(bySpeed, passage -> passage.about(event)));
        }
        List<List<SideMovement>> hours = moves(bySpeed, Passage::hours);
        List<BondedEventAnswer> answers = new ArrayList<>();
        for (int e = 0; e < schedule.events().size(); e++) {
            answers.add(answer(schedule.events().get(e), bySpeed, about.get(e)));
        }
        EventCourse course = bySpeed.get(0).get(0).scale.get(0);
        double above = 0;
        for (int hour = 0; hour < course.mean().length; hour++) {
            above += course.above(hour) / course.mean().length;
        }
        List<List<List<SideMovement>>> all = new ArrayList<>(about);
        all.add(hours);
        return new BondedEventYear(
                worse(quiet, all, hours, answers, course), answers, course.above(course.mean().length - 1), above);
    }

    private static List<List<SideMovement>> moves(List<List<Passage>> bySpeed, Function<Passage, SideMovement> of) {
        return bySpeed.parallelStream()
                .map(passages -> passages.stream().map(of).toList())
                .toList();
    }

    private Destination with(AirSeries air) {
        return destination.in(air);
    }

    private BondedEventAnswer answer(Event event, List<List<Passage>> bySpeed, List<List<SideMovement>> moves) {
        Passage value = bySpeed.get(0).get(0);
        Optional<Band> pins = strength()
                .besidePins(
                        band(moves, side -> pins(side, PinMovement::squeeze)),
                        band(moves, side -> pins(side, PinMovement::largestSplitUse)));
        return new BondedEventAnswer(
                EventReading.answer(
                        event,
                        bySpeed.stream()
                                .map(passages -> passages.get(0).scale.get(0))
                                .toList(),
                        band(moves, side -> side.mid().below()),
                        band(moves, side -> side.mid().above()),
                        pins,
                        EventReading.endGrain(
                                event,
                                value.parts.get(0).material(),
                                handle,
                                knife.build().made().temperature().celsius())),
                band(moves, side -> side.glue().use()),
                strength().use(band(moves, side -> Math.max(side.middleUse(), side.tearUse()))),
                pins);
    }

    private ScaleStrength strength() {
        return ScaleStrength.of(HandleEngine.partsOf(knife.scale(), knife.cutLeft()));
    }

    private static double pins(SideMovement side, ToDoubleFunction<PinMovement> of) {
        return side.pins().stream().mapToDouble(of).max().orElse(0);
    }

    private static Band band(List<List<SideMovement>> bySpeed, ToDoubleFunction<SideMovement> of) {
        return EventReading.band(
                bySpeed, sides -> sides.stream().mapToDouble(of).max().orElse(0));
    }

    /** One cut of scale and its liners under one speed of water. */
    private final class Passage {
        private final Cut cut;
        private final List<Hybrid.Part> parts;
        private final List<EventCourse> scale;
        private final List<EventCourse> liners;

        Passage(Cut cut, Doubt doubt) {
            this.cut = cut;
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
                    scale.stream().map(BondedEventEngine::hourlyCourse).toList(),
                    liners.stream().map(BondedEventEngine::hourlyLiner).toList(),
                    celsius);
        }

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

        SideMovement about(Event event) {
            List<Integer> windows = EventReading.windowsOf(event, scale.get(0));
            List<Sample> leading = EventReading.samples(scale.get(0), windows);
            double[] celsius = leading.stream().mapToDouble(Sample::meanCelsius).toArray();
            List<LayeredCourse> courses = scale.stream()
                    .map(course -> sampled(course, windows, leading.size(), LayerMoisture.LAYERS))
                    .toList();
            List<LayeredCourse> edges = liners.stream()
                    .map(course -> sampled(course, windows, leading.size(), 1))
                    .toList();
            AirSeries tang = new AirSeries(
                    SECONDS_AN_HOUR,
                    leading.stream().mapToDouble(Sample::backCelsius).toArray(),
                    leading.stream().mapToDouble(Sample::airHumidity).toArray());
            BondedEngine.Setup setup = new BondedEngine.Setup(
                    knife, with(tang), hourly.draws(), moisture, hourly.influences(), hourly.splits());
            FreeStrains made = FreeStrains.of(knife.build().made(), setup, parts, Doubt.NONE, courses, edges, celsius);
            FreeStrains glueUp =
                    FreeStrains.of(knife.build().glueUp(), setup, parts, Doubt.NONE, courses, edges, celsius);
            return new SideRun(setup, cut, Doubt.NONE, made, glueUp, stressing(glueUp, windows)).movement();
        }

        /** Strains since glue-up less what has relaxed of those of the weeks before each event. */
        private FreeStrains stressing(FreeStrains glueUp, List<Integer> windows) {
            FreeStrains hours = hourlySince(knife.build().glueUp());
            FreeStrains left = hours.relaxed(Doubt.NONE.lastingShare());
            double[][] series = new double[glueUp.series().length][];
            for (int d = 0; d < series.length; d++) {
                series[d] = glueUp.series()[d].clone();
                int at = 0;
                for (int w : windows) {
                    EventWindow window = scale.get(0).windows().get(w);
                    int hour = (int) (window.startSeconds() / SECONDS_AN_HOUR);
                    double gone = hours.series()[d][hour] - left.series()[d][hour];
                    for (int i = 0; i < window.samples().size(); i++) {
                        series[d][at] -= gone;
                        at++;
                    }
                }
            }
            return new FreeStrains(glueUp.knife(), glueUp.scale(), glueUp.liners(), series, glueUp.closed());
        }
    }

    private static LayeredCourse hourlyCourse(EventCourse course) {
        return new LayeredCourse(course.layers(), new MoistureCourse(course.mean(), course.moments()));
    }

    private static LayeredCourse hourlyLiner(EventCourse course) {
        return new LayeredCourse(new double[][] {course.mean()}, new MoistureCourse(course.mean(), course.moments()));
    }

    /** Samples of some windows; a part that takes up no water has fewer, whose last one then holds. */
    private static LayeredCourse sampled(EventCourse course, List<Integer> windows, int count, int layers) {
        List<Sample> samples = EventReading.samples(course, windows);
        double[] mean = new double[count];
        double[] moment = new double[count];
        double[][] layer = new double[layers][count];
        for (int i = 0; i < count; i++) {
            Sample sample = samples.get(Math.min(i, samples.size() - 1));
            mean[i] = sample.mean();
            moment[i] = EventCourse.moment(sample.layers());
            for (int k = 0; k < layers; k++) {
                layer[k][i] = layers == 1 ? sample.mean() : sample.layers()[k];
            }
        }
        return new LayeredCourse(layer, new MoistureCourse(mean, moment));
    }

    private FitYear worse(
            FitYear quiet,
            List<List<List<SideMovement>>> all,
            List<List<SideMovement>> hours,
            List<BondedEventAnswer> answers,
            EventCourse course) {
        Function<ToDoubleFunction<SideMovement>, Band> most = of -> all.stream()
                .map(moves -> band(moves, of))
                .reduce(EventReading::larger)
                .orElseThrow();
        HandleYear whole = quiet.whole();
        List<Material> materials = new ArrayList<>(HandleEngine.partsOf(knife.scale(), knife.cutLeft()).stream()
                .map(Hybrid.Part::material)
                .toList());
        materials.addAll(knife.liners());
        materials.add(knife.adhesive());
        EventHeat heat = EventHeat.of(
                materials, answers.stream().map(BondedEventAnswer::scale).toList());
        boolean hotter = heat.hottestCelsius() > quiet.hottestCelsius();
        List<Sample> samples = EventWindow.samples(course.windows());
        Band glueUse = most.apply(side -> side.glue().use());
        int worstEvent = worstMonth(answers, course, BondedEventAnswer::glueUse);
        EdgeSteps edge = new EdgeSteps(
                step(most, SideMovement::mid), step(most, SideMovement::free), step(most, SideMovement::tangLine));
        boolean edgeWorse =
                edge.bonded().larger().value() > whole.edge().bonded().larger().value();
        Band squeeze = pins(most, PinMovement::squeeze);
        HandleYear worst = new HandleYear(
                whole.scale(),
                whole.moisture()
                        .stretchedTo(
                                -EventReading.most(samples, sample -> -sample.mean()),
                                EventReading.most(samples, Sample::mean)),
                whole.edge().worse(edge),
                whole.ends()
                        .worse(new EndSteps(
                                most.apply(side -> side.freeLength().either()),
                                most.apply(side -> side.end().below()),
                                most.apply(side -> side.end().above()))),
                whole.pins()
                        .worse(new WorstPins(
                                pins(most, PinMovement::gap),
                                squeeze,
                                strength().besidePins(squeeze, pins(most, PinMovement::largestSplitUse)),
                                pins(most, pin -> pin.head().above()),
                                pins(most, pin -> pin.head().below()))),
                whole.joint(),
                whole.load(),
                edgeWorse
                        ? worstMonth(
                                answers,
                                course,
                                answer -> EventReading.larger(
                                        answer.scale().edgeShy(), answer.scale().edgeProud()))
                        : whole.worstMonth(),
                whole.grounds().withoutSamples(),
                whole.days(),
                List.of());
        return new FitYear(
                worst,
                EventReading.worse(
                        quiet.outerShy(), most.apply(side -> side.outer().below())),
                EventReading.worse(
                        quiet.outerProud(), most.apply(side -> side.outer().above())),
                EventReading.worse(
                        quiet.domeHollow(), most.apply(side -> side.dome().below())),
                EventReading.worse(
                        quiet.domeRound(), most.apply(side -> side.dome().above())),
                EventReading.worse(
                        quiet.endMismatch(), most.apply(side -> side.end().either())),
                EventReading.worse(
                        quiet.pinSpan(), most.apply(side -> side.pinSpan().either())),
                quiet.bow(),
                quiet.bolster(),
                EventReading.worse(
                        quiet.glueShear(), most.apply(side -> side.glue().shear2())),
                EventReading.worse(
                        quiet.gluePeel(), most.apply(side -> side.glue().peel2())),
                EventReading.worse(
                        quiet.glueShearLastMillimetre(),
                        most.apply(side -> side.glue().shear1())),
                EventReading.worse(
                        quiet.gluePeelLastMillimetre(),
                        most.apply(side -> side.glue().peel1())),
                EventReading.worse(quiet.glueUse(), glueUse),
                glueUse.value() > quiet.glueUse().value() ? worstEvent : quiet.glueMonth(),
                EventReading.worse(quiet.middleUse(), strength().use(most.apply(SideMovement::middleUse))),
                EventReading.worse(quiet.tearUse(), strength().use(most.apply(SideMovement::tearUse))),
                EventReading.worse(
                        quiet.crackUse(),
                        strength()
                                .use(most.apply(side -> Math.max(
                                        pins(side, PinMovement::largestSplitUse),
                                        Math.max(side.middleUse(), side.tearUse()))))),
                hotter ? heat.marginKelvin() : quiet.softeningMarginKelvin(),
                hotter ? heat.softens() : quiet.softensFirst(),
                Math.max(quiet.hottestCelsius(), heat.hottestCelsius()),
                Math.min(quiet.coldestCelsius(), -EventReading.most(samples, sample -> -sample.backCelsius())),
                EventReading.worse(quiet.set(), band(hours, SideMovement::set)),
                pins(quiet, most),
                quiet.sides(),
                quiet.places(),
                quiet.drivers(),
                quiet.days(),
                quiet.dryPose(),
                quiet.wetPose(),
                List.of());
    }

    private static Step step(Function<ToDoubleFunction<SideMovement>, Band> most, Function<SideMovement, Swing> of) {
        return new Step(
                most.apply(side -> of.apply(side).below()),
                most.apply(side -> of.apply(side).above()));
    }

    private static Band pins(Function<ToDoubleFunction<SideMovement>, Band> most, ToDoubleFunction<PinMovement> of) {
        return most.apply(side -> pins(side, of));
    }

    private List<FitYear.PinYear> pins(FitYear quiet, Function<ToDoubleFunction<SideMovement>, Band> most) {
        List<FitYear.PinYear> pins = new ArrayList<>();
        for (int i = 0; i < quiet.pins().size(); i++) {
            int index = i;
            FitYear.PinYear pin = quiet.pins().get(i);
            Function<ToDoubleFunction<PinMovement>, Band> one =
                    of -> most.apply(side -> of.applyAsDouble(side.pins().get(index)));
            pins.add(new FitYear.PinYear(
                    pin.diameter(),
                    pin.edgeDistance(),
                    EventReading.worse(pin.gapAlong(), one.apply(PinMovement::gapAlong)),
                    EventReading.worse(pin.gapAcross(), one.apply(PinMovement::gapAcross)),
                    EventReading.worse(
                            pin.squeezeAlong(), one.apply(p -> p.along().below())),
                    EventReading.worse(
                            pin.squeezeAcross(), one.apply(p -> p.across().below())),
                    EventReading.worse(pin.headProud(), one.apply(p -> p.head().above())),
                    EventReading.worse(pin.headSunk(), one.apply(p -> p.head().below())),
                    EventReading.worse(
                            pin.crackUse(),
                            strength()
                                    .besidePins(
                                            one.apply(PinMovement::squeeze),
                                            one.apply(PinMovement::largestSplitUse)))));
        }
        return pins;
    }

    /** Month of the first time that the worst event happens. */
    private static int worstMonth(
            List<BondedEventAnswer> answers, EventCourse course, Function<BondedEventAnswer, Band> of) {
        BondedEventAnswer worst = answers.get(0);
        for (BondedEventAnswer answer : answers) {
            worst = of.apply(answer).value() > of.apply(worst).value() ? answer : worst;
        }
        int first = EventReading.windowsOf(worst.scale().event(), course).get(0);
        double hour = course.windows().get(first).startSeconds() / SECONDS_AN_HOUR;
        return CommonYear.monthOfHour((int) (hour % CommonYear.HOURS));
    }
}
