package hafthold.decide;

import hafthold.knife.MeasuredStep;
import hafthold.simulate.Cause;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Stream;

/**
 * Everything that may lie behind a return, weighted by what was measured.
 *
 * @param drawn what would then have been measured
 * @param measured what was measured
 * @param posterior all draws by their weight
 */
record TriedCauses(DrawnCauses drawn, List<MeasuredStep> measured, ReturnPosterior posterior) {
    private static final double ENOUGH = 60;
    private static final int MOST_SAMPLES = 3200;

    /**
     * Tries them all with as many draws as it takes.
     *
     * @param draws as many draws of each cause as are asked for
     * @param first how many to begin with
     */
    static TriedCauses of(IntFunction<DrawnCauses> draws, int first, List<MeasuredStep> measured) {
        int samples = first;
        TriedCauses tried = of(draws.apply(samples), measured);
        while (tried.posterior.effectiveSamples() < ENOUGH && 2 * samples <= MOST_SAMPLES) {
            samples = more(samples, tried.posterior.effectiveSamples());
            tried = of(draws.apply(samples), measured);
        }
        return tried;
    }

    private static TriedCauses of(DrawnCauses drawn, List<MeasuredStep> measured) {
        return new TriedCauses(drawn, measured, new ReturnPosterior(measured, drawn.byCause(), drawn.before()));
    }

    /** Twice as many, or as often twice as the draws that count want. */
    private static int more(int samples, double effective) {
        int more = 2 * samples;
        while (more * effective < ENOUGH * samples && 2 * more <= MOST_SAMPLES) {
            more *= 2;
        }
        return more;
    }

    /** Every cause that was shown and its chances, the likeliest first. */
    List<CauseChance> chances() {
        Map<Cause, Double> after = posterior.chances();
        List<CauseChance> chances = new ArrayList<>();
        drawn.byCause()
                .forEach((cause, draws) -> chances.add(new CauseChance(
                        cause,
                        drawn.before().get(cause),
                        after.getOrDefault(cause, 0.0),
                        ClaimRows.explains(draws, measured))));
        chances.sort(Comparator.comparingDouble(CauseChance::after).reversed());
        return chances;
    }

    /** What the readings could not show if it had been: lately or ever, and longer ago only. */
    Stream<Finding> unseen() {
        List<Cause> ever =
                drawn.hidden().stream().filter(cause -> !cause.longAgo()).toList();
        List<Cause> longAgo = drawn.hidden().stream()
                .filter(Cause::longAgo)
                .filter(cause -> !ever.contains(Cause.lately(cause.event())))
                .toList();
        return Stream.concat(unseen("note.claim-unseen", ever), unseen("note.claim-unseen-long-ago", longAgo));
    }

    private static Stream<Finding> unseen(String key, List<Cause> causes) {
        return causes.isEmpty()
                ? Stream.empty()
                : Stream.of(new Finding(
                        Finding.Kind.DEFAULT,
                        "causes",
                        Message.of(
                                key,
                                Map.of(
                                        "causes",
                                        Message.list(
                                                "bench.comma",
                                                causes.stream()
                                                        .map(Cause::called)
                                                        .toList())))));
    }
}
