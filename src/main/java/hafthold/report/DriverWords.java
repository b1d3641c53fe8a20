package hafthold.report;

import hafthold.simulate.FitYear.Driver;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What makes an answer doubtful, in words. */
final class DriverWords {
    private static final int NAMED = 3;

    private DriverWords() {}

    /** The leading inputs with their shares. */
    static String sentence(List<Driver> drivers) {
        return drivers.stream()
                .limit(NAMED)
                .filter(driver -> driver.share() >= 0.01)
                .map(driver -> words(driver.input()) + String.format(Locale.ROOT, " (%.0f %%)", 100 * driver.share()))
                .collect(Collectors.joining(", "));
    }

    private static String words(String input) {
        return switch (input) {
            case "swelling" -> "how far this piece swells";
            case "sorption" -> "how much water it holds";
            case "diffusivity" -> "how fast water gets in";
            case "thermal_expansion" -> "how far it grows with heat";
            case "place_humidity" -> "how damp the place is";
            case "hygrometer" -> "your hygrometer";
            case "cut" -> "how true the cut is";
            case "stiffness" -> "how stiff it is";
            case "relaxation" -> "how far stress eases with time";
            case "strength" -> "how strong it is";
            default -> input;
        };
    }
}
