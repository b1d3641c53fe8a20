package hafthold.report;

import hafthold.decide.StockAnswer;
import hafthold.decide.StockMoisture;
import hafthold.decide.StockMoisture.Days;
import hafthold.decide.StockVerdict;
import hafthold.quantity.Band;
import hafthold.simulate.StockFurthest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The verdict on a block in words, and the words for what it is put together from.
 *
 * @param style language and units
 * @param answer the block, judged
 */
record StockWords(BenchStyle style, StockAnswer answer) {
    private static final double CERTAIN = 0.97;
    private static final double DAYS_TOLD = 21;
    private static final double WEEKS_TOLD = 26;
    private static final double DAYS_A_WEEK = 7;
    private static final double DAYS_A_MONTH = 30.4;
    private static final double GRAMS = 1000;
    private static final double A_TENTH = 0.1;

    /** Which block, and how it stands. */
    String title() {
        return style.say("stock.title", "block", answer.block().name(), "verdict", stamp());
    }

    /** How it stands, in a few words. */
    String stamp() {
        if (answer.verdict() == StockVerdict.FILL_ONLY) {
            return new StockFillWords(style, answer).stamp();
        }
        String called = style.say(
                isOnlyAtRest()
                        ? "stock.called.at-rest"
                        : "stock.called." + answer.verdict().word());
        return answer.sure() >= CERTAIN ? style.say("stock.stamp.certain", "verdict", called) : called;
    }

    /** Nobody said where the knives go: at rest where it lies is all that can be told. */
    private boolean isOnlyAtRest() {
        return answer.verdict() == StockVerdict.READY && answer.target().place().isEmpty();
    }

    /** What to do about it, and why, a few sentences. */
    String lead() {
        return answer.moisture().map(this::lead).orElseGet(() -> new StockFillWords(style, answer).lead());
    }

    private String lead(StockMoisture moisture) {
        List<String> sentences = new ArrayList<>();
        sentences.add(style.say(
                isOnlyAtRest()
                        ? "stock.lead.at-rest"
                        : "stock.lead." + answer.verdict().word()));
        if (answer.verdict() == StockVerdict.ODD) {
            sentences.add(furthest(moisture.posterior().furthest()));
            return String.join(" ", sentences);
        }
        if (answer.verdict() == StockVerdict.OPEN) {
            sentences.add(style.say(
                    "stock.lead.chances",
                    "ready",
                    Long.toString(readyHundred(moisture)),
                    "wet",
                    Long.toString(wetHundred(moisture)),
                    "dry",
                    Long.toString(100 - readyHundred(moisture) - wetHundred(moisture))));
        }
        sentences.add(style.say(
                "stock.lead.now",
                "day",
                day(answer.block().today()),
                "mean",
                percent(moisture.meanNow()),
                "core",
                percent(moisture.coreNow())));
        sentences.add(
                answer.target().place().isPresent()
                        ? style.say(
                                "stock.lead.goal",
                                "place",
                                style.tell(answer.target().place().get()),
                                "goal",
                                percent(moisture.goal()))
                        : style.say("stock.lead.goal-shelf", "goal", percent(moisture.goal())));
        if (answer.verdict() != StockVerdict.READY) {
            sentences.add(boxDate(moisture));
            sentences.add(storageDate(moisture));
        }
        return String.join(" ", sentences);
    }

    /** Which of what was read to look at first. */
    private String furthest(StockFurthest furthest) {
        return furthest.on()
                .map(on -> style.say("stock.lead.odd-reading", "day", day(on)))
                .orElseGet(() -> style.say("stock.lead.odd-density"));
    }

    /** What is left of a hundred, so that the three add up. */
    private static long readyHundred(StockMoisture moisture) {
        return Math.round(100 * moisture.chanceReady());
    }

    /** Halves are not rounded up twice: the three make a hundred. */
    private static long wetHundred(StockMoisture moisture) {
        return Math.min(Math.round(100 * moisture.chanceWet()), 100 - readyHundred(moisture));
    }

    private String boxDate(StockMoisture moisture) {
        Days days = moisture.boxDays();
        if (Double.isInfinite(days.middle())) {
            return style.say("stock.lead.box-never", "humidity", boxHumidity());
        }
        LocalDate on = answer.block().today().plusDays(Math.round(days.middle()));
        String box = answer.target().place().isPresent() ? "stock.lead.box" : "stock.lead.air";
        return days.middle() == 0
                ? style.say("stock.lead.box-now", "humidity", boxHumidity(), "high", span(days.high()))
                : style.say(
                        box,
                        "humidity",
                        boxHumidity(),
                        "span",
                        span(days.middle()),
                        "low",
                        span(days.low()),
                        "high",
                        span(days.high()),
                        "day",
                        day(on));
    }

    /** How it goes where it lies, if that is not the box already. */
    private String storageDate(StockMoisture moisture) {
        Days days = moisture.storageDays();
        if (answer.target().place().isEmpty()) {
            return "";
        }
        if (days.never() <= A_TENTH) {
            return style.say("stock.lead.shelf", "low", span(days.low()), "high", span(days.high()));
        }
        return style.say(
                days.never() >= 1 - A_TENTH ? "stock.lead.shelf-never" : "stock.lead.shelf-perhaps",
                "rest",
                percent(moisture.rest()),
                "count",
                hundred(days.never()));
    }

    /** Humidity of the box. */
    String boxHumidity() {
        return style.fixed(100 * answer.target().aim().humidityFraction(), 0);
    }

    /** A moisture content with its range. */
    String percent(Band fraction) {
        String low = style.percent(fraction.low());
        String high = style.percent(fraction.high());
        return low.equals(high)
                ? style.say("stock.percent", "value", low)
                : style.say("stock.percent-band", "value", style.percent(fraction.value()), "low", low, "high", high);
    }

    /** Of a hundred. */
    String hundred(double chance) {
        return Long.toString(Math.round(100 * chance));
    }

    /** A span of days as a bench says it. */
    String span(double days) {
        if (Double.isInfinite(days)) {
            return style.say("stock.span.beyond");
        }
        if (days < 1) {
            return style.say("stock.span.now");
        }
        if (days <= DAYS_TOLD) {
            return style.counted("stock.span.days", Math.round(days));
        }
        double weeks = days / DAYS_A_WEEK;
        return weeks <= WEEKS_TOLD
                ? style.counted("stock.span.weeks", Math.round(weeks))
                : style.counted("stock.span.months", Math.round(days / DAYS_A_MONTH));
    }

    /** A day of a year. */
    String day(LocalDate day) {
        return style.words()
                .say(
                        "date",
                        "day",
                        Integer.toString(day.getDayOfMonth()),
                        "month",
                        style.month(day.getMonthValue()),
                        "year",
                        Integer.toString(day.getYear()));
    }

    /** A step of a balance as it was told. */
    String step(double kilograms) {
        return style.say("stock.grams", "grams", style.plain(Math.rint(GRAMS * GRAMS * kilograms) / GRAMS));
    }

    /** A weight to a digit or two behind the point. */
    String grams(double kilograms) {
        double grams = GRAMS * kilograms;
        int decimals = grams < 0.1 ? 3 : grams < 10 ? 2 : 1;
        return style.say("stock.grams", "grams", style.fixed(grams, decimals));
    }

    /** A weight to its first digit, never rounded up. */
    String shownGrams(double kilograms) {
        double grams = GRAMS * kilograms;
        double step = Math.pow(10, Math.floor(Math.log10(grams)));
        int decimals = (int) Math.max(0, -Math.round(Math.log10(step)));
        double down = Math.floor(grams / step + 1e-9) * step;
        return style.say("stock.grams", "grams", style.fixed(down, decimals));
    }
}
