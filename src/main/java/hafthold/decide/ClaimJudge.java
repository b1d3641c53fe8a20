package hafthold.decide;

import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.knife.FitLimits;
import hafthold.knife.FullTangKnife;
import hafthold.knife.KnifeHistory;
import hafthold.knife.MeasuredStep;
import hafthold.quantity.Band;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.Cause;
import hafthold.simulate.Destination;
import hafthold.simulate.HomeYear;
import hafthold.simulate.ReturnEngine;
import hafthold.simulate.ReturnSample;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import hafthold.source.Message;
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
 * <p>Every cause is drawn alike often; the draws are weighted by how well they explain what was measured. How likely the
 * causes are before anything was measured is a judgement.
 *
 * @param classes four classes of work, strictest first
 * @param events what may have happened to it
 * @param sampling draws a cause
 */
public record ClaimJudge(List<FitLimits> classes, List<Event> events, Sampling sampling) {
    /** Chances before measuring: the weather four, each of the others one, of all events together (a judgement). */
    private static final double WEATHER_BEFORE = 4;

    private static final double SUSPECTED_BEFORE = 3;
    /** A cause that moves no reading by that share of its error of measuring, root mean square, cannot be told by it. */
    private static final double SEEN = 0.25;

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
            List<Cause> unseen,
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
        List<ClaimRow> rows = new ClaimRows(
                        tried.engine(), tried.posterior(), tried.byCause().get(Cause.WEATHER))
                .of(knife, history.measured());
        List<ReturnSample> few = tried.posterior().drawn(YEARS);
        ReturnEngine last = tried.engine();
        List<HomeYear> years = few.parallelStream().map(last::homeYear).toList();
        ClaimVerdict verdict = ClaimRule.verdict(
                rows, chances, history.isOnlyAtHome(), tried.posterior().effectiveSamples());
        return new Claim(
                knife,
                last.home(),
                history,
                verdict,
                ClaimRule.sure(verdict, chances),
                rows,
                chances,
                new ReTrueAdviser(last, knife, limits(knife)).of(few, years),
                new BondedEngine(knife, last.home(), Sampling.VALUE_ONLY).yearWithoutBands(),
                course(last, tried.byCause().get(Cause.WEATHER)),
                samples,
                tried.posterior().effectiveSamples(),
                Stream.of(findings.stream(), likelyEvents(chances), unseen(tried))
                        .flatMap(some -> some)
                        .toList());
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
        List<Cause> unseen = byCause.keySet().stream()
                .filter(cause -> !cause.equals(Cause.WEATHER))
                .filter(cause -> !isSeen(byCause.get(cause), byCause.get(Cause.WEATHER), history.measured()))
                .toList();
        unseen.forEach(cause -> {
            byCause.remove(cause);
            before.remove(cause);
        });
        double sum = before.values().stream().mapToDouble(Double::doubleValue).sum();
        before.replaceAll((cause, weight) -> weight / sum);
        return new Tried(engine, byCause, before, unseen, new ReturnPosterior(history.measured(), byCause, before));
    }

    /** Whether a cause moves any reading so far that it could be told from the weather: draws of one number go together. */
    private static boolean isSeen(List<ReturnSample> draws, List<ReturnSample> weather, List<MeasuredStep> measured) {
        return IntStream.range(0, measured.size()).anyMatch(reading -> {
            double error = measured.get(reading).deviationMetres();
            double meanSquare = IntStream.range(0, draws.size())
                    .mapToDouble(
                            n -> draws.get(n).steps()[reading] - weather.get(n).steps()[reading])
                    .map(moved -> moved * moved / (error * error))
                    .average()
                    .orElseThrow();
            return meanSquare >= SEEN * SEEN;
        });
    }

    /** What the readings could not show if it had been. */
    private static Stream<Finding> unseen(Tried tried) {
        List<Message> causes = tried.unseen().stream().map(Cause::called).toList();
        return causes.isEmpty()
                ? Stream.empty()
                : Stream.of(new Finding(
                        Finding.Kind.DEFAULT,
                        "causes",
                        Message.of("note.claim-unseen", Map.of("causes", Message.list("bench.comma", causes)))));
    }

    /** The rules of the events that are worth naming. */
    private Stream<Finding> likelyEvents(List<CauseChance> chances) {
        return events.stream()
                .filter(event -> chances.stream()
                        .anyMatch(chance -> chance.after() >= Claim.WORTH_NAMING
                                && chance.cause().event().equals(event.id())))
                .map(Event::finding);
    }

    private List<CauseChance> chances(Tried tried, KnifeHistory history) {
        Map<Cause, Double> after = tried.posterior().chances();
        List<CauseChance> chances = new ArrayList<>();
        tried.byCause()
                .forEach((cause, draws) -> chances.add(new CauseChance(
                        cause,
                        tried.before().get(cause),
                        after.getOrDefault(cause, 0.0),
                        ClaimRows.explains(draws, history.measured()))));
        chances.sort(Comparator.comparingDouble(CauseChance::after).reversed());
        return chances;
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
