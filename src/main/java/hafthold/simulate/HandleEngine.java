package hafthold.simulate;

import hafthold.knife.Handle;
import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.transport.Resolution;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One scale material on one handle through the customer's year.
 *
 * <p>Read it as the method statement: moisture through the year for every sample of the inputs; from moisture and
 * temperature the strain of each part in the directions of the handle; from strain the steps and gaps against steel,
 * glued and as if it were not; from all samples the band.
 */
public final class HandleEngine {
    private final Conditions order;
    private final Sampling sampling;
    private final Draws draws;
    private final Drivers drivers;
    private final Conditions conditions;
    private final LayerMoisture moisture;
    private final YearMean mean;
    private final Optional<GluedSections> glued;
    private final PinCracks cracks;

    /** A section narrower than that has no two edges apart from each other, m. */
    private static final double TOO_NARROW = 5e-3;

    /** An engine for one order; moisture once computed is kept for further cuts of the same material. */
    public HandleEngine(Conditions order) {
        this(order, Sampling.USUAL);
    }

    /**
     * An engine for one order; moisture once computed is kept for further cuts of the same material.
     *
     * @param sampling how often a year is run with other figures
     */
    public HandleEngine(Conditions order, Sampling sampling) {
        this(
                order,
                sampling,
                new Draws(sampling),
                order.bond()
                        .filter(bond -> isWideEnough(order.handle()))
                        .map(bond -> new GluedSections(order.handle(), bond)),
                new PinCracks());
    }

    private HandleEngine(
            Conditions order, Sampling sampling, Draws draws, Optional<GluedSections> glued, PinCracks cracks) {
        this.order = order;
        this.sampling = sampling;
        this.draws = draws;
        this.drivers = new Drivers(draws);
        this.conditions = order.at(order.destination().thinned(Resolution.STANDARD.airStrayFraction()));
        this.moisture = new LayerMoisture(conditions.destination(), made());
        this.mean = YearMean.of(conditions.destination().repeatingYear());
        this.glued = glued;
        this.cracks = cracks;
    }

    /** The same handle elsewhere: what was solved of the handle itself is shared, moisture is not. */
    public HandleEngine at(Destination destination) {
        return new HandleEngine(order.at(destination), sampling, draws, glued, cracks);
    }

    /** The year of a material in a cut; for a hybrid the cut of each part is its own. */
    public HandleYear year(ScaleMaterial material, Cut cut) {
        return years(material, cut, List.of(FinishState.settled(made()))).get(0);
    }

    /**
     * The years of a material in a cut, one for each state it may be sanded flush in; what does not depend on that, such as
     * the moisture of the customer's year, is worked out once.
     *
     * @param states in which it is sanded; on the way through stays the moisture starts as the order says all the same
     */
    public List<HandleYear> years(ScaleMaterial material, Cut cut, List<FinishState> states) {
        List<Hybrid.Part> parts = partsOf(material, cut);
        Optional<GluedSections.Readings> sections = sectionsUnder(parts);
        return states.parallelStream()
                .map(state -> {
                    Conditions sanded = conditions.madeAt(state.temperature());
                    MovingScale scale = moving(parts, sanded, moisture, state, sections);
                    Spread<Movement> spread = scale.year(draws.doubts());
                    return answer(
                            material,
                            cut,
                            parts,
                            sanded,
                            state,
                            scale,
                            spread,
                            load(parts, state, scale, spread, sections));
                })
                .toList();
    }

    /** What glue and scale bear: since glue-up, where that was at another moisture than that of final sanding. */
    private Optional<Spread<GluedLoad>> load(
            List<Hybrid.Part> parts,
            FinishState state,
            MovingScale scale,
            Spread<Movement> sinceFinish,
            Optional<GluedSections.Readings> sections) {
        return state.gluedIn()
                .map(glued -> {
                    MovingScale sinceGlueUp =
                            moving(parts, conditions.madeAt(glued.temperature()), moisture, glued, sections);
                    return sinceGlueUp.load(parts, sinceGlueUp.year(draws.doubts()), draws.doubts());
                })
                .orElseGet(() -> scale.load(parts, sinceFinish, draws.doubts()));
    }

    private MovingScale moving(
            List<Hybrid.Part> parts,
            Conditions there,
            LayerMoisture water,
            FinishState state,
            Optional<GluedSections.Readings> sections) {
        return new MovingScale(
                there,
                parts.stream()
                        .map(part -> new MovingScale.Part(
                                part.share().value(),
                                new GrainLie(part.material(), part.cut()),
                                doubt -> state.stockFraction(part, doubt),
                                cracks.perStrain(part.material(), part.cut()),
                                water.scaleMean(part.material(), part.cut(), order.handle(), order.finish())))
                        .toList(),
                sections);
    }

    /**
     * Makes ready for {@link #year} of several materials: their moisture is worked out side by side, which is several times
     * quicker than one by one and gives the same.
     *
     * @param parts all their parts, see {@link #partsOf}
     */
    public void prepare(List<Hybrid.Part> parts) {
        moisture.prepareMeans(parts, order.handle(), order.finish(), sampling.hasBands());
    }

    /** How soon a change of a material in a cut shows and is over; empty for what takes up no water. */
    public Optional<Settling> settling(ScaleMaterial material, Cut cut) {
        return Settling.of(order, material, cut, mean);
    }

    /** The year of a material in a cut hour by hour, everything at its value; of a hybrid, the moisture of its first part. */
    public ScaleTrace trace(ScaleMaterial material, Cut cut) {
        List<Hybrid.Part> parts = partsOf(material, cut);
        Hybrid.Part leading = parts.get(0);
        LayerMoisture hourly = new LayerMoisture(order.destination(), made());
        MovingScale scale = moving(parts, order, hourly, FinishState.settled(made()), sectionsUnder(parts));
        return new ScaleTrace(
                order,
                scale.motions(),
                leading.material()
                        .water()
                        .map(water ->
                                hourly.scaleHistory(leading.material(), leading.cut(), order.handle(), order.finish())),
                glued.map(handle -> scale.edge()));
    }

    /** The sections under a scale of these parts; solving is what a glued answer costs, so once an answer. */
    private Optional<GluedSections.Readings> sectionsUnder(List<Hybrid.Part> parts) {
        return glued.map(handle -> handle.under(ScaleElasticity.of(parts, Doubt.NONE)));
    }

    static boolean isWideEnough(Handle handle) {
        return handle.tangWidth().metres() > TOO_NARROW && handle.length().metres() > TOO_NARROW;
    }

    private WorkState made() {
        return new WorkState.SettledAir(order.madeHumidity(), order.madeTemperature());
    }

    /** What a scale consists of; a plain material is its own only part. */
    public static List<Hybrid.Part> partsOf(ScaleMaterial material, Cut cut) {
        if (material instanceof Hybrid hybrid) {
            return hybrid.parts();
        }
        Material whole = (Material) material;
        return List.of(
                new Hybrid.Part(whole, cut, new Figure(Band.exact(1), Evidence.MEASURED, "own", "the whole scale")));
    }

    private HandleYear answer(
            ScaleMaterial material,
            Cut cut,
            List<Hybrid.Part> parts,
            Conditions sanded,
            FinishState state,
            MovingScale scale,
            Spread<Movement> spread,
            Optional<Spread<GluedLoad>> load) {
        Destination destination = sanded.destination();
        List<Driver> moved = drivers.of(parts, spread.inSamples(Movement::edgeEither));
        RestsOn restsOn = RestsOn.of(material.evidence(), parts, moved);
        MoistureCourse course = scale.motions().get(0).course();
        Worst worst = new Worst(
                material,
                material instanceof Hybrid ? Cut.NONE : cut,
                state.stockFraction(parts.get(0), Doubt.NONE),
                Swing.of(course.hourly()),
                ScaleStrength.of(parts),
                PartsJoint.usePerStrain(parts),
                restsOn);
        List<Doubt> doubts = draws.doubts();
        HandleYear year = worst.of(spread, load, sanded);
        List<Finding> findings = new ArrayList<>(material.findings());
        findings.addAll(
                PartingFindings.of(material, cut, year.joint(), spread.value().free(), sanded, course, worst.finish()));
        if (glued.isPresent()) {
            findings.addAll(ScaleElasticity.findings(parts));
        } else if (order.bond().isPresent()) {
            findings.add(new Finding(
                    Finding.Kind.EXTRAPOLATION,
                    material.id(),
                    Message.of("note.too-narrow", Map.of("least", Message.size(new Length(TOO_NARROW))))));
        }
        Once<List<HandleYear>> samples = Once.from(() -> IntStream.range(0, doubts.size())
                .mapToObj(sample -> worst.of(spread.sample(sample), load.map(bears -> bears.sample(sample)), sanded))
                .toList());
        return year.with(
                new Grounds(restsOn, findings, moved, samples),
                scale.days(doubts),
                StaySpan.of(destination, course, scale::dailyEdge));
    }

    /** What the worst of a year is told with, whichever sample it is of. */
    private record Worst(
            ScaleMaterial material,
            Cut cut,
            double finish,
            Swing moisture,
            ScaleStrength strength,
            Optional<Double> jointUsePerStrain,
            RestsOn restsOn) {

        HandleYear of(Spread<Movement> spread, Optional<Spread<GluedLoad>> load, Conditions conditions) {
            Spread<FreeMovement> free = spread.map(Movement::free);
            Band squeeze = free.of(FreeMovement::pinSqueeze);
            return new HandleYear(
                    ScaleChoice.of(material, cut),
                    new MoistureSpan(finish, moisture.least(), moisture.most()),
                    new EdgeSteps(
                            new Step(spread.of(Movement::edgeShy), spread.of(Movement::edgeProud)),
                            new Step(free.of(FreeMovement::edgeShy), free.of(FreeMovement::edgeProud)),
                            new Step(spread.of(Movement::tangLineShy), spread.of(Movement::tangLineProud))),
                    new EndSteps(
                            free.of(FreeMovement::lengthMismatch),
                            spread.of(Movement::endShort),
                            spread.of(Movement::endLong)),
                    new WorstPins(
                            free.of(FreeMovement::pinGap),
                            squeeze,
                            strength.besidePins(squeeze, free.of(FreeMovement::pinCrackUse)),
                            spread.of(Movement::pinHeadProud),
                            spread.of(Movement::pinHeadSunk)),
                    PartsJoint.of(
                            material,
                            jointUsePerStrain,
                            free.map(FreeMovement::joint),
                            conditions.handle().scaleThickness().metres(),
                            finish - moisture.least()),
                    load.map(this::told),
                    conditions.destination().monthAt(spread.value().worstSample()),
                    new Grounds(restsOn, List.of()),
                    HandleDays.NONE,
                    List.of());
        }

        private HandleYear.Load told(Spread<GluedLoad> load) {
            return new HandleYear.Load(
                    load.of(GluedLoad::glue),
                    load.value()
                            .split()
                            .flatMap(known ->
                                    strength.use(load.of(bears -> bears.split().orElseThrow()))));
        }
    }
}
