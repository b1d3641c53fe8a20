package hafthold.simulate;

import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.air.HeldAir;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.knife.KnifeHistory;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * One returned knife, bonded, from final sanding to the days it was measured on.
 *
 * <p>Read it as the method statement: moisture along the way through the workshop, the customer's and the bench, under any
 * draw of the inputs; the steps it makes at the points that were measured; the same for each cause that may lie behind,
 * some inputs drawn from further out or an event added; and of any such draw, how much of it is whose affair, what comes
 * back in the air of final sanding, and how the edge would stand through the customer's year.
 */
public final class ReturnEngine {
    private static final double DRY_CELSIUS = 20;
    private static final double DRY_FRACTION = 0.2;

    private final FullTangKnife knife;
    private final KnifeHistory history;
    private final BondedEngine.Setup setup;
    private final LayerMoisture year;
    private final Handle handle;
    private final List<Doubt> doubts;
    private final List<LocalDate> days;
    private final List<List<DatedMoisture>> scales;
    private final List<DatedMoisture> liners;
    private final double[] celsius;
    private final UseTraces traces;

    /**
     * An engine for one knife.
     *
     * @param destination where it lives
     * @param sampling how many draws for each cause; bands are wanted
     */
    public ReturnEngine(FullTangKnife knife, Destination destination, KnifeHistory history, Sampling sampling) {
        this.knife = knife;
        this.history = history;
        Destination home = repeating(destination);
        year = new LayerMoisture(home);
        Draws draws = new Draws(sampling);
        doubts = draws.doubts();
        setup = new BondedEngine.Setup(knife, home, draws, year, new ConcurrentHashMap<>(), new ConcurrentHashMap<>());
        handle = SectionPlan.handle(knife);
        days = history.measured().stream()
                .map(MeasuredStep::on)
                .distinct()
                .sorted()
                .toList();
        WayMoisture way = new WayMoisture(
                new KnifeWay(knife, destination, history),
                destination,
                history,
                days,
                year,
                knife.build().made());
        scales = new ArrayList<>();
        for (Cut cut : knife.sides()) {
            scales.add(HandleEngine.partsOf(knife.scale(), cut).stream()
                    .map(part -> way.of(
                            part.material(),
                            PartSlab.scale(part.material(), part.cut(), handle, knife.finish(), Doubt.NONE),
                            LayerMoisture.LAYERS))
                    .toList());
        }
        liners = knife.liners().stream()
                .map(liner -> way.of(
                        liner, PartSlab.liner(liner, handle.tangWidth().metres() / 2, knife.finish(), Doubt.NONE), 1))
                .toList();
        celsius = way.celsius();
        traces = new UseTraces(setup, history);
    }

    private ReturnEngine(ReturnEngine other, Sampling sampling) {
        knife = other.knife;
        history = other.history;
        year = other.year;
        handle = other.handle;
        days = other.days;
        scales = other.scales;
        liners = other.liners;
        celsius = other.celsius;
        traces = other.traces;
        Draws draws = new Draws(sampling);
        doubts = draws.doubts();
        setup = new BondedEngine.Setup(
                knife, other.home(), draws, year, other.setup.influences(), other.setup.splits());
    }

    /** The same with other draws; shares what was computed. */
    public ReturnEngine drawing(Sampling sampling) {
        return new ReturnEngine(this, sampling);
    }

    private static Destination repeating(Destination destination) {
        return destination.repeatsFromStart()
                ? destination
                : new Destination(
                        destination.id(),
                        destination.name(),
                        destination.setting(),
                        destination.outdoors(),
                        destination.repeatingYear(),
                        destination.humidityDoubtFraction(),
                        Optional.empty());
    }

    /** Where the knife lives, its year as it repeats. */
    public Destination home() {
        return setup.destination();
    }

    /** Steps at the value of every input, m, one a measured step. */
    public double[] nominal() {
        return steps(Doubt.NONE);
    }

    /** What would have been measured if a cause lay behind: one draw after another. */
    public List<ReturnSample> samples(Cause cause, Optional<Event> event) {
        List<ReturnSample> draws = IntStream.range(0, doubts.size())
                .parallel()
                .mapToObj(number -> new ReturnSample(
                        cause,
                        number,
                        steps(cause.widened(doubts.get(number))),
                        new double[history.measured().size()]))
                .toList();
        return event.map(happened -> samples(cause, happened, draws)).orElse(draws);
    }

    /** The same of an event from draws without it, which it adds to. */
    public List<ReturnSample> samples(Cause cause, Event event, List<ReturnSample> without) {
        traces.follow(event);
        return without.stream()
                .map(draw -> {
                    double[] steps = draw.steps().clone();
                    double[] use = traces.left(cause, draw.number(), doubts.get(draw.number()));
                    Arrays.setAll(steps, i -> steps[i] + use[i]);
                    return new ReturnSample(cause, draw.number(), steps, use);
                })
                .toList();
    }

    private double[] steps(Doubt doubt) {
        KnifeMoments moments = new KnifeMoments(
                scales.stream()
                        .map(parts ->
                                parts.stream().map(part -> part.course(doubt)).toList())
                        .toList(),
                liners.stream().map(liner -> liner.course(doubt)).toList(),
                celsius);
        PointSteps steps = new PointSteps(setup, doubt, moments);
        return read(steps, step -> days.indexOf(step.on()));
    }

    private double[] read(PointSteps steps, ToIntFunction<MeasuredStep> moment) {
        return history.measured().stream()
                .mapToDouble(step -> steps.at(step.point())[moment.applyAsInt(step)])
                .toArray();
    }

    /**
     * How much each group of inputs adds to what all are at their value, for one draw: the mean over all orders in which
     * the groups can be let go (Shapley 1953), so that the parts add up to the whole. What an event made is not in it.
     *
     * @return m, by the place of the group, one a measured step
     */
    public double[][] shares(ReturnSample sample) {
        Doubt drawn = sample.cause().widened(doubts.get(sample.number()));
        return ShapleyShares.of(InputGroup.ALL.size(), set -> steps(only(drawn, set)));
    }

    /** The draw with the inputs of some groups, the others at their value. */
    private static Doubt only(Doubt drawn, int set) {
        return new Doubt(
                input -> isIn(set, input) ? drawn.ofOrder().applyAsDouble(input) : 0,
                (input, material) -> isIn(set, input) ? drawn.ofMaterial().applyAsDouble(input, material) : 0,
                (input, year) -> isIn(set, input) ? drawn.ofSeason().applyAsDouble(input, year) : 0);
    }

    private static boolean isIn(int set, Input input) {
        return (set >> InputGroup.ALL.indexOf(InputGroup.of(input)) & 1) == 1;
    }

    /**
     * The measured points of one draw after the knife has come to rest in air that is held, m; lasting losses stay. Where
     * the bench's hygrometer was not checked, the air is what it reads, as it was at finishing.
     */
    public double[] settled(ReturnSample sample, HeldAir air) {
        Doubt doubt = sample.cause().widened(doubts.get(sample.number()));
        boolean isChecked =
                history.bench().filter(KnifeHistory.BenchRest::checked).isPresent();
        HeldAir held = isChecked ? air : new HeldAir(air.celsius(), doubt.madeHumidity(air.humidityFraction()));
        PointSteps steps = new PointSteps(setup, doubt, PointSteps.settled(knife, doubt, held));
        double[] left = read(steps, step -> 0);
        if (sample.cause().hasEvent()) {
            double[] set = traces.set(sample.cause(), sample.number(), doubts.get(sample.number()));
            Arrays.setAll(left, i -> left[i] - set[i]);
        }
        return left;
    }

    /**
     * How far the glued scale thins in dry air, at rest and with everything at its value, over what the free movement of its
     * thickness makes: held in width, it gives way in thickness.
     */
    public double thinsOverFree() {
        HeldAir dry = new HeldAir(DRY_CELSIUS, DRY_FRACTION);
        return new PointSteps(setup, Doubt.NONE, PointSteps.settled(knife, Doubt.NONE, dry)).faceOverFree()[0];
    }

    /** The year that repeats where the knife lives, for one draw. */
    public HomeYear homeYear(ReturnSample sample) {
        return homeYear(sample.cause().widened(doubts.get(sample.number())));
    }

    /** The same at the value of every input. */
    public HomeYear homeYear() {
        return homeYear(Doubt.NONE);
    }

    private HomeYear homeYear(Doubt doubt) {
        List<List<LayeredCourse>> courses = knife.sides().stream()
                .map(cut -> HandleEngine.partsOf(knife.scale(), cut).stream()
                        .map(part -> daily(year.scale(part.material(), part.cut(), handle, knife.finish(), doubt)))
                        .toList())
                .toList();
        List<LayeredCourse> sheets = knife.liners().stream()
                .map(liner -> daily(year.liner(liner, handle.tangWidth().metres() / 2, knife.finish(), doubt)))
                .toList();
        double[] warmth = new double[CommonYear.HOURS];
        Arrays.setAll(warmth, home().air()::temperatureCelsius);
        PointSteps steps =
                new PointSteps(setup, doubt, new KnifeMoments(courses, sheets, YearSeries.dailyMean(warmth)));
        return new HomeYear(
                steps.at(MeasuringPoint.EDGES), courses.get(0).get(0).mean().hourly());
    }

    private static LayeredCourse daily(LayeredCourse hourly) {
        return new LayeredCourse(
                Arrays.stream(hourly.layer()).map(YearSeries::dailyMean).toArray(double[][]::new),
                new MoistureCourse(
                        YearSeries.dailyMean(hourly.mean().hourly()),
                        YearSeries.dailyMean(hourly.mean().moment())));
    }

    /** Humidity of air of a temperature with which the leading part of the scale, as drawn, comes to hold a moisture. */
    public double humidityFor(ReturnSample sample, double moistureFraction, double celsius) {
        Doubt doubt = sample.cause().widened(doubts.get(sample.number()));
        Hybrid.Part leading =
                HandleEngine.partsOf(knife.scale(), knife.sides().get(0)).get(0);
        return BalancedCourse.humidity(leading.material(), doubt, moistureFraction, celsius);
    }
}
