package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.PinYear;
import java.util.Optional;

/**
 * How much of what they bear the parts of a bonded handle use, in words.
 *
 * @param style language and units
 */
record StrengthWords(BenchStyle style) {
    private static final double HARDLY = 0.01;

    /** What the glue line carries. */
    String glue(FitYear year) {
        return style.say(
                "strength.glue",
                "use",
                use(year.glueUse()),
                "month",
                style.month(year.glueMonth()),
                "shear",
                megapascals(year.glueShear()),
                "peel",
                megapascals(year.gluePeel()),
                "end",
                Paragraph.held(style.dimension(FitYear.GLUE_END)));
    }

    /** What the glue's hold does to the scale. */
    String scale(FitYear year) {
        if (year.middleUse().isEmpty() || year.tearUse().isEmpty()) {
            return style.say("strength.scale.open", "measure", style.say("open.measure"));
        }
        Band middle = year.middleUse().get();
        Band tear = year.tearUse().get();
        return middle.value() < HARDLY && tear.value() < HARDLY
                ? style.say("strength.scale.none")
                : style.say("strength.scale", "middle", use(middle), "edge", use(tear));
    }

    /** The scale beside a pin; empty where it is hardly worked. */
    Optional<String> besidePin(PinYear pin) {
        if (pin.crackUse().isEmpty()) {
            return Optional.of(style.say("pins.use.open"));
        }
        return pin.crackUse().filter(use -> use.value() > HARDLY).map(use -> style.say("pins.use", "use", use(use)));
    }

    /** A use of strength with its range; never as all of it where it is more. */
    private String use(Band use) {
        String value = ReasonWords.use(style, use.value());
        return use.isExact()
                ? value
                : value + " (" + style.fixed(100 * use.low(), 0) + "–" + style.fixed(100 * use.high(), 0) + ")";
    }

    private String megapascals(Band pascals) {
        return style.fixed(pascals.value() / 1e6, 1) + Paragraph.HOLD + "MPa";
    }
}
