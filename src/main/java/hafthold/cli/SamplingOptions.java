package hafthold.cli;

import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import picocli.CommandLine.Option;

/** How the doubt about an answer is sampled. */
final class SamplingOptions {
    @Option(
            names = "--samples",
            paramLabel = "N",
            defaultValue = "100",
            description = "how often the year is run with figures drawn from their ranges; 1 for none, which leaves no"
                    + " band, else 30 to 10000 (default: ${DEFAULT-VALUE})")
    private int samples;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "number the draws start from; the same one gives the same answer (default: ${DEFAULT-VALUE})")
    private long seed;

    /** What ranges are, for those who read the answer. */
    static Finding finding(Sampling sampling) {
        return new Finding(
                Finding.Kind.ESTIMATE,
                "ranges",
                sampling.samples() == 1
                        ? "Every figure was taken at its value: no range is given, and none is meant."
                        : "A range holds the middle 80 % of " + sampling.samples()
                                + " years run with figures drawn from their"
                                + " own ranges (seed " + sampling.seed() + "), whose ends are taken as 5 and 95 %"
                                + " points; the value is the year with every figure at its value.");
    }

    /** The sampling asked for. */
    Sampling sampling() {
        try {
            return new Sampling(samples, seed);
        } catch (IllegalArgumentException e) {
            throw new WrongUsageException("--samples: " + e.getMessage());
        }
    }
}
