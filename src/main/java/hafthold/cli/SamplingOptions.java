package hafthold.cli;

import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import picocli.CommandLine.Option;

/** How the doubt about an answer is sampled. */
final class SamplingOptions {
    @Option(
            names = "--samples",
            paramLabel = "N",
            description = "how often each year is run with figures drawn from their ranges; 1 for none, which is quick"
                    + " and leaves no band, else 30 to 10000 (default: 100; atlas: 1)")
    private Integer samples;

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

    /** The sampling asked for, as often as is usual where nobody said how often. */
    Sampling sampling() {
        return sampling(Sampling.USUAL.samples());
    }

    /** Likewise, for a command with another usual number. */
    Sampling sampling(int usual) {
        try {
            return new Sampling(samples == null ? usual : samples, seed);
        } catch (IllegalArgumentException e) {
            throw new WrongUsageException("--samples: " + e.getMessage());
        }
    }
}
