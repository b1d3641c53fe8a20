package hafthold.report;

import hafthold.decide.Likelihood;
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

    /** How often the verdict holds, such as "holds in 83 of 100 samples"; empty where that is not known. */
    Optional<String> holds(Likelihood likelihood) {
        return likelihood.yearsThatHold().isPresent()
                ? Optional.of(style.say(
                        "doubt.holds",
                        "count",
                        Long.toString(likelihood.yearsThatHold().getAsLong()),
                        "all",
                        Integer.toString(likelihood.samples())))
                : Optional.empty();
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
    String row(Likelihood likelihood, List<Driver> drivers, boolean isStack) {
        if (!likelihood.isSampled()) {
            return style.say("doubt.none");
        }
        String holds = holds(likelihood)
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
