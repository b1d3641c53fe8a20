package hafthold.report;

import hafthold.simulate.HandleYear;

/** What the year does to pins, in a few words for a table. */
final class PinWords {
    private PinWords() {}

    /** The larger of gap and squeeze, such as "tight 0.11"; "snug" where neither shows. */
    static String hole(BenchStyle style, HandleYear year) {
        boolean squeezes = year.pins().squeeze().value() > year.pins().gap().value();
        BenchLength size =
                new BenchLength(squeezes ? year.pins().squeeze() : year.pins().gap());
        return size.isZero()
                ? style.say("pin.snug")
                : style.say(squeezes ? "pin.tight" : "pin.gap", "size", size.number(style));
    }

    /** The larger of proud and sunk, such as "up 0.10"; "flush" where neither shows. */
    static String heads(BenchStyle style, HandleYear year) {
        boolean sinks = year.pins().headSunk().value() > year.pins().headProud().value();
        BenchLength size =
                new BenchLength(sinks ? year.pins().headSunk() : year.pins().headProud());
        return size.isZero()
                ? style.say("pin.flush")
                : style.say(sinks ? "pin.sunk" : "pin.up", "size", size.number(style));
    }
}
