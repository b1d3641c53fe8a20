package hafthold.report;

import hafthold.decide.OutcomeTally;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;

/**
 * How good what was foretold was, in sentences.
 *
 * @param style language and units
 * @param tally of the steps
 */
record OutcomeWords(BenchStyle style, OutcomeTally tally) {

    /** How many lay inside, the factor, and how little that proves. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        Band share = tally.insideShare();
        sentences.add(style.say(
                "coupon.outcome.inside",
                "inside",
                Integer.toString(tally.inside()),
                "count",
                Integer.toString(tally.outcomes().size()),
                "low",
                style.fixed(100 * share.low(), 0),
                "high",
                style.fixed(100 * share.high(), 0)));
        tally.factor()
                .ifPresent(factor -> sentences.add(style.say(
                        isOff(factor) ? "coupon.outcome.factor.off" : "coupon.outcome.factor",
                        "factor",
                        style.fixed(factor.value(), 2),
                        "low",
                        style.fixed(factor.low(), 2),
                        "high",
                        style.fixed(factor.high(), 2))));
        if (!tally.says()) {
            sentences.add(style.say(
                    "coupon.outcome.few",
                    "count",
                    Integer.toString(tally.outcomes().size()),
                    "enough",
                    Integer.toString(OutcomeTally.ENOUGH)));
        } else {
            sentences.add(style.say(
                    share.high() < OutcomeTally.PROMISED
                            ? "coupon.outcome.narrow"
                            : share.low() > OutcomeTally.PROMISED ? "coupon.outcome.wide" : "coupon.outcome.good"));
        }
        return sentences;
    }

    private static boolean isOff(Band factor) {
        return factor.low() > 1 || factor.high() < 1;
    }

    List<String> head() {
        return style.heads("step", "foretold", "measured", "inside");
    }

    /** One row a step. */
    List<List<String>> rows() {
        return tally.outcomes().stream()
                .map(one -> List.of(
                        one.name().isEmpty() ? "–" : one.name(),
                        style.say(
                                "range",
                                "value",
                                signed(one.predicted().value()),
                                "low",
                                signed(one.predicted().low()),
                                "high",
                                signed(one.predicted().high())),
                        signed(one.measured()),
                        style.say(one.inside() ? "coupon.yes" : "coupon.no")))
                .toList();
    }

    private String signed(double metres) {
        return style.signed(style.shown(metres), style.isThou() ? 1 : 2);
    }
}
