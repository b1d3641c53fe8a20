package hafthold.report;

import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Reason;
import hafthold.decide.Verdict;
import hafthold.material.Cut;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Settling;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plain sentences about answers, in the bench's words.
 *
 * @param style language and units
 */
record AnswerWords(BenchStyle style) {
    private static final double NO_MOISTURE = 0.0005;

    /** Name with cut, as a sentence begins, such as "Quarter-sawn black walnut". */
    String nameOf(HandleYear year) {
        return BenchStyle.capital(plainNameOf(year));
    }

    /** Name with cut as the subject of a sentence: what a comma opens, a comma closes. */
    String subjectOf(HandleYear year) {
        String name = nameOf(year);
        return name.contains(",") ? name + "," : name;
    }

    /** Name with cut inside a sentence, such as "quarter-sawn black walnut". */
    String plainNameOf(HandleYear year) {
        String name = year.scale().name();
        boolean isNamed = year.scale().cut() == Cut.NONE
                || (year.scale().cut() == Cut.BURL && name.contains(style.say("cut.burl.word")));
        return isNamed ? name : style.say("name." + style.keyOf(year.scale().cut()), "material", name);
    }

    /**
     * What a verdict tells the customer, in one clause; care is worded by what asks for it.
     *
     * @param reasons everything that is not the best class of work, the deciding one first
     * @param settling empty where no water moves it
     */
    String verdictOf(Verdict verdict, HandleYear year, List<Reason> reasons, Optional<Settling> settling) {
        String key = "verdict-clause." + YearCourse.word(verdict, year, reasons, settling.isPresent());
        YearCourse course = YearCourse.of(year);
        if (!key.endsWith(".once")) {
            return style.say(key);
        }
        return style.say(
                key + "." + course.side().word(),
                "span",
                SettlingWords.span(style, settling.orElseThrow().sandDays()),
                "size",
                new BenchLength(course.lasting()).hundredths(style));
    }

    /** Range of moisture content, such as "4.1–9.3"; "none" where it would print as 0.0. */
    String moistureRange(HandleYear year) {
        if (year.moisture().highest() < NO_MOISTURE) {
            return style.say("moisture.none");
        }
        String low = style.percent(year.moisture().lowest());
        String high = style.percent(year.moisture().highest());
        return low.equals(high) ? low : low + "–" + high;
    }

    /** The weakest figure behind a year in words; empty where there is none. */
    String restsOn(HandleYear year) {
        return year.grounds().restsOn().told().map(style::tell).orElse("");
    }

    /** The worst step of a year in one phrase, such as "0.2 mm shy (0.15–0.35)". */
    String step(HandleYear year) {
        EdgeStep worst = EdgeStep.worst(year);
        BenchLength length = worst.length();
        if (worst.isFlush()) {
            return length.isNothing()
                    ? style.say("flush")
                    : style.say("flush.at-most", "step", side(worst.side(), style.withUnit(length.high(style))));
        }
        String range = length.range(style);
        return side(worst.side(), length.text(style)) + (range.isEmpty() ? "" : " (" + range + ")");
    }

    /** A size with its side, such as "0.2 mm shy". */
    String side(EdgeStep.Side side, String size) {
        return style.say("side." + side.word(), "size", size);
    }

    /** One answer in one to three plain sentences. */
    String sentence(Ranked answer) {
        HandleYear year = answer.year();
        List<String> sentences = new ArrayList<>();
        sentences.add(style.say(
                "answer.verdict",
                "subject",
                subjectOf(year),
                "verdict",
                verdictOf(answer.verdict(), year, answer.reasons(), answer.settling())));
        sentences.add(edgeSentence(answer));
        new ReasonWords(style, false)
                .deciding(answer.reasons())
                .ifPresent(reason -> sentences.add(style.say("answer.decides", "reason", reason)));
        if (!EdgeStep.worst(year).isFlush()) {
            answer.settling()
                    .ifPresent(settling -> sentences.add(
                            style.say("answer.timing", "timing", SettlingWords.sentence(style, settling))));
        }
        DriverWords doubt = new DriverWords(style);
        Optional<String> holds = doubt.holds(answer.likelihood(), answer.verdict());
        if (holds.isPresent()) {
            sentences.add(style.say("answer.holds", "holds", holds.get()));
            String next = doubt.measureNext(year.grounds().drivers());
            if (!next.isEmpty()) {
                sentences.add(next);
            }
        }
        return String.join(" ", sentences);
    }

    /** One answer in one line: verdict and what decides it. */
    String line(Ranked answer) {
        String reason =
                new ReasonWords(style, false).deciding(answer.reasons()).orElseGet(() -> style.say("answer.no-reason"));
        return style.say(
                "answer.line",
                "subject",
                nameOf(answer.year()),
                "verdict",
                style.verdict(answer.verdict()),
                "reason",
                reason);
    }

    private String edgeSentence(Ranked answer) {
        HandleYear year = answer.year();
        EdgeStep worst = EdgeStep.worst(year);
        boolean isUnknown = !answer.isMovementKnown();
        if (worst.length().isNothing() && isUnknown) {
            return style.say("answer.edge.unknown");
        }
        if (worst.isFlush()) {
            return style.say("answer.edge.flush");
        }
        String range = worst.length().range(style);
        List<String> aside = new ArrayList<>();
        if (!range.isEmpty()) {
            aside.add(style.withUnit(range));
        }
        if (!EdgeStep.isBonded(year)) {
            aside.add(style.say("unglued"));
        }
        String step = style.say(
                isUnknown ? "answer.edge.guess" : "answer.edge",
                "step",
                style.say(
                        "side." + worst.side().word() + ".of-steel",
                        "size",
                        worst.length().text(style)),
                "month",
                style.month(year.worstMonth()),
                "aside",
                aside(aside, range.isEmpty()));
        EdgeStep other = EdgeStep.other(year);
        return other.isFlush()
                ? style.say("answer.edge.whole", "edge", step)
                : style.say(
                        "answer.edge.other",
                        "edge",
                        step,
                        "step",
                        side(other.side(), other.length().text(style)));
    }

    private String aside(List<String> parts, boolean isBare) {
        if (parts.isEmpty()) {
            return "";
        }
        String joined = style.joined("comma", parts);
        return isBare ? style.say("comma") + joined : " (" + joined + ")";
    }

    /** A setting of the user as typed: no rounding, no trailing zeros. */
    static String plain(double number) {
        return BigDecimal.valueOf(Math.rint(number * 1e6) / 1e6)
                .stripTrailingZeros()
                .toPlainString();
    }
}
