package hafthold.decide;

import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.knife.FitLimits;
import hafthold.knife.FullTangKnife;
import hafthold.knife.KnifeHistory;
import hafthold.quantity.Band;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.Destination;
import hafthold.simulate.HomeYear;
import hafthold.simulate.ReturnEngine;
import hafthold.simulate.ReturnSample;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Judges a returned knife: me, him, or the weather?
 *
 * <p>Every cause is drawn alike often; the draws are weighted by how well they explain what was measured.
 *
 * @param classes four classes of work, strictest first
 * @param events what may have happened to it
 * @param sampling draws a cause
 */
public record ClaimJudge(List<FitLimits> classes, List<Event> events, Sampling sampling) {
    private static final int YEARS = 60;

    /** Keeps its own copies. */
    public ClaimJudge {
        classes = List.copyOf(classes);
        events = List.copyOf(events);
    }

    /**
     * The knife, judged.
     *
     * @param destination where it lives
     * @param findings choices already made
     */
    public Claim judge(FullTangKnife knife, Destination destination, KnifeHistory history, List<Finding> findings) {
        ReturnEngine engine = new ReturnEngine(knife, destination, history, sampling);
        TriedCauses tried = TriedCauses.of(
                samples -> DrawnCauses.of(
                        samples == sampling.samples() ? engine : engine.drawing(new Sampling(samples, sampling.seed())),
                        events,
                        history),
                sampling.samples(),
                history.measured());
        WeighedClaim weighed = WeighedClaim.of(tried, knife, history);
        List<ReturnSample> few = tried.posterior().drawn(YEARS);
        ReturnEngine last = tried.drawn().engine();
        List<HomeYear> years = few.parallelStream().map(last::homeYear).toList();
        return new Claim(
                knife,
                last.home(),
                history,
                weighed.verdict(),
                weighed.sure(),
                weighed.rows(),
                weighed.chances(),
                new ReTrueAdviser(last, knife, limits(knife)).of(few, years),
                new BondedEngine(knife, last.home(), Sampling.VALUE_ONLY).yearWithoutBands(),
                course(last, tried.drawn().usual()),
                last.thinsOverFree(),
                tried.drawn().samples(),
                tried.posterior().effectiveSamples(),
                Stream.of(findings.stream(), likelyEvents(CauseChance.events(weighed.chances())), tried.unseen())
                        .flatMap(some -> some)
                        .toList());
    }

    private FitLimits limits(FullTangKnife knife) {
        return classes.stream()
                .filter(limits -> limits.name().equals(knife.build().order().workClass()))
                .findFirst()
                .orElse(classes.get(0));
    }

    /** The rules of the events that are worth naming. */
    private Stream<Finding> likelyEvents(List<CauseChance> chances) {
        return events.stream()
                .filter(event -> chances.stream()
                        .anyMatch(chance -> chance.after() >= Claim.WORTH_NAMING
                                && chance.cause().event().equals(event.id())))
                .map(Event::finding);
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
