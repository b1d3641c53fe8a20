package hafthold.report;

import hafthold.simulate.HandleYear;

/** What the year does to pins, in a few words for a table. */
final class PinWords {
    private PinWords() {}

    /** The larger of gap and squeeze, such as "tight 0.11"; "snug" where neither shows. */
    static String hole(BenchStyle style, HandleYear year) {
        boolean squeezes = year.pinSqueeze().value() > year.pinGap().value();
        BenchLength size = new BenchLength(squeezes ? year.pinSqueeze() : year.pinGap());
        return size.isZero()
                ? style.say("pin.snug")
                : style.say(squeezes ? "pin.tight" : "pin.gap", "size", size.number(style));
    }

    /** The larger of proud and sunk, such as "up 0.10"; "flush" where neither shows. */
    static String heads(BenchStyle style, HandleYear year) {
        boolean sinks = year.pinHeadSunk().value() > year.pinHeadProud().value();
        BenchLength size = new BenchLength(sinks ? year.pinHeadSunk() : year.pinHeadProud());
        return size.isZero()
                ? style.say("pin.flush")
                : style.say(sinks ? "pin.sunk" : "pin.up", "size", size.number(style));
    }
}
