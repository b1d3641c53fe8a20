package hafthold.simulate;

import hafthold.material.Hybrid;
import hafthold.numeric.PlischkeCosineSensitivity;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;

/**
 * Which inputs make an answer doubtful: how much of its variance would be gone on average if one of them were known, and
 * whether the answer rises or falls with it.
 */
final class Drivers {
    private static final int WAVES = 4;

    /** Shares below so many standard deviations of chance are not told. */
    private static final double OVER_CHANCE = 3;

    private Drivers() {}

    /**
     * Inputs by share, largest first, those that chance might have made left out. Of inputs that one measurement settles,
     * such as tangential and radial movement of one material, the larger share counts; those of several materials add.
     *
     * @param draws where the inputs lie
     * @param parts what the answer is about
     * @param answers the answer in each sample; empty for no samples
     */
    static List<Driver> of(Draws draws, List<Hybrid.Part> parts, double[] answers) {
        if (answers.length == 0) {
            return List.of();
        }
        Map<String, Driver> byWord = new HashMap<>();
        for (Input input : Input.OF_ORDER) {
            if (parts.stream().anyMatch(part -> input.matters(part.material(), part.cut()))) {
                byWord.merge(input.word(), driver(input, draws.of(input), answers), Drivers::larger);
            }
        }
        Set<String> seen = new HashSet<>();
        parts.stream().filter(part -> seen.add(part.material().id())).forEach(part -> {
            Map<String, Driver> own = new HashMap<>();
            for (Input input : Input.OF_MATERIAL) {
                if (input.matters(part.material(), part.cut())) {
                    own.merge(input.word(), driver(input, draws.of(input, part.material()), answers), Drivers::larger);
                }
            }
            own.values().stream()
                    .filter(driver -> isOverChance(driver, answers.length))
                    .forEach(driver -> byWord.merge(driver.input(), driver, Drivers::together));
        });
        return byWord.values().stream()
                .filter(driver -> isOverChance(driver, answers.length))
                .sorted(Comparator.comparingDouble(Driver::share).reversed().thenComparing(Driver::input))
                .toList();
    }

    private static boolean isOverChance(Driver driver, int samples) {
        return driver.share() > OVER_CHANCE * PlischkeCosineSensitivity.chance(samples, WAVES);
    }

    private static Driver driver(Input input, double[] positions, double[] answers) {
        boolean still = Arrays.stream(answers).allMatch(answer -> answer == answers[0]);
        return new Driver(
                input.word(),
                Math.min(1, PlischkeCosineSensitivity.share(positions, answers, WAVES)),
                still ? 0 : new SpearmansCorrelation().correlation(positions, answers));
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
