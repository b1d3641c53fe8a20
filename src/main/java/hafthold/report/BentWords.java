package hafthold.report;

import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.simulate.FitYear.BolsterYear;
import hafthold.simulate.FitYear.BowYear;
import java.util.ArrayList;
import java.util.List;

/**
 * How a handle bows and what its bolster does, in words.
 *
 * @param style language and units
 */
record BentWords(BenchStyle style) {
    private static final double SHOWS = 0.005e-3;
    private static final double BOW_SHOWS = 0.02e-3;

    /** The bolster against the tang, and the scale against the bolster. */
    String bolster(BolsterYear bolster) {
        return style.say(
                "bolster",
                "step",
                either(
                        style,
                        bolster.againstTang().shy(),
                        "bolster.below",
                        bolster.againstTang().proud(),
                        "bolster.above",
                        "bolster.level"),
                "scale",
                either(
                        style,
                        bolster.scale().shy(),
                        "bolster.scale-shy",
                        bolster.scale().proud(),
                        "bolster.scale-proud",
                        "flush"));
    }

    /** The bow of a handle of a length whose scales differ. */
    String bow(BowYear bow, Length length) {
        Band left = bow.hollowLeft();
        Band right = bow.hollowRight();
        if (Math.max(left.value(), right.value()) < BOW_SHOWS) {
            return style.say("bow.none");
        }
        boolean rather = left.value() >= right.value();
        Band other = rather ? right : left;
        String text = style.say(
                "bow",
                "size",
                new BenchLength(rather ? left : right).sized(style),
                "length",
                style.size(length),
                "side",
                style.named("of-two", rather ? "left" : "right"),
                "month",
                style.month(bow.month()));
        return other.value() < BOW_SHOWS
                ? text
                : style.joined(
                        "semicolon",
                        List.of(text, style.say("bow.other", "size", new BenchLength(other).hundredths(style))));
    }

    /** Those of two opposite movements that show, such as "0.14 mm above the face"; the word for none otherwise. */
    static String either(BenchStyle style, Band one, String oneKey, Band other, String otherKey, String none) {
        List<String> parts = new ArrayList<>();
        if (one.value() > SHOWS) {
            parts.add(style.say(oneKey, "size", new BenchLength(one).hundredths(style)));
        }
        if (other.value() > SHOWS) {
            parts.add(style.say(otherKey, "size", new BenchLength(other).hundredths(style)));
        }
        return parts.isEmpty() ? style.say(none) : style.joined("comma", parts);
    }
}
