package hafthold.report;

import hafthold.air.SaturatedSalt;
import hafthold.decide.StockAnswer;
import hafthold.decide.StockMoisture;
import hafthold.decide.StockVerdict;
import hafthold.knife.StockBlock.Sealed;
import hafthold.material.Family;
import hafthold.material.MoistureDiffusivity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to do about a block: its box, its balance, what to measure next, how sure all that is.
 *
 * @param style language and units
 * @param answer the block, judged
 */
record StockAdvice(BenchStyle style, StockAnswer answer) {
    private static final long MOST_TOGETHER = 12;
    /** Even steps of 0.1 g would want a hundred such blocks. */
    private static final double LEAST_SEEN_KILOGRAMS = 2e-6;

    private static final double COLD = 12;
    private static final double WARM = 20;
    private static final double WIDE = 0.03;
    private static final double FEW = 60;

    private StockWords words() {
        return new StockWords(style, answer);
    }

    /** What the box sits at, and what holds it there. */
    List<String> box() {
        List<String> lines = new ArrayList<>();
        String celsius = style.plain(answer.target().aim().celsius());
        lines.add(style.say(
                answer.target().isHeldBack() ? "stock.box.held-back" : "stock.box",
                "humidity",
                words().boxHumidity(),
                "celsius",
                celsius,
                "moisture",
                style.percent(answer.target().moistureFraction())));
        answer.target()
                .year()
                .ifPresent(year -> lines.add(style.say(
                        answer.target().isHeldBack() ? "stock.box.year-held-back" : "stock.box.year",
                        "low",
                        style.percent(year.lowest()),
                        "high",
                        style.percent(year.highest()))));
        cold().ifPresent(lines::add);
        lines.add(answer.box()
                .salt()
                .map(salt -> salt(salt, celsius))
                .orElseGet(() -> style.say(
                        "stock.box.pack", "percent", Long.toString(answer.box().packPercent()))));
        lines.add(style.say("stock.box.hygrometer"));
        return lines;
    }

    /** A cold box keeps wood waiting. */
    private Optional<String> cold() {
        double celsius = answer.target().aim().celsius();
        if (celsius >= COLD) {
            return Optional.empty();
        }
        MoistureDiffusivity speed =
                answer.block().material().water().orElseThrow().diffusivity();
        double times = speed.temperatureFactor(WARM) / speed.temperatureFactor(celsius);
        return Optional.of(style.say(
                "stock.box.cold",
                "warm",
                style.plain(WARM),
                "times",
                style.fixed(times, 1),
                "celsius",
                style.plain(celsius)));
    }

    private String salt(SaturatedSalt salt, String celsius) {
        return style.say(
                "stock.box.salt",
                "salt",
                BenchStyle.capital(salt.name()),
                "humidity",
                style.percent(answer.box().saltHumidity().orElseThrow().value()),
                "celsius",
                celsius,
                "percent",
                Long.toString(answer.box().packPercent()));
    }

    /** When it is ready by the balance, and whether the balance can tell. */
    List<String> balance() {
        List<String> lines = new ArrayList<>();
        StockMoisture moisture = answer.moisture().orElseThrow();
        StockWords words = words();
        if (answer.block().sealed() == Sealed.ALL) {
            return List.of(style.say("stock.balance.waxed", "point", words.grams(moisture.pointKilograms())));
        }
        lines.add(style.say(
                "stock.balance.ready",
                "grams",
                words.shownGrams(moisture.telltaleKilograms()),
                "point",
                words.grams(moisture.pointKilograms())));
        long together = moisture.weighTogether();
        String step = words.step(answer.store().balance().kilograms());
        if (together <= 1) {
            lines.add(style.say("stock.balance.sees", "step", step));
        } else if (together <= MOST_TOGETHER) {
            lines.add(style.say(
                    "stock.balance.together",
                    "step",
                    step,
                    "count",
                    Long.toString(together),
                    "grams",
                    words.shownGrams(together * moisture.telltaleKilograms())));
        } else if (moisture.telltaleKilograms() < LEAST_SEEN_KILOGRAMS) {
            return List.of(style.say("stock.balance.hopeless", "point", words.grams(moisture.pointKilograms())));
        } else {
            lines.add(style.say(
                    "stock.balance.blind",
                    "step",
                    step,
                    "count",
                    Long.toString(together),
                    "finer",
                    words.shownGrams(moisture.telltaleKilograms() / 2)));
        }
        return lines;
    }

    /** What to measure next. */
    List<String> next() {
        List<String> lines = new ArrayList<>();
        StockMoisture moisture = answer.moisture().orElseThrow();
        boolean isWide = moisture.meanNow().high() - moisture.meanNow().low() > WIDE;
        boolean isTold = answer.verdict() == StockVerdict.READY;
        if (answer.verdict() == StockVerdict.ODD) {
            return List.of(style.say("stock.next.odd"));
        }
        if (!isTold && isWide && isPlainWood() && answer.block().coupon().isEmpty()) {
            lines.add(style.say("stock.next.slice"));
        }
        if (!isTold && answer.block().weighings() == 0) {
            lines.add(style.say("stock.next.weigh"));
        } else if (!isTold && answer.block().weighings() == 1) {
            lines.add(style.say("stock.next.weigh-again"));
        }
        if (!answer.store().isChecked()) {
            lines.add(style.say("stock.next.hygrometer"));
        }
        if (!isTold && answer.block().sealed() == Sealed.ALL) {
            lines.add(style.say("stock.next.wax"));
        }
        lines.add(style.say(isTold ? "stock.next.work" : "stock.next.wait"));
        return lines;
    }

    /** Resin, oil and horny tissue do not belong into an oven. */
    private boolean isPlainWood() {
        return answer.block().material().family() == Family.WOOD;
    }

    /** How sure that is, and what decides it. */
    List<String> sure() {
        List<String> lines = new ArrayList<>();
        StockMoisture moisture = answer.moisture().orElseThrow();
        lines.add(style.say(
                "stock.sure.bands",
                "effective",
                Long.toString(Math.round(moisture.posterior().effectiveSamples())),
                "all",
                Integer.toString(moisture.posterior().samples())));
        if (moisture.posterior().effectiveSamples() < FEW) {
            lines.add(style.say("stock.sure.few"));
        }
        if (!moisture.posterior().drivers().isEmpty()) {
            lines.add(style.say(
                    "stock.sure.drivers",
                    "drivers",
                    style.joined(
                            "comma",
                            moisture.posterior().drivers().entrySet().stream()
                                    .limit(3)
                                    .map(driver -> style.say(
                                            "stock.sure.driver",
                                            "input",
                                            style.say("stock.input."
                                                    + driver.getKey().word()),
                                            "percent",
                                            words().hundred(driver.getValue())))
                                    .toList())));
        }
        lines.add(style.say(
                "stock.sure.weakest",
                "evidence",
                style.say("evidence."
                        + answer.block()
                                .material()
                                .water()
                                .orElseThrow()
                                .diffusivityReference()
                                .evidence()
                                .grade())));
        return lines;
    }
}
