package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.knife.Pin;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.mechanics.BondedSection;
import hafthold.mechanics.OrthotropicElasticity;
import hafthold.mechanics.SectionInfluence;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.simulate.FitYear.BolsterYear;
import hafthold.simulate.FitYear.BowYear;
import hafthold.simulate.FitYear.FitDays;
import hafthold.simulate.FitYear.PinYear;
import hafthold.simulate.FitYear.PlaceYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.source.Figure;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One full-tang knife, bonded, through the customer's year.
 *
 * <p>Read it as the method statement: moisture in layers through the year for every sample of the inputs; from moisture
 * and temperature the free strain of each layer, since finish for offsets and since glue-up for stress; sections across
 * and along the handle, solved once for unit strains, turn these into steps at the edge and stress in glue and scale;
 * pins are held against holes that move with the scale; from all samples the band.
 *
 * <p>An engine keeps what it has solved: changed builds for the same destination are best run through {@link #of}.
 */
public final class BondedEngine {
    private final Setup setup;

    /**
     * An engine for one knife in one place.
     *
     * @param sampling how often a year is run with other figures
     */
    public BondedEngine(FullTangKnife knife, Destination destination, Sampling sampling) {
        this(new Setup(
                knife,
                destination,
                new Draws(sampling),
                new LayerMoisture(destination, knife.build().made()),
                new ConcurrentHashMap<>(),
                new ConcurrentHashMap<>()));
    }

    private BondedEngine(Setup setup) {
        this.setup = setup;
    }

    /** An engine for another knife in the same place that shares what this one has solved. */
    public BondedEngine of(FullTangKnife other) {
        return new BondedEngine(new Setup(
                other,
                setup.destination,
                setup.draws,
                setup.moisture.madeAt(other.build().made()),
                setup.influences,
                setup.splits));
    }

    /** What runs share. */
    record Setup(
            FullTangKnife knife,
            Destination destination,
            Draws draws,
            LayerMoisture moisture,
            Map<BondedSection, SectionInfluence> influences,
            Map<OrthotropicElasticity, PinSplit> splits) {

        SectionInfluence influence(BondedSection section) {
            return influences.computeIfAbsent(section, BondedSection::influence);
        }

        PinSplit split(OrthotropicElasticity scale, boolean anyWay) {
            return splits.computeIfAbsent(scale, elasticity -> new PinSplit(elasticity, anyWay));
        }
    }

    /** The year with the band of every answer. */
    public FitYear year() {
        return answer(setup.draws.doubts(), SectionPlan.positions(setup.knife));
    }

    /** The year at the value of every input, without bands: for trying changes of the build. */
    public FitYear yearWithoutBands() {
        return answer(List.of(), List.of());
    }

    private FitYear answer(List<Doubt> doubts, List<Length> places) {
        List<Run> samples = doubts.parallelStream().map(this::run).toList();
        List<FitYear> years = samples.stream()
                .map(run -> new Answer(new Spread<>(run, List.of()), false).year(List.of(), List.of()))
                .toList();
        return new Answer(new Spread<>(run(Doubt.NONE), samples), true)
                .year(places.stream().map(this::place).toList(), years);
    }

    /**
     * One run of the year.
     *
     * @param sides each scale, one where both are alike
     * @param softening what softens first
     * @param bow of a handle whose sides differ; none where they are alike
     * @param bolsterOverTang edge of the bolster, where there is one
     */
    private record Run(
            List<SideMovement> sides, Softening softening, Optional<Swing> bow, Optional<Swing> bolsterOverTang) {
        double largest(ToDoubleFunction<SideMovement> quantity) {
            return sides.stream().mapToDouble(quantity).max().orElse(0);
        }
    }

    private Run run(Doubt doubt) {
        return new Run(
                cuts().stream()
                        .map(cut -> new SideRun(setup, cut, doubt).movement())
                        .toList(),
                Softening.of(setup, doubt),
                bow(doubt),
                bolster().map(line -> Swing.of(line.overTang(doubt))));
    }

    private Optional<Swing> bow(Doubt doubt) {
        List<Cut> sides = cuts();
        return sides.size() == 1
                ? Optional.empty()
                : Optional.of(Swing.of(new HandleBow(setup, doubt).year(sides.get(0), sides.get(1))));
    }

    private Optional<BolsterLine> bolster() {
        return setup.knife.bolster().map(material -> new BolsterLine(setup, material));
    }

    private PlaceYear place(Length along) {
        Swing worst = cuts().stream()
                .map(cut -> new SideRun(setup, cut, Doubt.NONE).edgeAt(along))
                .reduce(Swing::with)
                .orElseThrow();
        return new PlaceYear(along, setup.knife.build().tangWidthAt(along), worst.below(), worst.above());
    }

    private List<Cut> cuts() {
        FullTangKnife knife = setup.knife;
        return knife.scale() instanceof Hybrid || knife.cutLeft() == knife.cutRight()
                ? List.of(knife.cutLeft())
                : List.of(knife.cutLeft(), knife.cutRight());
    }

    /** What the doubt about the edge may come from. */
    private List<Hybrid.Part> movers() {
        return Stream.concat(
                        HandleEngine.partsOf(setup.knife.scale(), setup.knife.cutLeft()).stream(),
                        setup.knife.liners().stream().flatMap(liner -> HandleEngine.partsOf(liner, Cut.NONE).stream()))
                .toList();
    }

    /** Puts the runs of all samples together. */
    private final class Answer {
        private final List<SideMovement> value;
        private final Spread<Run> spread;
        private final boolean tellsDays;
        private final ScaleStrength strength;

        Answer(Spread<Run> spread, boolean tellsDays) {
            this.value = spread.value().sides();
            this.spread = spread;
            this.tellsDays = tellsDays;
            this.strength = ScaleStrength.of(HandleEngine.partsOf(setup.knife.scale(), setup.knife.cutLeft()));
        }

        FitYear year(List<PlaceYear> places, List<FitYear> samples) {
            int worst = value.size() == 1
                            || value.get(0).mid().either() >= value.get(1).mid().either()
                    ? 0
                    : 1;
            Softening softening = spread.value().softening();
            List<Driver> drivers = Drivers.of(
                    setup.draws,
                    movers(),
                    spread.inSamples(run -> run.largest(side -> side.mid().either())));
            return new FitYear(
                    whole(worst, drivers, samples.stream().map(FitYear::whole).toList()),
                    band(side -> side.outer().below()),
                    band(side -> side.outer().above()),
                    band(side -> side.dome().below()),
                    band(side -> side.dome().above()),
                    band(side -> side.end().either()),
                    band(side -> side.pinSpan().either()),
                    bow(),
                    bolster(),
                    band(side -> side.glue().shear2()),
                    band(side -> side.glue().peel2()),
                    band(side -> side.glue().shear1()),
                    band(side -> side.glue().peel1()),
                    band(side -> side.glue().use()),
                    setup.destination.monthAt(value.get(worst).glue().hour()),
                    strength.use(band(SideMovement::middleUse)),
                    strength.use(band(SideMovement::tearUse)),
                    strength.use(band(Answer::crackUse)),
                    spread.signed(run -> run.softening().margin()),
                    softening.name(),
                    softening.hottest(),
                    coldest(),
                    band(SideMovement::set),
                    pins(),
                    sideYears(),
                    places,
                    drivers,
                    tellsDays ? days(worst) : FitDays.NONE,
                    value.get(worst).poses().get(0),
                    value.get(worst).poses().get(1),
                    samples);
        }

        private HandleYear whole(int worst, List<Driver> drivers, List<HandleYear> samples) {
            FullTangKnife knife = setup.knife;
            Cut cut = cuts().get(worst);
            Hybrid.Part first = HandleEngine.partsOf(knife.scale(), cut).get(0);
            Handle handle = SectionPlan.handle(knife);
            MoistureCourse course = setup.moisture
                    .scale(first.material(), first.cut(), handle, knife.finish(), Doubt.NONE)
                    .mean();
            double finish =
                    setup.moisture.stockFraction(first.material(), knife.build().made(), Doubt.NONE);
            return new HandleYear(
                    ScaleChoice.of(knife.scale(), knife.scale() instanceof Hybrid ? Cut.NONE : cut),
                    new MoistureSpan(finish, course.least(), course.most()),
                    new EdgeSteps(step(SideMovement::mid), step(SideMovement::free), step(SideMovement::tangLine)),
                    new EndSteps(
                            band(side -> side.freeLength().either()),
                            band(side -> side.end().below()),
                            band(side -> side.end().above())),
                    new WorstPins(
                            pinBand(PinMovement::gap),
                            pinBand(PinMovement::squeeze),
                            pinUse(),
                            pinBand(pin -> pin.head().above()),
                            pinBand(pin -> pin.head().below())),
                    PartsJoint.of(
                            knife.scale(),
                            spread.map(run -> run.sides().get(0).joint()),
                            handle.scaleThickness().metres(),
                            finish - course.least()),
                    Optional.empty(),
                    setup.destination.monthAt(value.get(worst).mid().worstHour()),
                    new Grounds(
                            RestsOn.of(knife.scale().evidence(), HandleEngine.partsOf(knife.scale(), cut), drivers),
                            tellsDays ? findings() : List.of(),
                            drivers,
                            samples),
                    tellsDays
                            ? new HandleDays(
                                    setup.destination.calendarYear(dailyBands(worst, SideMovement.Days::edge)),
                                    setup.destination.calendarYear(course.dailyMeans()))
                            : HandleDays.NONE,
                    tellsDays
                            ? StaySpan.of(
                                    setup.destination,
                                    course,
                                    () -> value.get(worst).days().edge())
                            : List.of());
        }

        private Step step(Function<SideMovement, Swing> of) {
            return new Step(
                    band(side -> of.apply(side).below()),
                    band(side -> of.apply(side).above()));
        }

        private Band band(ToDoubleFunction<SideMovement> quantity) {
            return spread.of(run -> run.largest(quantity));
        }

        private Band pinBand(ToDoubleFunction<PinMovement> quantity) {
            return band(side -> side.pins().stream().mapToDouble(quantity).max().orElse(0));
        }

        private Optional<BowYear> bow() {
            return spread.value()
                    .bow()
                    .map(swing -> new BowYear(
                            spread.of(run -> run.bow().orElseThrow().above()),
                            spread.of(run -> run.bow().orElseThrow().below()),
                            setup.destination.monthAt(swing.worstHour())));
        }

        private Optional<BolsterYear> bolster() {
            return BondedEngine.this.bolster().filter(line -> tellsDays).map(line -> {
                Swing scale = cuts().stream()
                        .map(line::scaleOverBolster)
                        .reduce(Swing::with)
                        .orElseThrow();
                return new BolsterYear(
                        new Step(
                                spread.of(run ->
                                        run.bolsterOverTang().orElseThrow().below()),
                                spread.of(run ->
                                        run.bolsterOverTang().orElseThrow().above())),
                        new Step(Band.exact(scale.below()), Band.exact(scale.above())));
            });
        }

        private Optional<Band> pinUse() {
            return strength.besidePins(pinBand(PinMovement::squeeze), pinBand(PinMovement::largestSplitUse));
        }

        private List<Double> used(ToDoubleFunction<SideMovement> use, double[] days) {
            return strength.use(band(use)).isPresent() ? boxed(days) : List.of();
        }

        private static double crackUse(SideMovement side) {
            double pins = side.pins().stream()
                    .mapToDouble(PinMovement::largestSplitUse)
                    .max()
                    .orElse(0);
            return Math.max(pins, Math.max(side.middleUse(), side.tearUse()));
        }

        private List<PinYear> pins() {
            List<PinYear> pins = new ArrayList<>();
            for (int i = 0; i < setup.knife.build().pins().size(); i++) {
                Pin pin = setup.knife.build().pins().get(i);
                int index = i;
                pins.add(new PinYear(
                        pin.diameter(),
                        new Length(PinRun.edgeDistance(setup.knife, pin)),
                        band(side -> side.pins().get(index).gapAlong()),
                        band(side -> side.pins().get(index).gapAcross()),
                        band(side -> side.pins().get(index).along().below()),
                        band(side -> side.pins().get(index).across().below()),
                        band(side -> side.pins().get(index).head().above()),
                        band(side -> side.pins().get(index).head().below()),
                        strength.besidePins(
                                band(side -> side.pins().get(index).squeeze()),
                                band(side -> side.pins().get(index).largestSplitUse()))));
            }
            return pins;
        }

        private List<SideYear> sideYears() {
            List<SideYear> years = new ArrayList<>();
            for (int i = 0; i < value.size(); i++) {
                int index = i;
                years.add(new SideYear(
                        value.size() == 1 ? "both" : i == 0 ? "left" : "right",
                        cuts().get(i),
                        spread.of(run -> run.sides().get(index).mid().below()),
                        spread.of(run -> run.sides().get(index).mid().above()),
                        spread.of(run -> run.sides().get(index).free().below()),
                        spread.of(run -> run.sides().get(index).free().above()),
                        value.get(i).poses().get(0),
                        value.get(i).poses().get(1)));
            }
            return years;
        }

        private FitDays days(int worst) {
            SideMovement.Days days = value.get(worst).days();
            return new FitDays(
                    setup.destination.calendarYear(dailyBands(worst, SideMovement.Days::edge)),
                    setup.destination.calendarYear(dailyBands(worst, SideMovement.Days::free)),
                    boxed(days.glueUse()),
                    used(SideMovement::middleUse, days.middleUse()),
                    used(SideMovement::tearUse, days.tearUse()),
                    pinUse().isPresent() ? boxed(days.pinUse()) : List.of());
        }

        private List<Band> dailyBands(int side, Function<SideMovement.Days, double[]> of) {
            int count = of.apply(value.get(side).days()).length;
            return IntStream.range(0, count)
                    .mapToObj(day ->
                            spread.signed(run -> of.apply(run.sides().get(side).days())[day]))
                    .toList();
        }

        private List<Double> boxed(double[] values) {
            return setup.destination.calendarYear(
                    java.util.Arrays.stream(values).boxed().toList());
        }

        private double coldest() {
            AirSeries air = setup.destination.air();
            return IntStream.range(0, air.size())
                    .mapToDouble(air::temperatureCelsius)
                    .min()
                    .orElseThrow();
        }

        private List<Finding> findings() {
            List<Finding> findings = new ArrayList<>(setup.knife.scale().findings());
            findings.addAll(ScaleElasticity.findings(cuts().stream()
                    .flatMap(cut -> HandleEngine.partsOf(setup.knife.scale(), cut).stream())
                    .toList()));
            return findings;
        }
    }

    /**
     * What softens first.
     *
     * @param margin lowest service or softening temperature less the hottest air, K
     * @param name of that material
     * @param hottest air about the knife, degrees Celsius
     */
    private record Softening(double margin, String name, double hottest) {
        private static final double NOTHING_SOFTENS_CELSIUS = 100;

        static Softening of(Setup setup, Doubt doubt) {
            AirSeries air = setup.destination.air();
            double hottest = IntStream.range(0, air.size())
                    .mapToDouble(air::temperatureCelsius)
                    .max()
                    .orElseThrow();
            List<Material> materials = new ArrayList<>();
            HandleEngine.partsOf(setup.knife.scale(), setup.knife.cutLeft())
                    .forEach(part -> materials.add(part.material()));
            materials.addAll(setup.knife.liners());
            materials.add(setup.knife.adhesive());
            double lowest = Double.POSITIVE_INFINITY;
            String name = "";
            for (Material material : materials) {
                for (Property property : List.of(Property.SERVICE_TEMPERATURE, Property.SOFTENING_TEMPERATURE)) {
                    Optional<Figure> figure = material.sheet().figure(property);
                    if (figure.isPresent() && doubt.softening(material, figure.get()) < lowest) {
                        lowest = doubt.softening(material, figure.get());
                        name = material.name();
                    }
                }
            }
            double limit = name.isEmpty() ? NOTHING_SOFTENS_CELSIUS : lowest;
            return new Softening(limit - hottest, name, hottest);
        }
    }
}
