package hafthold.decide;

import hafthold.knife.FitLimits;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * How often a verdict and each class of work hold when every input is drawn from its range.
 *
 * @param samples how many years were run; 0 where only values were asked for
 * @param verdictHolds share of the years that bear the verdict out, 0 to 1: those that come out at it or better where it is
 *     a good one, at it or worse where it is a bad one; empty where nothing was sampled or a limit could not be judged
 * @param classes each class of work with the share of the years that keep all of its limits, strictest first;
 *     none where a limit could not be judged
 */
public record Likelihood(int samples, OptionalDouble verdictHolds, List<ClassShare> classes) {
    /** Nothing was sampled. */
    public static final Likelihood NONE = open(0);

    /** Keeps its own copy. */
    public Likelihood {
        classes = List.copyOf(classes);
    }

    /**
     * A class of work and how often it is kept.
     *
     * @param limits the class
     * @param keeps share of the years that keep all of its limits, 0 to 1
     */
    public record ClassShare(FitLimits limits, double keeps) {}

    /** True where there is something to tell. */
    public boolean isSampled() {
        return samples > 0;
    }

    /** Of how many years the verdict holds; empty where that is not known. */
    public OptionalLong yearsThatHold() {
        return verdictHolds.isPresent()
                ? OptionalLong.of(Math.round(verdictHolds.getAsDouble() * samples))
                : OptionalLong.empty();
    }

    /** Years of which it is not known whether they bear the verdict out, as a limit could not be judged. */
    static Likelihood open(int samples) {
        return new Likelihood(samples, OptionalDouble.empty(), List.of());
    }
}
