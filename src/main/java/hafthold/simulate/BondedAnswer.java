package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.quantity.Band;
import hafthold.simulate.FitYear.BolsterYear;
import hafthold.simulate.FitYear.BowYear;
import hafthold.simulate.FitYear.FitDays;
import hafthold.simulate.FitYear.PlaceYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Puts the runs of a bonded knife's year together into one answer. */
final class BondedAnswer {
    private final BondedEngine.Setup setup;
    private final FullTangKnife knife;
    private final List<Cut> cuts;
    private final Spread<BondedRun> spread;
    private final SideBands bands;
    private final int worst;
    private final boolean tellsDays;

    /**
     * Takes the runs of the year.
     *
     * @param tellsDays whether days, findings and stays are told too, which samples do without
     */
    BondedAnswer(BondedEngine.Setup setup, Spread<BondedRun> spread, boolean tellsDays) {
        this.setup = setup;
        this.knife = setup.knife();
        this.cuts = knife.sides();
        this.spread = spread;
        this.bands = SideBands.of(knife, quantity -> spread.of(run -> run.largest(quantity)));
        this.worst = worst(spread.value().sides());
        this.tellsDays = tellsDays;
    }

    private static int worst(List<SideMovement> sides) {
        return sides.size() == 1
                        || sides.get(0).mid().either() >= sides.get(1).mid().either()
                ? 0
                : 1;
    }

    FitYear year(List<PlaceYear> places, List<FitYear> samples) {
        Softening softening = spread.value().softening();
        SideMovement side = side(spread.value());
        Step outer = bands.step(SideMovement::outer);
        Step dome = bands.step(SideMovement::dome);
        List<Driver> drivers = new Drivers(setup.draws())
                .of(
                        movers(),
                        spread.inSamples(run -> run.largest(one -> one.mid().either())));
        return new FitYear(
                whole(drivers, samples.stream().map(FitYear::whole).toList()),
                outer.shy(),
                outer.proud(),
                dome.shy(),
                dome.proud(),
                bands.band(one -> one.end().either()),
                bands.band(one -> one.pinSpan().either()),
                bow(),
                bolster(),
                bands.band(one -> one.glue().shear2()),
                bands.band(one -> one.glue().peel2()),
                bands.band(one -> one.glue().shear1()),
                bands.band(one -> one.glue().peel1()),
                bands.band(one -> one.glue().use()),
                setup.destination().monthAt(side.glue().hour()),
                bands.middleUse(),
                bands.tearUse(),
                bands.crackUse(),
                softening.margin().stream()
                        .mapToObj(margin -> new SofteningMargin(
                                spread.signed(run -> run.softening().margin().orElseThrow()), softening.name()))
                        .findFirst(),
                softening.hottest(),
                coldest(),
                bands.band(SideMovement::set),
                bands.pins(knife),
                sideYears(),
                places,
                drivers,
                tellsDays ? days() : FitDays.NONE,
                side.poses().get(0),
                side.poses().get(1),
                samples);
    }

    /** The side with the larger step. */
    private SideMovement side(BondedRun run) {
        return run.sides().get(worst);
    }

    /** What the doubt about the edge may come from. */
    private List<Hybrid.Part> movers() {
        return Stream.concat(
                        HandleEngine.partsOf(knife.scale(), knife.cutLeft()).stream(),
                        knife.liners().stream().flatMap(liner -> HandleEngine.partsOf(liner, Cut.NONE).stream()))
                .toList();
    }

    private HandleYear whole(List<Driver> drivers, List<HandleYear> samples) {
        Cut cut = cuts.get(worst);
        Hybrid.Part first = HandleEngine.partsOf(knife.scale(), cut).get(0);
        Handle handle = SectionPlan.handle(knife);
        MoistureCourse course = setup.moisture()
                .scale(first.material(), first.cut(), handle, knife.finish(), Doubt.NONE)
                .mean();
        double finish =
                setup.moisture().stockFraction(first.material(), knife.build().made(), Doubt.NONE);
        SideMovement side = side(spread.value());
        return new HandleYear(
                ScaleChoice.of(knife.scale(), knife.scale() instanceof Hybrid ? Cut.NONE : cut),
                new MoistureSpan(finish, course.least(), course.most()),
                bands.edges(),
                bands.ends(),
                bands.worstPins(),
                PartsJoint.of(
                        knife.scale(),
                        PartsJoint.usePerStrain(HandleEngine.partsOf(knife.scale(), cut)),
                        spread.map(run -> run.sides().get(0).joint()),
                        handle.scaleThickness().metres(),
                        finish - course.least()),
                Optional.empty(),
                setup.destination().monthAt(side.mid().worstHour()),
                new Grounds(
                        RestsOn.of(knife.scale().evidence(), HandleEngine.partsOf(knife.scale(), cut), drivers),
                        tellsDays ? findings() : List.of(),
                        drivers,
                        Once.of(samples)),
                tellsDays
                        ? new HandleDays(
                                calendarBands(SideMovement.Days::edge),
                                setup.destination().calendarYear(course.dailyMeans()))
                        : HandleDays.NONE,
                tellsDays
                        ? StaySpan.of(
                                setup.destination(), course, () -> side.days().edge())
                        : List.of());
    }

    private Optional<BowYear> bow() {
        return spread.value()
                .bow()
                .map(swing -> new BowYear(
                        spread.of(run -> run.bow().orElseThrow().above()),
                        spread.of(run -> run.bow().orElseThrow().below()),
                        setup.destination().monthAt(swing.worstHour())));
    }

    private Optional<BolsterYear> bolster() {
        return knife.bolster().filter(material -> tellsDays).map(material -> {
            BolsterLine line = new BolsterLine(setup, material);
            Swing scale = cuts.stream()
                    .map(line::scaleOverBolster)
                    .reduce(Swing::with)
                    .orElseThrow();
            return new BolsterYear(
                    new Step(
                            spread.of(run -> run.bolsterOverTang().orElseThrow().below()),
                            spread.of(run -> run.bolsterOverTang().orElseThrow().above())),
                    new Step(Band.exact(scale.below()), Band.exact(scale.above())));
        });
    }

    private List<SideYear> sideYears() {
        List<SideYear> years = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            int index = i;
            SideMovement value = spread.value().sides().get(i);
            years.add(new SideYear(
                    cuts.size() == 1 ? "both" : i == 0 ? "left" : "right",
                    cuts.get(i),
                    spread.of(run -> run.sides().get(index).mid().below()),
                    spread.of(run -> run.sides().get(index).mid().above()),
                    spread.of(run -> run.sides().get(index).free().below()),
                    spread.of(run -> run.sides().get(index).free().above()),
                    value.poses().get(0),
                    value.poses().get(1)));
        }
        return years;
    }

    private FitDays days() {
        SideMovement.Days days = side(spread.value()).days();
        return new FitDays(
                calendarBands(SideMovement.Days::edge),
                calendarBands(SideMovement.Days::free),
                calendar(days.glueUse()),
                bands.middleUse().isPresent() ? calendar(days.middleUse()) : List.of(),
                bands.tearUse().isPresent() ? calendar(days.tearUse()) : List.of(),
                bands.pinUse().isPresent() ? calendar(days.pinUse()) : List.of());
    }

    private List<Band> calendarBands(Function<SideMovement.Days, double[]> of) {
        int count = of.apply(side(spread.value()).days()).length;
        return setup.destination()
                .calendarYear(IntStream.range(0, count)
                        .mapToObj(day -> spread.signed(run -> of.apply(side(run).days())[day]))
                        .toList());
    }

    private List<Double> calendar(double[] days) {
        return setup.destination().calendarYear(Arrays.stream(days).boxed().toList());
    }

    private double coldest() {
        AirSeries air = setup.destination().air();
        return IntStream.range(0, air.size())
                .mapToDouble(air::temperatureCelsius)
                .min()
                .orElseThrow();
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(knife.scale().findings());
        findings.addAll(ScaleElasticity.findings(cuts.stream()
                .flatMap(cut -> HandleEngine.partsOf(knife.scale(), cut).stream())
                .toList()));
        return findings;
    }
}
