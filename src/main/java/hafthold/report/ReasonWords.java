package hafthold.report;

import hafthold.decide.Reason;
import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What decides a verdict, in the bench's words, with the limit it is held to.
 *
 * @param style language and units
 * @param toHundredths true for sizes to a hundredth of a millimetre, whatever their band
 */
record ReasonWords(BenchStyle style, boolean toHundredths) {
    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    /** What decides an answer; of an end that lets go also what gives way first. Empty where there is no reason. */
    Optional<String> deciding(List<Reason> reasons) {
        return reasons.stream().findFirst().map(first -> {
            List<String> clauses = new ArrayList<>();
            if (first.kind() == Reason.Kind.END_LETS_GO) {
                reasons.stream()
                        .filter(reason ->
                                reason.kind() == Reason.Kind.GLUE_LINE || reason.kind() == Reason.Kind.SCALE_SPLIT)
                        .filter(Reason::givesWay)
                        .forEach(reason -> clauses.add(clause(reason)));
            }
            clauses.add(clause(first));
            return style.joined("semicolon", clauses);
        });
    }

    /** One reason in one clause, such as "pin heads stand 0.1 mm above the face, within what ... work allows". */
    String clause(Reason reason) {
        if (reason.isOpen()) {
            return style.joined("semicolon", List.of(style.say(open(reason)), style.say("open.measure")));
        }
        String what = said("reason", reason, size(reason, toHundredths));
        return limit(reason)
                .map(limit -> style.say(
                        reason.keeps() ? "reason.within" : "reason.more",
                        "reason",
                        what,
                        "work",
                        style.work(reason.heldTo()),
                        "limit",
                        style.withUnit(style.limit(limit))))
                .orElse(what);
    }

    /** One reason for a table cell, such as "pin heads up 0.09 mm; retouch allows 0.15". */
    String brief(Reason reason) {
        if (reason.isOpen()) {
            return style.say(open(reason) + ".short");
        }
        String what = said("brief", reason, size(reason, false));
        return limit(reason)
                .map(limit -> style.say(
                        reason.keeps() ? "brief.within" : "brief.more",
                        "reason",
                        what,
                        "work",
                        style.work(reason.heldTo()),
                        "limit",
                        style.limit(limit)))
                .orElse(what);
    }

    private static String open(Reason reason) {
        return reason.kind() == Reason.Kind.PIN_CRACK ? "open.pins" : "open.glue";
    }

    private String said(String form, Reason reason, String size) {
        String key = form + "." + style.keyOf(reason.kind());
        return reason.kind() == Reason.Kind.SOFTENING
                ? style.say(key + (known(reason).value() < 0 ? ".beyond" : ".within"), "size", size)
                : style.say(key, "size", size);
    }

    /** A movement with as many digits as tell it from the limit it is held to; a use in percent; a margin in kelvins. */
    private String size(Reason reason, boolean hundredths) {
        double value = known(reason).value();
        if (reason.kind() == Reason.Kind.SOFTENING) {
            return kelvins(style, Math.abs(value));
        }
        if (reason.kind().isUse()) {
            return use(style, value);
        }
        BenchLength length = new BenchLength(known(reason));
        return limit(reason)
                .map(limit -> length.beside(limit, style, hundredths))
                .orElseGet(() -> hundredths ? length.hundredths(style) : length.text(style));
    }

    private static Band known(Reason reason) {
        return reason.size().orElseThrow();
    }

    /** A use of strength in percent; what is more than all of it never reads as 100 %. */
    static String use(BenchStyle style, double use) {
        double percent = 100 * use;
        String hundred = "100" + Paragraph.HOLD + "%";
        return SideOfLimit.of(percent, use > 1, ALL, BigDecimal.valueOf(percent).setScale(0, RoundingMode.HALF_UP))
                .map(number -> style.number(number.toPlainString()) + Paragraph.HOLD + "%")
                .orElseGet(() -> style.say("just-over", "limit", hundred));
    }

    /** Kelvins, never as none. */
    static String kelvins(BenchStyle style, double kelvins) {
        long whole = Math.round(kelvins);
        return (whole == 0 ? style.say("less-than", "number", "1") : Long.toString(whole)) + Paragraph.HOLD + "K";
    }

    private static Optional<Length> limit(Reason reason) {
        FitLimits held = reason.heldTo();
        return switch (reason.kind()) {
            case EDGE_SHY -> Optional.of(held.shy());
            case EDGE_PROUD, END_PROUD, PIN_HEAD_SUNK -> Optional.of(held.proud());
            case PIN_HEAD_PROUD, RIDGE -> Optional.of(held.pinHead());
            case PIN_GAP, END_GAP, END_LETS_GO, STACK_GAP, STACK_SET -> Optional.of(held.gap());
            case PIN_CRACK, PARTS_JOINT, GLUE_LINE, SCALE_SPLIT, SOFTENING -> Optional.empty();
        };
    }
}
