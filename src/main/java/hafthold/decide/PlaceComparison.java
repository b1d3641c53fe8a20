package hafthold.decide;

import hafthold.air.AirSeries;
import hafthold.air.EventSchedule;
import hafthold.decide.Comparison.DayOfAir;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.ScaleMaterial;
import hafthold.simulate.Conditions;
import hafthold.simulate.EventEngine;
import hafthold.simulate.EventYear;
import hafthold.simulate.HandleEngine;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Sampling;
import hafthold.simulate.Settling;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Runs many materials through one customer's year and ranks them: least movement over its seasonal limit first. */
public final class PlaceComparison {
    private static final int HOURS_A_DAY = 24;

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
        return comparison(conditions, candidates, rank(conditions, candidates), findings);
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
        HandleEngine engine = new HandleEngine(conditions, sampling);
        EventEngine events = new EventEngine(conditions, schedule);
        List<EventYear> years = candidates.parallelStream()
                .map(candidate -> events.year(
                        candidate.material(), candidate.cut(), engine.year(candidate.material(), candidate.cut())))
                .sorted(judgement.bestFirstWithEvents())
                .toList();
        List<Comparison.Ranked> ranked = new ArrayList<>();
        for (EventYear year : years) {
            ranked.add(new Comparison.Ranked(
                    ranked.size() + 1, year.year(), judgement.verdict(year), judgement.reasons(year)));
        }
        return new EventComparison(comparison(conditions, candidates, ranked, findings), years);
    }

    private static Comparison comparison(
            Conditions conditions, List<Candidate> candidates, List<Comparison.Ranked> ranked, List<Finding> findings) {
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
                ranked.stream()
                        .map(answer -> withSettling(answer, conditions, candidates))
                        .toList(),
                findings);
    }

    private static Comparison.Ranked withSettling(
            Comparison.Ranked answer, Conditions conditions, List<Candidate> candidates) {
        HandleYear year = answer.year();
        Optional<Settling> settling = candidates.stream()
                .filter(candidate ->
                        candidate.material().id().equals(year.scale().id()))
                .filter(candidate -> candidate.material() instanceof Hybrid
                        || candidate.cut() == year.scale().cut())
                .findFirst()
                .flatMap(candidate -> Settling.of(conditions, candidate.material(), candidate.cut()));
        return new Comparison.Ranked(
                answer.rank(), year, answer.verdict(), answer.reasons(), settling, answer.likelihood());
    }

    /**
     * The candidates, best first; equal ones keep their order. Work is shared among threads, the answer does not depend
     * on how.
     */
    List<Comparison.Ranked> rank(Conditions conditions, List<Candidate> candidates) {
        HandleEngine engine = new HandleEngine(conditions, sampling);
        engine.prepare(candidates.stream()
                .flatMap(candidate -> HandleEngine.partsOf(candidate.material(), candidate.cut()).stream())
                .toList());
        List<HandleYear> years = candidates.parallelStream()
                .map(candidate -> engine.year(candidate.material(), candidate.cut()))
                .toList();
        List<HandleYear> ordered = years.stream().sorted(judgement.bestFirst()).toList();
        List<Comparison.Ranked> ranked = new ArrayList<>();
        for (HandleYear year : ordered) {
            ranked.add(new Comparison.Ranked(
                    ranked.size() + 1,
                    year,
                    judgement.verdict(year),
                    judgement.reasons(year),
                    Optional.empty(),
                    judgement.likelihood(year)));
        }
        return ranked;
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
