package hafthold.report;

import hafthold.simulate.HandleYear;

/** What the year does to pins, in a few words for a table. */
final class PinWords {
    private static final Wording WORDS = Wording.english();

    private PinWords() {}

    /** The larger of gap and squeeze, such as "tight 0.11"; "snug" where neither shows. */
    static String hole(HandleYear year) {
        boolean squeezes = year.pins().squeeze().value() > year.pins().gap().value();
        BenchLength size =
                new BenchLength(squeezes ? year.pins().squeeze() : year.pins().gap());
        if (size.isZero()) {
            return WORDS.say("bench.pin.snug");
        }
        return WORDS.say(squeezes ? "bench.pin.tight" : "bench.pin.gap", "size", size.millimetres());
    }

    /** The larger of proud and sunk, such as "up 0.10"; "flush" where neither shows. */
    static String heads(HandleYear year) {
        boolean sinks = year.pins().headSunk().value() > year.pins().headProud().value();
        BenchLength size =
                new BenchLength(sinks ? year.pins().headSunk() : year.pins().headProud());
        if (size.isZero()) {
            return WORDS.say("bench.pin.flush");
        }
        return WORDS.say(sinks ? "bench.pin.sunk" : "bench.pin.up", "size", size.millimetres());
    }
}
