package hafthold.decide;

import hafthold.decide.Atlas.Cell;
import hafthold.decide.Atlas.Line;
import hafthold.decide.Atlas.Site;
import hafthold.decide.PlaceComparison.Candidate;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import hafthold.simulate.HandleEngine;
import hafthold.simulate.HandleYear;
import hafthold.simulate.OutsideModelsException;
import hafthold.simulate.Sampling;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * Runs many materials through the years of many places.
 *
 * <p>A place is one piece of work: its air is worked out once, materials whose slabs are alike share a year of moisture,
 * and only the year's worst is kept. Places, and the slabs of each, are shared among threads; the answer does not depend on
 * how many.
 *
 * @param judgement gives the verdicts
 * @param sampling how bands are found; a material of which nothing is known has its band in any case, as its verdict
 *     hangs on it
 * @param threads at work at once, 1 or more
 */
public record AtlasSurvey(Judgement judgement, Sampling sampling, int threads) {

    /** Rejects less than one thread. */
    public AtlasSurvey {
        if (threads < 1) {
            throw new IllegalArgumentException("a survey needs a thread at least, got " + threads);
        }
    }

    /**
     * The atlas.
     *
     * @param sites where to look, one at least
     * @param order the order for one of them
     * @param destination each of them in the setting of the order; asked by several threads
     * @param candidates what to look at, one at least
     * @param findings choices common to all answers
     * @param placesDone told the number of places done after each, by one thread at a time
     * @throws OutsideModelsException when the models cannot answer for a material in a place; the message names both
     */
    public Atlas atlas(
            List<Site> sites,
            Conditions order,
            Function<Site, Destination> destination,
            List<Candidate> candidates,
            List<Finding> findings,
            IntConsumer placesDone) {
        Counter counter = new Counter(placesDone);
        Engines engines = new Engines(new HandleEngine(order, sampling), new HandleEngine(order, Sampling.USUAL));
        // Streams that run side by side inside a place stay in this pool, so that no more threads work than were asked
        // for.
        ForkJoinPool workers = new ForkJoinPool(threads);
        List<List<Cell>> columns = new ArrayList<>();
        try {
            List<Future<List<Cell>>> work = new ArrayList<>();
            for (Site site : sites) {
                work.add(workers.submit(() -> {
                    List<Cell> column = column(engines, destination.apply(site), candidates);
                    counter.another();
                    return column;
                }));
            }
            for (Future<List<Cell>> column : work) {
                columns.add(column.get());
            }
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException fault ? fault : new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the survey was interrupted", e);
        } finally {
            workers.shutdownNow();
        }
        return gathered(sites, order, candidates, columns, findings);
    }

    private List<Cell> column(Engines engines, Destination destination, List<Candidate> candidates) {
        HandleEngine engine = engines.asked().at(destination);
        HandleEngine banded = candidates.stream().anyMatch(AtlasSurvey::hangsOnBand)
                ? engines.banded().at(destination)
                : engine;
        engine.prepare(candidates.stream()
                .flatMap(candidate -> HandleEngine.partsOf(candidate.material(), candidate.cut()).stream())
                .toList());
        List<HandleYear> years = new ArrayList<>();
        List<OptionalDouble> holds = new ArrayList<>();
        for (Candidate candidate : candidates) {
            try {
                HandleYear year =
                        (hangsOnBand(candidate) ? banded : engine).year(candidate.material(), candidate.cut());
                holds.add(judgement.likelihood(year).verdictHolds());
                years.add(year.brief());
            } catch (OutsideModelsException e) {
                throw new OutsideModelsException(destination.id() + ": " + e.getMessage());
            }
        }
        int[] rank = ranks(years);
        return IntStream.range(0, years.size())
                .mapToObj(i -> new Cell(
                        rank[i],
                        years.get(i),
                        judgement.verdict(years.get(i)),
                        judgement.seasonalUse(years.get(i)),
                        holds.get(i)))
                .toList();
    }

    private static boolean hangsOnBand(Candidate candidate) {
        return candidate.material().evidence() == Evidence.UNKNOWN;
    }

    /** From 1; equal ones keep their order. */
    private int[] ranks(List<HandleYear> years) {
        int[] rank = new int[years.size()];
        List<Integer> bestFirst = IntStream.range(0, years.size())
                .boxed()
                .sorted(Comparator.comparing(years::get, judgement.bestFirst()))
                .toList();
        for (int i = 0; i < rank.length; i++) {
            rank[bestFirst.get(i)] = i + 1;
        }
        return rank;
    }

    private static Atlas gathered(
            List<Site> sites,
            Conditions conditions,
            List<Candidate> candidates,
            List<List<Cell>> columns,
            List<Finding> findings) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            int at = i;
            List<Cell> cells = columns.stream().map(column -> column.get(at)).toList();
            HandleYear first = cells.get(0).year();
            lines.add(new Line(
                    first.scale().id(),
                    first.scale().name(),
                    first.scale().family(),
                    first.scale().cut(),
                    candidates.get(i).material().evidence(),
                    candidates.get(i).material().findings(),
                    cells));
        }
        return new Atlas(
                conditions.destination().setting().id(),
                conditions.destination().setting().rule(),
                conditions.handle(),
                conditions.madeTemperature(),
                conditions.madeHumidity(),
                conditions.finish().name(),
                sites,
                lines,
                findings);
    }

    /** Engines for the sampling asked for and for what needs its band. */
    private record Engines(HandleEngine asked, HandleEngine banded) {}

    /** Counts places done. */
    private static final class Counter {
        private final IntConsumer told;
        private int done;

        Counter(IntConsumer told) {
            this.told = told;
        }

        synchronized void another() {
            done++;
            told.accept(done);
        }
    }
}
