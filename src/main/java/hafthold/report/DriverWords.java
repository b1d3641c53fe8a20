package hafthold.report;

import hafthold.decide.Likelihood;
import hafthold.simulate.Driver;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** How sure an answer is and what makes it doubtful, in words. */
final class DriverWords {
    private static final int NAMED = 3;

    private DriverWords() {}

    /** The leading inputs with their shares; empty where none stands out. */
    static String sentence(List<Driver> drivers) {
        return drivers.stream()
                .limit(NAMED)
                .map(driver -> words(driver.input()) + String.format(Locale.ROOT, " (%.0f %%)", 100 * driver.share()))
                .collect(Collectors.joining(", "));
    }

    /** How often the verdict holds, such as "holds in 83 of 100 samples"; empty where that is not known. */
    static Optional<String> holds(Likelihood likelihood) {
        return likelihood.yearsThatHold().isPresent()
                ? Optional.of("holds in " + likelihood.yearsThatHold().getAsLong() + " of " + likelihood.samples()
                        + " samples")
                : Optional.empty();
    }

    /** What to measure next, as a sentence; empty where nothing stands out. */
    static String measureNext(List<Driver> drivers) {
        if (drivers.isEmpty()) {
            return "";
        }
        String first = "Most worth knowing better: " + words(drivers.get(0).input())
                + String.format(
                        Locale.ROOT,
                        " (%.0f %% of the doubt)",
                        100 * drivers.get(0).share());
        return drivers.size() == 1
                ? first + "."
                : first + ", which matters more than " + words(drivers.get(1).input()) + ".";
    }

    /** The row about doubt of a bench note. */
    static String row(Likelihood likelihood, List<Driver> drivers) {
        if (!likelihood.isSampled()) {
            return "not looked into: every figure was taken at its value, so ranges are left out";
        }
        String holds = holds(likelihood)
                .map(share -> "the verdict " + share)
                .orElse("how often a verdict would hold is not known, as a limit could not be judged");
        return drivers.isEmpty()
                ? holds + "; no single figure stands out"
                : holds + "; the doubt about the edge comes from " + sentence(drivers);
    }

    private static String words(String input) {
        return switch (input) {
            case "swelling" -> "how far this piece swells";
            case "sorption" -> "how much water it holds";
            case "diffusivity" -> "how fast water gets in";
            case "thermal_expansion" -> "how far it grows with heat";
            case "place_humidity" -> "how damp the place is";
            case "weather" -> "how dry or damp a year it gets";
            case "habits" -> "how the household heats and airs";
            case "hygrometer" -> "your hygrometer";
            case "stock" -> "whether the stock had settled";
            case "cut" -> "how true the cut is";
            case "run_out" -> "how straight the grain runs";
            case "stiffness" -> "how stiff it is";
            case "relaxation" -> "how far stress eases with time";
            case "strength" -> "how strong it is";
            case "softening" -> "when it softens";
            default -> input;
        };
    }
}
