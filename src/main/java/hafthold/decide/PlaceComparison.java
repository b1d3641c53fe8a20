package hafthold.decide;

import hafthold.air.AirSeries;
import hafthold.air.EventSchedule;
import hafthold.decide.Comparison.DayOfAir;
import hafthold.material.Cut;
import hafthold.material.ScaleMaterial;
import hafthold.simulate.Conditions;
import hafthold.simulate.EventEngine;
import hafthold.simulate.EventYear;
import hafthold.simulate.HandleEngine;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Once;
import hafthold.simulate.Sampling;
import hafthold.simulate.Settling;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Runs many materials through one customer's year and ranks them: least movement over its seasonal limit first. */
public final class PlaceComparison {
    private static final int HOURS_A_DAY = 24;
    private static final int UNRANKED = 0;

    private final Judgement judgement;
    private final Sampling sampling;

    /** Compares by the given judgement, with as many samples as usual. */
    public PlaceComparison(Judgement judgement) {
        this(judgement, Sampling.USUAL);
    }

    /**
     * Compares by the given judgement.
     *
     * @param sampling how often a year is run with other figures
     */
    public PlaceComparison(Judgement judgement, Sampling sampling) {
        this.judgement = judgement;
        this.sampling = sampling;
    }

    /**
     * One entry of the comparison.
     *
     * @param material what the scale is made of
     * @param cut how it lies
     */
    public record Candidate(ScaleMaterial material, Cut cut) {}

    /**
     * Holds the candidates against one place.
     *
     * @param findings choices common to all answers
     */
    public Comparison compare(Conditions conditions, List<Candidate> candidates, List<Finding> findings) {
        return comparison(conditions, rank(conditions, candidates), findings);
    }

    /**
     * Holds the candidates against one place and what happens there: movements, ranks and verdicts are the worse of the year
     * and its events.
     *
     * @param schedule what happens and when
     * @param findings choices common to all answers
     */
    public EventComparison compare(
            Conditions conditions, EventSchedule schedule, List<Candidate> candidates, List<Finding> findings) {
        HandleEngine engine = ready(conditions, candidates);
        EventEngine events = new EventEngine(conditions, schedule);
        List<EventAnswer> answers = candidates.parallelStream()
                .map(candidate -> new EventAnswer(
                        events.year(
                                candidate.material(),
                                candidate.cut(),
                                engine.year(candidate.material(), candidate.cut())),
                        engine.settling(candidate.material(), candidate.cut())))
                .sorted(Comparator.comparing(EventAnswer::year, judgement.bestFirstWithEvents()))
                .toList();
        List<Comparison.Ranked> ranked = new ArrayList<>();
        for (EventAnswer answer : answers) {
            EventYear year = answer.year();
            ranked.add(new Comparison.Ranked(
                    ranked.size() + 1,
                    year.year(),
                    judgement.verdict(year),
                    judgement.reasons(year),
                    answer.settling()));
        }
        return new EventComparison(
                comparison(conditions, ranked, findings),
                answers.stream().map(EventAnswer::year).toList());
    }

    /** A year with events, and how soon a change shows. */
    private record EventAnswer(EventYear year, Optional<Settling> settling) {}

    private static Comparison comparison(
            Conditions conditions, List<Comparison.Ranked> ranked, List<Finding> findings) {
        return new Comparison(
                conditions.destination().id(),
                conditions.destination().name(),
                conditions.destination().setting().id(),
                conditions.destination().lives(),
                conditions.handle(),
                conditions.madeTemperature(),
                conditions.madeHumidity(),
                conditions.finish().name(),
                daily(conditions.destination().outdoors()),
                daily(conditions.destination().repeatingYear()),
                ranked,
                findings);
    }

    /**
     * The candidates, best first; equal ones keep their order. Work is shared among threads, the answer does not depend
     * on how.
     */
    List<Comparison.Ranked> rank(Conditions conditions, List<Candidate> candidates) {
        HandleEngine engine = ready(conditions, candidates);
        List<Comparison.Ranked> judged = candidates.parallelStream()
                .map(candidate -> judged(
                        engine.year(candidate.material(), candidate.cut()),
                        engine.settling(candidate.material(), candidate.cut())))
                .toList();
        List<Comparison.Ranked> ranked = new ArrayList<>();
        judged.stream()
                .sorted(Comparator.comparing(Comparison.Ranked::year, judgement.bestFirst()))
                .forEach(answer -> ranked.add(answer.at(ranked.size() + 1)));
        return ranked;
    }

    /** An engine that has worked out the moisture of all candidates side by side. */
    private HandleEngine ready(Conditions conditions, List<Candidate> candidates) {
        HandleEngine engine = new HandleEngine(conditions, sampling);
        engine.prepare(candidates.stream()
                .flatMap(candidate -> HandleEngine.partsOf(candidate.material(), candidate.cut()).stream())
                .toList());
        return engine;
    }

    private Comparison.Ranked judged(HandleYear year, Optional<Settling> settling) {
        return new Comparison.Ranked(
                UNRANKED,
                year,
                judgement.verdict(year),
                judgement.reasons(year),
                settling,
                Once.from(() -> judgement.likelihood(year)));
    }

    private static List<DayOfAir> daily(AirSeries air) {
        List<DayOfAir> days = new ArrayList<>();
        for (int start = 0; start + HOURS_A_DAY <= air.size(); start += HOURS_A_DAY) {
            double temperature = 0;
            double humidity = 0;
            for (int hour = start; hour < start + HOURS_A_DAY; hour++) {
                temperature += air.temperatureCelsius(hour) / HOURS_A_DAY;
                humidity += air.relativeHumidityFraction(hour) / HOURS_A_DAY;
            }
            days.add(new DayOfAir(temperature, humidity));
        }
        return days;
    }
}
