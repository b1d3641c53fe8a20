package hafthold.decide;

import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.air.HeldAir;
import hafthold.knife.FitLimits;
import hafthold.knife.FullTangKnife;
import hafthold.knife.KnifeHistory;
import hafthold.knife.MeasuredStep;
import hafthold.knife.WorkState.SettledAir;
import hafthold.numeric.BlurredSample;
import hafthold.quantity.Band;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.Cause;
import hafthold.simulate.Destination;
import hafthold.simulate.HomeYear;
import hafthold.simulate.InputGroup;
import hafthold.simulate.ReturnEngine;
import hafthold.simulate.ReturnSample;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Judges a returned knife: me, him, or the weather?
 *
 * <p>Every cause is drawn alike often; the draws are weighted by how well they explain what was measured. Thresholds are a
 * judgement: chances of causes before measuring, what is still called explained, and from which chance on one cause is
 * named alone.
 *
 * @param classes four classes of work, strictest first
 * @param events what may have happened to it
 * @param sampling draws a cause
 */
public record ClaimJudge(List<FitLimits> classes, List<Event> events, Sampling sampling) {
    /** From there on one cause is named alone. */
    private static final double NAMED_ALONE = 0.6;

    /** And only where it is so many times as likely as the next, the weather aside. */
    private static final double TIMES_THE_NEXT = 4;

    /** From there on the weather is what it is, where it is consistent too. */
    private static final double RATHER = 0.5;

    /** Readings that the causes leave further off than that, in errors of measuring, do not go together. */
    private static final double APART = 1.6;

    /** Readings of one claim lie all within their bands in so many of a hundred knives as usual. */
    private static final double TOGETHER = 0.90;

    /** What lies further out than that is not explained by a cause. */
    private static final double UNHEARD_OF = 0.01;

    /** Chances before measuring: the weather four, each of the others one, of all events together (a judgement). */
    private static final double WEATHER_BEFORE = 4;

    private static final double SUSPECTED_BEFORE = 3;
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;
    private static final int TELLING = 200;
    private static final int YEARS = 60;
    private static final double ENOUGH = 60;
    private static final int MOST_SAMPLES = 3200;

    /** Keeps its own copies. */
    public ClaimJudge {
        classes = List.copyOf(classes);
        events = List.copyOf(events);
    }

    /** One run of all causes. */
    private record Tried(
            ReturnEngine engine,
            Map<Cause, List<ReturnSample>> byCause,
            Map<Cause, Double> before,
            ReturnPosterior posterior) {}

    /**
     * The knife, judged.
     *
     * @param destination where it lives
     * @param findings choices already made
     */
    public Claim judge(FullTangKnife knife, Destination destination, KnifeHistory history, List<Finding> findings) {
        ReturnEngine engine = new ReturnEngine(knife, destination, history, sampling);
        Tried tried = tried(engine, history);
        int samples = sampling.samples();
        while (tried.posterior().effectiveSamples() < ENOUGH && 2 * samples <= MOST_SAMPLES) {
            samples *= 2;
            tried = tried(engine.drawing(new Sampling(samples, sampling.seed())), history);
        }
        List<CauseChance> chances = chances(tried, history);
        List<ClaimRow> rows = rows(tried, history, knife);
        List<ReturnSample> few = tried.posterior().drawn(YEARS);
        ReturnEngine last = tried.engine();
        List<HomeYear> years = few.parallelStream().map(last::homeYear).toList();
        ClaimVerdict verdict = verdict(rows, chances);
        return new Claim(
                knife,
                last.home(),
                history,
                verdict,
                sure(verdict, chances),
                rows,
                chances,
                new ReTrueAdviser(last, knife, limits(knife)).of(few, years),
                new BondedEngine(knife, last.home(), Sampling.VALUE_ONLY).yearWithoutBands(),
                course(last, tried.byCause().get(Cause.WEATHER)),
                samples,
                tried.posterior().effectiveSamples(),
                findings);
    }

    private FitLimits limits(FullTangKnife knife) {
        return classes.stream()
                .filter(limits -> limits.name().equals(knife.build().order().workClass()))
                .findFirst()
                .orElse(classes.get(0));
    }

    private Tried tried(ReturnEngine engine, KnifeHistory history) {
        Map<Cause, List<ReturnSample>> byCause = new LinkedHashMap<>();
        Map<Cause, Double> before = new LinkedHashMap<>();
        for (Cause cause : List.of(Cause.WEATHER, Cause.FINISH, Cause.PLACE)) {
            byCause.put(cause, engine.samples(cause, Optional.empty()));
            before.put(cause, cause.equals(Cause.WEATHER) ? WEATHER_BEFORE : 1);
        }
        for (Event event : events) {
            Cause cause = new Cause(Cause.Kind.USE, event.id());
            byCause.put(cause, engine.samples(cause, Optional.of(event)));
            double all = history.suspected().isEmpty() ? 1 : SUSPECTED_BEFORE;
            before.put(cause, all / events.size());
        }
        double sum = before.values().stream().mapToDouble(Double::doubleValue).sum();
        before.replaceAll((cause, weight) -> weight / sum);
        return new Tried(engine, byCause, before, new ReturnPosterior(history.measured(), byCause, before));
    }

    private List<CauseChance> chances(Tried tried, KnifeHistory history) {
        Map<Cause, Double> after = tried.posterior().chances();
        List<CauseChance> chances = new ArrayList<>();
        tried.byCause()
                .forEach((cause, draws) -> chances.add(new CauseChance(
                        cause, tried.before().get(cause), after.getOrDefault(cause, 0.0), explains(draws, history))));
        chances.sort(Comparator.comparingDouble(CauseChance::after).reversed());
        return chances;
    }

    private static boolean explains(List<ReturnSample> draws, KnifeHistory history) {
        int count = history.measured().size();
        return IntStream.range(0, count)
                .allMatch(i -> blurred(draws, history.measured().get(i), i)
                                .asFarOut(history.measured().get(i).step().metres())
                        >= UNHEARD_OF / count);
    }

    private static BlurredSample blurred(List<ReturnSample> draws, MeasuredStep measured, int step) {
        return new BlurredSample(
                draws.stream().mapToDouble(draw -> draw.steps()[step]).toArray(), measured.deviationMetres());
    }

    private static List<ClaimRow> rows(Tried tried, KnifeHistory history, FullTangKnife knife) {
        List<MeasuredStep> measured = history.measured();
        List<ReturnSample> usual = tried.byCause().get(Cause.WEATHER);
        List<ReturnSample> telling = tried.posterior().drawn(TELLING);
        double[] nominal = tried.engine().nominal();
        List<double[][]> shares =
                telling.parallelStream().map(tried.engine()::shares).toList();
        List<double[]> settled = knife.build().made() instanceof SettledAir air
                ? telling.parallelStream()
                        .map(draw -> tried.engine()
                                .settled(
                                        draw,
                                        new HeldAir(
                                                air.temperature().celsius(),
                                                air.humidity().fraction())))
                        .toList()
                : List.of();
        List<ClaimRow> rows = new ArrayList<>();
        for (int i = 0; i < measured.size(); i++) {
            int step = i;
            BlurredSample readings = blurred(usual, measured.get(i), i);
            double reading = measured.get(i).step().metres();
            double low = readings.quantile(LOW);
            double high = readings.quantile(HIGH);
            double value = Math.max(low, Math.min(high, nominal[i]));
            rows.add(new ClaimRow(
                    measured.get(i),
                    new Band(low, value, high),
                    readings.asFarOut(reading),
                    readings.asFarOut(reading) >= (1 - TOGETHER) / measured.size(),
                    tried.posterior().fitted(i),
                    parts(reading, nominal[i], telling, shares, i),
                    settled.isEmpty()
                            ? Optional.empty()
                            : Optional.of(ReturnPosterior.spread(settled.stream()
                                    .mapToDouble(left -> left[step])
                                    .toArray()))));
        }
        return rows;
    }

    private static List<ClaimRow.Share> parts(
            double reading, double nominal, List<ReturnSample> draws, List<double[][]> shares, int step) {
        List<ClaimRow.Share> parts = new ArrayList<>();
        parts.add(new ClaimRow.Share(ClaimRow.Part.WEATHER, Band.exact(nominal)));
        parts.add(of(ClaimRow.Part.FINISH, group(shares, InputGroup.FINISH, step)));
        parts.add(of(ClaimRow.Part.PLACE, group(shares, InputGroup.PLACE, step)));
        parts.add(of(
                ClaimRow.Part.USE,
                draws.stream().mapToDouble(draw -> draw.byUse()[step]).toArray()));
        parts.add(of(ClaimRow.Part.MATERIAL, group(shares, InputGroup.MATERIAL, step)));
        parts.add(of(
                ClaimRow.Part.REST,
                draws.stream().mapToDouble(draw -> reading - draw.steps()[step]).toArray()));
        return parts;
    }

    private static double[] group(List<double[][]> shares, InputGroup group, int step) {
        return shares.stream()
                .mapToDouble(share -> share[InputGroup.ALL.indexOf(group)][step])
                .toArray();
    }

    private static ClaimRow.Share of(ClaimRow.Part part, double[] values) {
        return new ClaimRow.Share(part, ReturnPosterior.spread(values));
    }

    private static ClaimVerdict verdict(List<ClaimRow> rows, List<CauseChance> chances) {
        boolean apart = rows.stream()
                .anyMatch(row -> Math.abs(row.of(ClaimRow.Part.REST).value())
                        > APART * row.measured().error().metres());
        if (apart || chances.stream().noneMatch(CauseChance::fits)) {
            return ClaimVerdict.NOT_EXPLAINED;
        }
        double weather = chance(chances, Cause.Kind.WEATHER);
        if (rows.stream().allMatch(ClaimRow::consistent) && weather >= RATHER) {
            return ClaimVerdict.WEATHER;
        }
        List<Cause.Kind> others = Stream.of(Cause.Kind.values())
                .filter(kind -> kind != Cause.Kind.WEATHER)
                .sorted(Comparator.comparingDouble((Cause.Kind kind) -> -chance(chances, kind)))
                .toList();
        double first = chance(chances, others.get(0));
        boolean alone = first >= NAMED_ALONE && first >= TIMES_THE_NEXT * chance(chances, others.get(1));
        return alone ? ClaimVerdict.valueOf(others.get(0).name()) : ClaimVerdict.OPEN;
    }

    private static double chance(List<CauseChance> chances, Cause.Kind kind) {
        return chances.stream()
                .filter(chance -> chance.cause().kind() == kind)
                .mapToDouble(CauseChance::after)
                .sum();
    }

    private static double sure(ClaimVerdict verdict, List<CauseChance> chances) {
        return switch (verdict) {
            case OPEN, NOT_EXPLAINED -> 0;
            default -> chance(chances, Cause.Kind.valueOf(verdict.name()));
        };
    }

    /** The edge through the year where it lives, as usual. */
    private static List<Band> course(ReturnEngine engine, List<ReturnSample> usual) {
        List<HomeYear> years = usual.subList(0, Math.min(YEARS, usual.size())).parallelStream()
                .map(engine::homeYear)
                .toList();
        HomeYear value = engine.homeYear();
        return IntStream.range(0, CommonYear.DAYS)
                .mapToObj(day -> {
                    Band spread = ReturnPosterior.spread(
                            years.stream().mapToDouble(year -> year.edge()[day]).toArray());
                    double middle = value.edge()[day];
                    return new Band(Math.min(spread.low(), middle), middle, Math.max(spread.high(), middle));
                })
                .toList();
    }
}
