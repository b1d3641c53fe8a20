package hafthold.decide;

import hafthold.air.EventSchedule;
import hafthold.knife.FitLimits;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Knife;
import hafthold.knife.TangStackKnife;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.BondedEventEngine;
import hafthold.simulate.BondedEventYear;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.simulate.Sampling;
import hafthold.simulate.StackEngine;
import hafthold.simulate.StackYear;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Holds one knife against one place: runs the year, judges it, looks for what to change.
 *
 * @param classes four classes of work, strictest first
 * @param offer what the shop could use instead
 * @param sampling how often a year is run with other figures
 */
public record KnifeJudge(List<FitLimits> classes, Offer offer, Sampling sampling) {

    /** Judges with as many samples as usual. */
    public KnifeJudge(List<FitLimits> classes, Offer offer) {
        this(classes, offer, Sampling.USUAL);
    }

    /** Keeps its own copy. */
    public KnifeJudge {
        classes = List.copyOf(classes);
    }

    /**
     * The knife in that place.
     *
     * @param findings choices already made
     */
    public KnifeFit fit(Knife knife, Destination destination, List<Finding> findings) {
        Judgement judgement = Judgement.forWork(classes, knife.build().order().workClass());
        if (knife instanceof TangStackKnife stack) {
            StackEngine engine = new StackEngine(stack, destination, sampling);
            StackYear year = engine.year();
            return new StackFit(
                    stack,
                    destination,
                    year,
                    judgement.verdict(year),
                    judgement.reasons(year),
                    judgement.likelihood(year),
                    new StackAdviser(judgement, offer, engine, stack, year).advice(),
                    all(findings, year.whole().grounds().findings()));
        }
        FullTangKnife full = (FullTangKnife) knife;
        BondedEngine engine = new BondedEngine(full, destination, sampling);
        FitYear year = engine.year();
        return new FullTangFit(
                full,
                destination,
                year,
                judgement.verdict(year),
                judgement.reasons(year),
                judgement.likelihood(year),
                new FullTangAdviser(judgement, offer, engine, full, year).advice(),
                all(findings, year.whole().grounds().findings()));
    }

    /**
     * The knife in that place, with what happens to it besides the weather.
     *
     * @param schedule one event or more
     * @param findings choices already made
     */
    public EventFit fit(FullTangKnife knife, Destination destination, EventSchedule schedule, List<Finding> findings) {
        Judgement judgement = Judgement.forWork(classes, knife.build().order().workClass());
        BondedEngine engine = new BondedEngine(knife, destination, sampling);
        FitYear quiet = engine.year();
        BondedEventYear events = new BondedEventEngine(knife, destination, schedule).year(quiet);
        FitYear year = events.year();
        List<Advice> advice = new FullTangAdviser(judgement, offer, engine, knife, quiet).advice();
        return new EventFit(
                new FullTangFit(
                        knife,
                        destination,
                        year,
                        judgement.verdict(year),
                        judgement.reasons(year),
                        judgement.likelihood(year),
                        advice,
                        all(findings, year.whole().grounds().findings())),
                Optional.of(events),
                advice.stream().findFirst().map(first -> {
                    FullTangKnife changed = (FullTangKnife) first.knife();
                    FitYear after = new BondedEventEngine(changed, destination, schedule)
                            .year(engine.of(changed).yearWithoutBands())
                            .year();
                    return new EventFit.Remedied(judgement.verdict(after), judgement.reasons(after));
                }));
    }

    private static List<Finding> all(List<Finding> some, List<Finding> more) {
        List<Finding> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }
}
