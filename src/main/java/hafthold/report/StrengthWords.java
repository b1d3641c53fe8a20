package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.PinYear;
import java.util.Locale;
import java.util.Optional;

/** How much of what they bear the parts of a bonded handle use, in words. */
final class StrengthWords {
    private static final double HARDLY = 0.01;

    private StrengthWords() {}

    /** What the glue line carries. */
    static String glue(FitYear year) {
        return "carries up to " + use(year.glueUse()) + " of what it bears, worst in "
                + MonthWord.of(year.glueMonth()) + ": "
                + megapascals(year.glueShear()) + " sliding and " + megapascals(year.gluePeel())
                + " peeling over its last 2 mm";
    }

    /** What the glue's hold does to the scale. */
    static String scale(FitYear year) {
        if (year.middleUse().isEmpty() || year.tearUse().isEmpty()) {
            return "held by the glue; how much of what it bears across the grain that takes is unknown: "
                    + Wording.english().say("bench.open.measure");
        }
        Band middle = year.middleUse().get();
        Band tear = year.tearUse().get();
        if (middle.value() < HARDLY && tear.value() < HARDLY) {
            return "no pull across the grain to speak of";
        }
        return "held by the glue it uses " + use(middle) + " of what it bears across the grain in its middle, "
                + use(tear) + " where the glued edge pulls on it";
    }

    /** The scale beside a pin; empty where it is hardly worked. */
    static Optional<String> besidePin(PinYear pin) {
        if (pin.crackUse().isEmpty()) {
            return Optional.of("how much of what the scale bears before it splits is unknown");
        }
        return pin.crackUse()
                .filter(use -> use.value() > HARDLY)
                .map(use -> "uses " + use(use) + " of what the scale bears before it splits");
    }

    private static String use(Band use) {
        if (use.isExact()) {
            return String.format(Locale.ROOT, "%.0f" + Paragraph.HOLD + "%%", 100 * use.value());
        }
        return String.format(
                Locale.ROOT,
                "%.0f" + Paragraph.HOLD + "%% (%.0f–%.0f)",
                100 * use.value(),
                100 * use.low(),
                100 * use.high());
    }

    private static String megapascals(Band pascals) {
        return String.format(Locale.ROOT, "%.1f" + Paragraph.HOLD + "MPa", pascals.value() / 1e6);
    }
}
