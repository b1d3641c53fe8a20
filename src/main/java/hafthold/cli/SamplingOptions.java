package hafthold.cli;

import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.Map;
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
                        ? Message.of("note.ranges.none")
                        : Message.of(
                                "note.ranges",
                                Map.of(
                                        "samples", Message.number(sampling.samples(), 0),
                                        "seed", Message.verbatim(Long.toString(sampling.seed())))));
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
