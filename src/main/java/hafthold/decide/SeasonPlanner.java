package hafthold.decide;

import hafthold.air.CommonYear;
import hafthold.decide.PlaceComparison.Candidate;
import hafthold.decide.SeasonAnswer.Conditioning;
import hafthold.decide.SeasonAnswer.CutChoice;
import hafthold.knife.BenchStock;
import hafthold.knife.Blank;
import hafthold.knife.FitLimits;
import hafthold.knife.SeasonLimits;
import hafthold.knife.WorkState.SettledAir;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.BlankYear;
import hafthold.simulate.BlankYears;
import hafthold.simulate.Conditions;
import hafthold.simulate.FinishState;
import hafthold.simulate.HandleEngine;
import hafthold.simulate.HandleYear;
import hafthold.simulate.RestTime;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Plans glue-up and finishing through the workshop's own year.
 *
 * <p>The customer's year does not depend on the week of sanding: it is worked out once, and every week only sets another
 * zero, the moisture of the blank in that week.
 */
public final class SeasonPlanner {
    private static final List<Cut> CUTS = List.of(Cut.FLAT, Cut.RIFT, Cut.QUARTER, Cut.CROSS);

    private static final double LIVING_ROOM_CELSIUS = 20;
    private static final double LEAST_BLANK_METRES = 1e-3;

    /** Stock counts as settled when its mean is this near to where it goes, kg/kg. */
    private static final double SETTLED_FRACTION = 0.005;

    private final Judgement judgement;
    private final FitLimits held;
    private final SeasonRule rule;
    private final Sampling sampling;

    /**
     * A planner.
     *
     * @param classes four classes of work, strictest first
     * @param workClass what the work is judged for, the name of one of them; the class after it must hold
     * @param limits when stock is fit to be glued and sanded
     * @param sampling how often the customer's year is run with other figures
     */
    public SeasonPlanner(List<FitLimits> classes, String workClass, SeasonLimits limits, Sampling sampling) {
        this.judgement = Judgement.forWork(classes, workClass);
        int index = classes.stream().map(FitLimits::name).toList().indexOf(workClass);
        this.held = classes.get(Math.min(classes.size() - 1, index + 1));
        this.rule = new SeasonRule(limits);
        this.sampling = sampling;
    }

    /** What every answer of one season shares. */
    private record Setup(HandleEngine engine, Conditions conditions, BenchStock stock, BlankYears blanks, int day) {}

    /**
     * The plan for some materials.
     *
     * @param conditions handle, finish, destination; the air it says it is made in is not looked at
     * @param shop air that the stock lies in, a year that is followed by itself
     * @param stock how it is kept, what was read of it today, how long a scale lies glued before it is sanded
     * @param today the day that is asked about
     * @param candidates materials in the cuts they are asked for, one answer each, in their order
     * @param findings choices already made
     * @throws hafthold.simulate.OutsideModelsException when the moisture of a blank does not come round within the year
     */
    public Season plan(
            Conditions conditions,
            ShopAir shop,
            BenchStock stock,
            LocalDate today,
            List<Candidate> candidates,
            List<Finding> findings) {
        HandleEngine engine = new HandleEngine(conditions, sampling);
        engine.prepare(candidates.stream()
                .flatMap(candidate -> HandleEngine.partsOf(candidate.material(), candidate.cut()).stream())
                .toList());
        int day = Season.day(today);
        BlankYears blanks =
                new BlankYears(stock, shop.air(), shop.humidityDoubtFraction(), day, Optional.of(conditions));
        Setup setup = new Setup(engine, conditions, stock, blanks, day);
        List<Finding> all = new ArrayList<>(findings);
        List<SeasonAnswer> answers = new ArrayList<>();
        for (Candidate candidate : candidates) {
            answers.add(answer(setup, candidate, all));
        }
        return new Season(
                conditions,
                shop,
                stock,
                today,
                held,
                rule.limits(),
                answers,
                sampling.samples() > 1 ? sampling.samples() : 0,
                all);
    }

    private SeasonAnswer answer(Setup setup, Candidate candidate, List<Finding> findings) {
        ScaleMaterial material = candidate.material();
        BlankYear blank = setup.blanks().year(material, candidate.cut());
        List<HandleYear> years = setup.engine()
                .years(
                        material,
                        candidate.cut(),
                        IntStream.range(0, BlankYear.WEEKS)
                                .mapToObj(week -> sanded(setup, blank, week))
                                .toList());
        findings.addAll(years.get(0).grounds().findings());
        List<SeasonWeek> weeks = IntStream.range(0, years.size())
                .parallel()
                .mapToObj(week -> week(blank.weeks().get(week), years.get(week)))
                .toList();
        int now = BlankYear.weekOf(setup.day());
        Optional<Conditioning> conditioning =
                conditioning(setup, candidate, blank.weeks().get(now), years.get(now));
        return new SeasonAnswer(
                years.get(0).scale(),
                blank,
                weeks,
                now,
                DaySpan.of(blank.weeks(), rule.best(weeks, conditioning)),
                DaySpan.of(blank.weeks(), rule.worst(weeks)),
                DaySpan.of(blank.weeks(), rule.good(weeks, conditioning)),
                rule.finish(weeks, now, setup.day(), conditioning),
                rule.glue(weeks, now, setup.day(), conditioning),
                conditioning,
                cuts(setup, material, now, weeks.indexOf(SeasonRule.least(weeks))));
    }

    private SeasonWeek week(BlankYear.Week blank, HandleYear year) {
        return new SeasonWeek(
                blank,
                year.brief(),
                judgement.verdict(year),
                judgement.reasons(year),
                judgement.seasonalUse(year),
                judgement.asksForNoChange(year),
                Allowance.of(year.days().edgeOffset(), held));
    }

    /** The best of the airs that may be tried, at today's temperature. */
    private Optional<Conditioning> conditioning(
            Setup setup, Candidate candidate, BlankYear.Week today, HandleYear year) {
        Material leading = HandleEngine.partsOf(candidate.material(), candidate.cut())
                .get(0)
                .material();
        double celsius = roomCelsius(today.celsius());
        List<ConditioningRule.Air> airs = ConditioningRule.airs(
                leading, year.moisture().lowest(), year.moisture().highest(), celsius);
        if (airs.isEmpty()) {
            return Optional.empty();
        }
        List<FinishState> states = airs.stream()
                .map(air -> FinishState.settled(
                        new SettledAir(new RelativeHumidity(air.humidityFraction()), new Temperature(celsius))))
                .toList();
        List<HandleYear> years = setup.engine().years(candidate.material(), candidate.cut(), states);
        return IntStream.range(0, airs.size())
                .boxed()
                .min(Comparator.comparing((Integer i) -> judgement.verdict(years.get(i)))
                        .thenComparingDouble(i -> judgement.seasonalUse(years.get(i))))
                .map(i -> conditioning(setup, candidate, airs.get(i), years.get(i), today));
    }

    private Conditioning conditioning(
            Setup setup, Candidate candidate, ConditioningRule.Air air, HandleYear year, BlankYear.Week today) {
        double celsius = roomCelsius(today.celsius());
        double scale = setup.conditions().handle().scaleThickness().metres();
        Blank sawn = new Blank(
                new Length(Math.max(LEAST_BLANK_METRES, scale)),
                setup.stock().blank().width(),
                setup.stock().blank().length(),
                new Blank.Open(true, true, true));
        return new Conditioning(
                celsius,
                air.humidityFraction(),
                air.moistureFraction(),
                days(candidate, setup.stock().blank(), air, today, celsius),
                days(candidate, sawn, air, today, celsius),
                judgement.verdict(year),
                judgement.asksForNoChange(year),
                year.brief());
    }

    private FinishState sanded(Setup setup, BlankYear blank, int week) {
        int firstDay = blank.weeks().get(week).firstDay();
        int gluedIn = BlankYear.weekOf(Math.floorMod(firstDay - setup.stock().gluedDays(), CommonYear.DAYS));
        return blank.sandedIn(week, room(blank, week), room(blank, gluedIn));
    }

    private Temperature room(BlankYear blank, int week) {
        return new Temperature(roomCelsius(blank.weeks().get(week).celsius()));
    }

    /** Nobody works where it is too cold or hot for glue: stock that is kept there is taken into a living room. */
    private double roomCelsius(double shop) {
        boolean isFit = shop >= rule.limits().glueCoolestCelsius()
                && shop <= rule.limits().glueWarmestCelsius();
        return isFit ? shop : LIVING_ROOM_CELSIUS;
    }

    /** Days until a blank is nearly as dry as the air makes it. */
    private static Band days(
            Candidate candidate, Blank blank, ConditioningRule.Air air, BlankYear.Week today, double celsius) {
        return new RestTime(celsius, air.humidityFraction(), SETTLED_FRACTION)
                .days(candidate.material(), candidate.cut(), blank, today.meanFraction())
                .orElse(Band.exact(0));
    }

    /** The cuts of a wood side by side, sanded today and in a best week. */
    private List<CutChoice> cuts(Setup setup, ScaleMaterial material, int now, int best) {
        if (material.usualCut() == Cut.NONE || material.usualCut() == Cut.BURL) {
            return List.of();
        }
        return CUTS.parallelStream()
                .map(cut -> {
                    BlankYear blank = setup.blanks().year(material, cut);
                    List<HandleYear> years = setup.engine()
                            .years(material, cut, List.of(sanded(setup, blank, now), sanded(setup, blank, best)));
                    return new CutChoice(
                            cut,
                            years.get(0).brief(),
                            judgement.verdict(years.get(0)),
                            years.get(1).brief(),
                            judgement.verdict(years.get(1)));
                })
                .toList();
    }
}
