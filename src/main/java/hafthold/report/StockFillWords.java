package hafthold.report;

import hafthold.decide.StockAnswer;
import hafthold.quantity.Band;
import hafthold.simulate.FillGrade;
import hafthold.simulate.FillPosterior;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * How stabilised stock is filled, in words.
 *
 * @param style language and units
 * @param answer a block whose filling was judged
 */
record StockFillWords(BenchStyle style, StockAnswer answer) {
    private static final double ODD = 3;
    private static final double NAMED = 0.05;

    private FillPosterior fill() {
        return answer.fill().orElseThrow();
    }

    /** How it is filled, in a few words. */
    String stamp() {
        if (fill().misfit() > ODD) {
            return style.say("stock.fill.stamp.odd");
        }
        return answer.isFillSure()
                ? style.say("stock.fill.stamp." + fill().likeliest().word())
                : style.say("stock.fill.stamp.open");
    }

    /** How it is filled and how that is known, a few sentences. */
    String lead() {
        if (fill().misfit() > ODD) {
            return style.say("stock.fill.lead.odd");
        }
        List<String> sentences = new ArrayList<>();
        FillGrade grade = fill().likeliest();
        sentences.add(
                answer.isFillSure()
                        ? style.say(
                                "stock.fill.lead." + grade.word(),
                                "count",
                                Long.toString(Math.round(100 * fill().chance())))
                        : style.say("stock.fill.lead.open", "chances", chances()));
        Band filled = fill().filledFraction();
        sentences.add(style.say(
                "stock.fill.share",
                "lumens",
                whole(fill().lumenFraction()),
                "value",
                whole(filled.value()),
                "low",
                whole(filled.low()),
                "high",
                whole(filled.high()),
                "density",
                style.fixed(fill().densityKilogramsPerCubicMetre().value(), 0)));
        fill().soakRatio()
                .ifPresent(
                        ratio -> sentences.add(style.say("stock.fill.soak", "percent", whole(Math.min(9.99, ratio)))));
        return String.join(" ", sentences);
    }

    /** What to try next, and what to mind. */
    List<String> advice() {
        List<String> advice = new ArrayList<>();
        var test = answer.block().stabilised().orElseThrow();
        if (!answer.isFillSure() || fill().misfit() > ODD) {
            if (test.coreFloats().isEmpty()) {
                advice.add(style.say("stock.fill.do.middle"));
            }
            if (!test.isWeighed()) {
                advice.add(style.say("stock.fill.do.weigh"));
            }
            if (test.soak().isEmpty()) {
                advice.add(style.say("stock.fill.do.soak"));
            }
        }
        advice.add(style.say("stock.fill.swells"));
        return advice;
    }

    /** The chances of the grades worth naming, the likeliest first. */
    private String chances() {
        return style.joined(
                "comma",
                fill().chances().entrySet().stream()
                        .filter(entry -> entry.getValue() >= NAMED)
                        .sorted(Map.Entry.<FillGrade, Double>comparingByValue().reversed())
                        .map(entry -> style.say(
                                "stock.fill.chance",
                                "grade",
                                style.say("stock.fill.stamp." + entry.getKey().word()),
                                "count",
                                Long.toString(Math.round(100 * entry.getValue()))))
                        .toList());
    }

    private String whole(double fraction) {
        return style.fixed(100 * fraction, 0);
    }
}
