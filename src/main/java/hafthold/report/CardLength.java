package hafthold.report;

import hafthold.quantity.Band;
import java.util.Locale;

/**
 * A movement for someone who owns no caliper: a number, and a thing from his own desk that is as thick.
 *
 * <p>A sheet of office paper is 0.1 mm, a fingernail 0.5 mm (common practice, no source); a bank card 0.76 mm (ISO/IEC 7810,
 * from memory). Sheets count in halves; less than a quarter of a sheet is nothing you can feel (a judgement: fingers
 * find less on polished steel, but nobody minds it).
 *
 * @param metres the movement, metres, not negative
 * @param units of the number
 * @param wording language
 */
record CardLength(Band metres, LengthUnits units, Wording wording) {
    private static final double SHEET = 0.1;
    private static final double NOTHING = SHEET / 4;
    private static final double THICKEST_IN_SHEETS = 3.25 * SHEET;
    private static final double THICKEST_IN_NAILS = 0.625;
    private static final double BANK_CARD = 0.76;
    private static final double THICKEST_AS_ONE_CARD = 1.5 * BANK_CARD;
    private static final double MILLIMETRES_PER_THOU = 0.0254;

    /** A movement without a band. */
    static CardLength exact(double metres, LengthUnits units, Wording wording) {
        return new CardLength(Band.exact(metres), units, wording);
    }

    /** The printed value in millimetres, rounded as its band deserves. */
    double millimetres() {
        return new BenchLength(metres).millimetres().doubleValue();
    }

    /** Whether no finger minds it. */
    boolean isNothing() {
        return millimetres() < NOTHING;
    }

    /** The number with its unit. */
    String number() {
        return inUnits(new BenchLength(metres).millimetres().toPlainString(), metres.value());
    }

    /** The number in one unit, for where there is little room. */
    String oneNumber() {
        return new CardLength(metres, units == LengthUnits.BOTH ? LengthUnits.MM : units, wording).number();
    }

    /** Lower end with its unit. */
    String low() {
        return end(metres.low());
    }

    /** Upper end with its unit. */
    String high() {
        return end(metres.high());
    }

    private String end(double end) {
        return inUnits(String.format(Locale.ROOT, "%.2f", 1000 * end), end);
    }

    private String inUnits(String plainMillimetres, double exactMetres) {
        String thou = Long.toString(Math.round(1000 * exactMetres / MILLIMETRES_PER_THOU));
        String number = wording.number(plainMillimetres);
        return switch (units) {
            case MM -> wording.say("size.mm", "number", number);
            case THOU -> wording.say("size.thou", "thou", thou);
            case BOTH -> wording.say("size.both", "number", number, "thou", thou);
        };
    }

    /** What is as thick. */
    String thing() {
        double size = millimetres();
        if (isNothing()) {
            return wording.say("thing.nothing");
        }
        if (size < THICKEST_IN_SHEETS) {
            return wording.say("thing.sheets." + Math.max(1, Math.round(2 * size / SHEET)));
        }
        if (size < THICKEST_IN_NAILS) {
            return wording.say("thing.nail");
        }
        return size < THICKEST_AS_ONE_CARD
                ? wording.say("thing.card")
                : wording.say("thing.cards", "number", Long.toString(Math.round(size / BANK_CARD)));
    }

    /** Number and thing together. */
    String words() {
        return isNothing() ? thing() : wording.say("size.with-thing", "size", number(), "thing", thing());
    }
}
