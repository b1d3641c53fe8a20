package hafthold.simulate;

import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.numeric.PlischkeCosineSensitivity;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.ranking.NaturalRanking;

/**
 * Which inputs make an answer doubtful: how much of its variance would be gone on average if one of them were known, and
 * whether the answer rises or falls with it.
 */
final class Drivers {
    private static final int WAVES = 4;

    /** Shares below so many standard deviations of chance are not told. */
    private static final double OVER_CHANCE = 3;

    private final Draws draws;
    private final Optional<PlischkeCosineSensitivity> sensitivity;

    /** Of answers to these draws. */
    Drivers(Draws draws) {
        this.draws = draws;
        this.sensitivity = draws.samples() == 0
                ? Optional.empty()
                : Optional.of(new PlischkeCosineSensitivity(draws.samples(), WAVES));
    }

    /**
     * Inputs by share, largest first, those that chance might have made left out. Of inputs that one measurement settles,
     * such as tangential and radial movement of one material, the larger share counts; those of several materials add.
     *
     * @param parts what the answer is about
     * @param answers the answer in each sample; empty for no samples
     */
    List<Driver> of(List<Hybrid.Part> parts, double[] answers) {
        if (answers.length == 0) {
            return List.of();
        }
        double[] ranks = new NaturalRanking().rank(answers);
        Map<String, Driver> byWord = new HashMap<>();
        for (Input input : Input.OF_ORDER) {
            parts.stream()
                    .filter(part -> input.matters(part.material(), part.cut()))
                    .findFirst()
                    .ifPresent(part -> take(input, part.material(), answers, ranks, byWord));
        }
        Set<String> seen = new HashSet<>();
        parts.stream().filter(part -> seen.add(part.material().id())).forEach(part -> {
            Map<String, Driver> own = new HashMap<>();
            for (Input input : Input.OF_MATERIAL) {
                if (input.matters(part.material(), part.cut())) {
                    take(input, part.material(), answers, ranks, own);
                }
            }
            own.values().forEach(driver -> byWord.merge(driver.input(), driver, Drivers::together));
        });
        return byWord.values().stream()
                .sorted(Comparator.comparingDouble(Driver::share).reversed().thenComparing(Driver::input))
                .toList();
    }

    /** Adds an input unless chance might have made its share. */
    private void take(
            Input input, Material material, double[] answers, double[] answerRanks, Map<String, Driver> byWord) {
        int[] ranks = draws.ranks(input, material);
        double share = Math.min(1, sensitivity.orElseThrow().share(ranks, answers));
        if (share > OVER_CHANCE * PlischkeCosineSensitivity.chance(answers.length, WAVES)) {
            double correlation = new PearsonsCorrelation()
                    .correlation(Arrays.stream(ranks).asDoubleStream().toArray(), answerRanks);
            byWord.merge(input.word(), new Driver(input.word(), share, correlation), Drivers::larger);
        }
    }

    private static Driver larger(Driver one, Driver other) {
        return one.share() >= other.share() ? one : other;
    }

    private static Driver together(Driver one, Driver other) {
        return new Driver(
                one.input(),
                Math.min(1, one.share() + other.share()),
                larger(one, other).rankCorrelation());
    }
}
