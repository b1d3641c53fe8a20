package hafthold.report;

import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Reason;
import hafthold.decide.Verdict;
import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.simulate.HandleYear;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/** Plain sentences about answers, in the bench's words. */
final class AnswerWords {
    private static final Wording WORDS = Wording.english();

    private final LengthUnits units;
    private final boolean toHundredths;

    AnswerWords(LengthUnits units) {
        this(units, false);
    }

    /**
     * Words with or without fixed digits.
     *
     * @param toHundredths true for sizes to a hundredth of a millimetre, whatever their band
     */
    AnswerWords(LengthUnits units, boolean toHundredths) {
        this.units = units;
        this.toHundredths = toHundredths;
    }

    /** Name with cut, as a sentence begins, such as "Quarter-sawn black walnut". */
    static String nameOf(HandleYear year) {
        String full = plainNameOf(year);
        return full.substring(0, 1).toUpperCase(Locale.ROOT) + full.substring(1);
    }

    /** Name with cut as the subject of a sentence: what a comma opens, a comma closes. */
    static String subjectOf(HandleYear year) {
        String name = nameOf(year);
        return name.contains(",") ? name + "," : name;
    }

    /** Name with cut inside a sentence, such as "quarter-sawn black walnut". */
    static String plainNameOf(HandleYear year) {
        String name = year.scale().name();
        return switch (year.scale().cut()) {
            case FLAT -> "flat-sawn " + name;
            case RIFT -> "rift-sawn " + name;
            case QUARTER -> "quarter-sawn " + name;
            case CROSS -> "cross-cut " + name;
            case BURL -> name.contains("burl") ? name : name + " burl";
            case NONE -> name;
        };
    }

    /** What a verdict tells the customer, in one clause. */
    static String verdictOf(Verdict verdict) {
        return switch (verdict) {
            case STAYS -> "stays put here";
            case CARE -> "moves with the seasons here and needs its care";
            case CHANGE -> "will not do here as it stands: something about the build must change";
            case REFUSE -> "does not belong here";
            case UNKNOWN -> "cannot be judged: the figures do not carry an answer";
        };
    }

    /** Range of moisture content, such as "4.1–9.3"; "none" where it would print as 0.0. */
    static String moistureRange(HandleYear year) {
        if (year.moisture().highest() < 0.0005) {
            return "none";
        }
        String low = percent(year.moisture().lowest());
        String high = percent(year.moisture().highest());
        return low.equals(high) ? low : low + "–" + high;
    }

    /** A fraction as percent with one digit. */
    static String percent(double fraction) {
        return String.format(Locale.ROOT, "%.1f", 100 * fraction);
    }

    /** The worst step of a year in one phrase, such as "0.2 mm shy (0.15–0.35)". */
    String step(HandleYear year) {
        EdgeStep worst = EdgeStep.worst(year);
        BenchLength length = worst.length();
        if (worst.isFlush()) {
            return length.isNothing()
                    ? "flush"
                    : "flush, at most " + length.highMillimetres() + Paragraph.HOLD + "mm "
                            + worst.side().word();
        }
        String range = length.range();
        return length.text(units) + " " + worst.side().word() + (range.isEmpty() ? "" : " (" + range + ")");
    }

    /** One answer in one to three plain sentences. */
    String sentence(Ranked answer) {
        HandleYear year = answer.year();
        StringBuilder text = new StringBuilder(subjectOf(year))
                .append(' ')
                .append(verdictOf(answer.verdict()))
                .append(". ");
        text.append(edgeSentence(answer));
        answer.reasons().stream()
                .findFirst()
                .ifPresent(reason ->
                        text.append(" What decides: ").append(reason(reason)).append('.'));
        if (!EdgeStep.worst(year).isFlush()) {
            answer.settling()
                    .ifPresent(settling -> text.append(" Timing: ")
                            .append(SettlingWords.sentence(settling))
                            .append('.'));
        }
        Optional<String> holds =
                DriverWords.holds(answer.likelihood()).filter(share -> answer.verdict() != Verdict.UNKNOWN);
        if (holds.isPresent()) {
            text.append(" The verdict ").append(holds.get()).append('.');
            String next = DriverWords.measureNext(year.grounds().drivers());
            text.append(next.isEmpty() ? "" : " " + next);
        }
        return text.toString();
    }

    private String edgeSentence(Ranked answer) {
        HandleYear year = answer.year();
        EdgeStep worst = EdgeStep.worst(year);
        if (worst.length().isNothing() && !answer.isMovementKnown()) {
            return "No movement can be given.";
        }
        if (worst.isFlush()) {
            return "Its edges stay flush all year: fingers find nothing.";
        }
        String guess = answer.isMovementKnown() ? "Its" : "As a rough guess, its";
        String range = worst.length().range();
        String unglued = EdgeStep.isBonded(year) ? "" : ", unglued";
        String step = guess + " edges stand " + worst.length().text(units) + " "
                + worst.side().word() + " of the steel in " + MonthWord.of(year.worstMonth())
                + (range.isEmpty() ? unglued : " (" + range + Paragraph.HOLD + "mm" + unglued + ")");
        EdgeStep other = EdgeStep.other(year);
        return other.isFlush()
                ? step + "."
                : step + ", and up to " + other.length().text(units) + " "
                        + other.side().word() + " at the other end of the year.";
    }

    /** One reason in one clause, such as "pin heads stand 0.1 mm above the face, within what ... work allows". */
    String reason(Reason reason) {
        if (reason.isOpen()) {
            return open(reason.kind());
        }
        Band known = reason.size().orElseThrow();
        BenchLength length = new BenchLength(known);
        String size = toHundredths ? length.hundredths(units) : length.text(units);
        String what = switch (reason.kind()) {
            case EDGE_SHY -> "the edge falls " + size + " shy of the steel";
            case EDGE_PROUD -> "the edge stands " + size + " proud of the steel";
            case PIN_HEAD_PROUD -> "pin heads stand " + size + " above the face";
            case PIN_HEAD_SUNK -> "pin heads lie " + size + " below the face";
            case PIN_GAP -> "a ring of " + size + " opens beside the pins";
            case END_GAP -> "the scale falls " + size + " short of the steel at bolster and butt";
            case END_PROUD -> "the scale grows " + size + " past the steel at bolster and butt";
            case RIDGE -> "a ridge of " + size + " stands along the line between its parts";
            case PARTS_JOINT ->
                "the line between its parts is loaded to " + times(reason) + " of what the weaker part bears";
            case PIN_CRACK ->
                "the scale closes on its pins with " + times(reason) + " of what it bears" + " before it splits";
            case GLUE_LINE -> "the glue line is loaded to " + times(reason) + " of what it bears";
            case SCALE_SPLIT ->
                "the glue holds the scale back with " + times(reason) + " of what it bears across the grain";
            case END_LETS_GO ->
                "once glue or scale gives way, each end of the scale moves " + size + " against the steel";
            case SOFTENING ->
                known.value() < 0
                        ? "the heat goes " + Math.round(-known.value()) + Paragraph.HOLD
                                + "K beyond where glue or scale softens"
                        : "the hottest air comes within "
                                + Math.round(known.value()) + Paragraph.HOLD
                                + "K of where glue or scale softens";
            case STACK_GAP -> "the stack comes loose by " + size;
            case STACK_SET -> "damp crushes the stack by " + size + " for good";
        };
        return limitOf(reason).map(limit -> what + ", " + limit).orElse(what);
    }

    /** One reason for a table cell, such as "pin heads up 0.09 mm; retouch allows 0.15". */
    String shortReason(Reason reason) {
        if (reason.isOpen()) {
            return shortOpen(reason.kind());
        }
        Band known = reason.size().orElseThrow();
        String size = new BenchLength(known).text(units);
        String what = switch (reason.kind()) {
            case EDGE_SHY -> "edge " + size + " shy";
            case EDGE_PROUD -> "edge " + size + " proud";
            case PIN_HEAD_PROUD -> "pin heads up " + size;
            case PIN_HEAD_SUNK -> "pin heads sunk " + size;
            case PIN_GAP -> "ring of " + size + " beside the pins";
            case END_GAP -> "ends " + size + " short";
            case END_PROUD -> "ends " + size + " long";
            case RIDGE -> "ridge of " + size + " between its parts";
            case PARTS_JOINT -> "line between its parts at " + times(reason) + " of what it bears";
            case PIN_CRACK -> "may split at the pins: " + times(reason) + " of what it bears";
            case GLUE_LINE -> "glue line at " + times(reason) + " of what it bears";
            case SCALE_SPLIT -> "pull across the grain at " + times(reason) + " of what it bears";
            case END_LETS_GO -> "ends " + size + " off once it lets go";
            case SOFTENING -> Math.round(known.value()) + Paragraph.HOLD + "K to softening";
            case STACK_GAP -> "stack loose by " + size;
            case STACK_SET -> "stack crushed by " + size;
        };
        String work = reason.heldTo().name().replace('-', ' ');
        return limitSize(reason)
                .map(length ->
                        what + "; " + (reason.keeps() ? "" : "even ") + work + " allows " + plain(length.millimetres()))
                .orElse(what);
    }

    /** A limit that could not be judged, and what to measure. */
    private static String open(Reason.Kind kind) {
        return WORDS.say(kind == Reason.Kind.PIN_CRACK ? "bench.open.pins" : "bench.open.glue") + "; "
                + WORDS.say("bench.open.measure");
    }

    private static String shortOpen(Reason.Kind kind) {
        return WORDS.say(kind == Reason.Kind.PIN_CRACK ? "bench.open.pins.short" : "bench.open.glue.short");
    }

    private static String times(Reason reason) {
        return String.format(
                Locale.ROOT, "%.0f %%", 100 * reason.size().orElseThrow().value());
    }

    private static Optional<String> limitOf(Reason reason) {
        String work = reason.heldTo().name().replace('-', ' ');
        return limitSize(reason).map(length -> {
            String size = plain(length.millimetres()) + Paragraph.HOLD + "mm)";
            return reason.keeps()
                    ? "within what " + work + " work allows (up to " + size
                    : "more than even " + work + " work allows (" + size;
        });
    }

    private static Optional<Length> limitSize(Reason reason) {
        FitLimits held = reason.heldTo();
        return switch (reason.kind()) {
            case EDGE_SHY -> Optional.of(held.shy());
            case EDGE_PROUD, END_PROUD, PIN_HEAD_SUNK -> Optional.of(held.proud());
            case PIN_HEAD_PROUD, RIDGE -> Optional.of(held.pinHead());
            case PIN_GAP, END_GAP, END_LETS_GO, STACK_GAP, STACK_SET -> Optional.of(held.gap());
            case PIN_CRACK, PARTS_JOINT, GLUE_LINE, SCALE_SPLIT, SOFTENING -> Optional.empty();
        };
    }

    /** A setting of the user as typed: no rounding, no trailing zeros. */
    static String plain(double number) {
        return BigDecimal.valueOf(Math.rint(number * 1e6) / 1e6)
                .stripTrailingZeros()
                .toPlainString();
    }
}
