package hafthold.report;

import hafthold.decide.KnifeFit;
import hafthold.decide.Likelihood;
import hafthold.decide.Verdict;
import hafthold.simulate.Driver;
import java.util.List;
import java.util.Optional;

/**
 * How sure an answer is and what makes it doubtful, in words.
 *
 * @param style language and units
 */
record DriverWords(BenchStyle style) {
    private static final int NAMED = 3;

    /** The leading inputs with their shares; empty where none stands out. */
    private String sentence(List<Driver> drivers) {
        return style.joined(
                "comma",
                drivers.stream()
                        .limit(NAMED)
                        .map(driver -> style.say("doubt.share", "input", words(driver), "share", share(driver)))
                        .toList());
    }

    /**
     * How often the verdict holds, such as "holds in 83 of 100 samples", and what most samples say where it holds in fewer
     * than half of them; empty where that is not known.
     */
    Optional<String> holds(Likelihood likelihood, Verdict verdict) {
        if (likelihood.yearsThatHold().isEmpty() || verdict == Verdict.UNKNOWN) {
            return Optional.empty();
        }
        long count = likelihood.yearsThatHold().getAsLong();
        String holds =
                style.say("doubt.holds", "count", Long.toString(count), "all", Integer.toString(likelihood.samples()));
        return Optional.of(
                2 * count >= likelihood.samples()
                        ? holds
                        : style.joined(
                                "semicolon",
                                List.of(
                                        holds,
                                        style.say(
                                                "doubt.unlikely",
                                                "verdict",
                                                style.verdict(verdict),
                                                "other",
                                                style.say("doubt.mostly." + verdict.word())))));
    }

    /** What to measure next, as a sentence; empty where nothing stands out. */
    String measureNext(List<Driver> drivers) {
        if (drivers.isEmpty()) {
            return "";
        }
        String first = words(drivers.get(0));
        return drivers.size() == 1
                ? style.say("doubt.measure", "input", first, "share", share(drivers.get(0)))
                : style.say(
                        "doubt.measure-over",
                        "input",
                        first,
                        "share",
                        share(drivers.get(0)),
                        "other",
                        words(drivers.get(1)));
    }

    /**
     * The row about doubt of a bench note.
     *
     * @param isStack whether the doubt is about the length of a stack and not about an edge
     */
    String row(KnifeFit fit, List<Driver> drivers, boolean isStack) {
        Likelihood likelihood = fit.likelihood();
        if (!likelihood.isSampled()) {
            return style.say(drivers.isEmpty() ? "doubt.none" : "doubt.events");
        }
        String holds = holds(likelihood, fit.verdict())
                .map(share -> style.say("doubt.verdict", "holds", share))
                .orElseGet(() -> style.say("doubt.open"));
        return drivers.isEmpty()
                ? style.say("doubt.even", "holds", holds)
                : style.say(isStack ? "doubt.row.stack" : "doubt.row", "holds", holds, "inputs", sentence(drivers));
    }

    private String share(Driver driver) {
        return style.fixed(100 * driver.share(), 0);
    }

    private String words(Driver driver) {
        return style.named("input", driver.input());
    }
}
