package hafthold.report;

import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Reason;
import hafthold.decide.Verdict;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What a card says of one handle.
 *
 * @param order whom it is for
 * @param answer the handle in its year
 */
record CardHandle(CardOrder order, Ranked answer) {
    private static final Set<Reason.Kind> TOLD_BY_KIND = Set.of(Reason.Kind.PIN_GAP, Reason.Kind.RIDGE);

    private Wording wording() {
        return order.wording();
    }

    HandleYear year() {
        return answer.year();
    }

    /** Name a customer knows it by. */
    String name() {
        return new CardName(wording()).of(year().scale());
    }

    /** The name as a line of its own begins. */
    String nameAsHeading() {
        String name = name();
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    /** The larger step of the year. */
    EdgeStep worst() {
        return EdgeStep.worst(year());
    }

    CardLength length(Band metres) {
        return new CardLength(metres, order.units(), wording());
    }

    /** What the year's worst step comes to. */
    CardLength size() {
        return length(worst().size());
    }

    /** How far it may go before its maker is called. */
    CardBounds bounds() {
        return new CardBounds(this);
    }

    /** When it moves and when it is done. */
    CardTiming timing() {
        return new CardTiming(this);
    }

    /** What is to be said of the places it goes to. */
    CardStays stays() {
        return new CardStays(this);
    }

    boolean isUnknown() {
        return answer.verdict() == Verdict.UNKNOWN;
    }

    /** The customer's number: month, size, and a thing as thick. */
    String number() {
        if (isUnknown()) {
            return wording().say("year.unknown");
        }
        if (size().isNothing()) {
            return wording().say("year.nothing");
        }
        if (stays().isGiven()) {
            return stays().worst();
        }
        return wording()
                .say(
                        "year.worst." + worst().side().word(),
                        "month",
                        wording().month(year().worstMonth()),
                        "size",
                        size().number(),
                        "thing",
                        size().thing());
    }

    /** Number in a few words, for a picture or a table. */
    String shortNumber() {
        if (isUnknown()) {
            return wording().say("short.unknown");
        }
        return size().isNothing()
                ? wording().say("short.nothing")
                : wording()
                        .say(
                                "short.worst",
                                "size",
                                size().oneNumber(),
                                "month",
                                wording().say("month.short." + year().worstMonth()));
    }

    /** What one has to know beside the number. */
    List<String> besides() {
        List<String> said = new ArrayList<>();
        if (!isUnknown() && !size().isNothing()) {
            said.add(wording().say("year.range", "low", size().low(), "high", size().high()));
            EdgeStep other = EdgeStep.other(year());
            if (!length(other.size()).isNothing()) {
                said.add(wording()
                        .say(
                                (stays().isGiven() ? "stays.other." : "year.other.")
                                        + other.side().word(),
                                "size",
                                length(other.size()).words()));
            }
        }
        if (!isUnknown()) {
            pins().ifPresent(said::add);
            ends().ifPresent(said::add);
            answer.reasons().stream()
                    .filter(reason -> !reason.isOpen())
                    .filter(reason -> reason.kind().isUse() || TOLD_BY_KIND.contains(reason.kind()))
                    .map(reason -> wording().say("reason." + word(reason.kind()), "size", size(reason)))
                    .distinct()
                    .forEach(said::add);
        }
        return said;
    }

    private static String word(Reason.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private String size(Reason reason) {
        return reason.kind().isUse() ? "" : length(reason.size().orElseThrow()).words();
    }

    private Optional<String> pins() {
        boolean up =
                year().pins().headProud().value() >= year().pins().headSunk().value();
        Band head = up ? year().pins().headProud() : year().pins().headSunk();
        return length(head).isNothing()
                ? Optional.empty()
                : Optional.of(wording()
                        .say(
                                up ? "year.pins.up" : "year.pins.down",
                                "size",
                                length(head).words()));
    }

    private Optional<String> ends() {
        boolean gap = year().ends().shortBy().value() >= year().ends().longBy().value();
        Band end = gap ? year().ends().shortBy() : year().ends().longBy();
        return length(end).isNothing()
                ? Optional.empty()
                : Optional.of(wording()
                        .say(
                                gap ? "year.ends.gap" : "year.ends.past",
                                "size",
                                length(end).words()));
    }

    /** The answer in one sentence. */
    String verdict() {
        String key = "verdict."
                + YearCourse.word(
                        answer.verdict(),
                        year(),
                        answer.reasons(),
                        answer.settling().isPresent());
        String said = key.endsWith(".once")
                ? wording()
                        .say(
                                key + "." + course().side().word(),
                                "span",
                                timing().span(answer.settling().orElseThrow().sandDays()),
                                "size",
                                length(course().lasting()).number())
                : wording().say(key);
        return answer.verdict() == Verdict.CARE ? said + " " + wording().say(harm()) : said;
    }

    /** What cracks, parts or lets go is never said to do no harm. */
    private String harm() {
        return answer.reasons().stream().anyMatch(reason -> reason.kind().canHarm())
                ? "verdict.watched"
                : "verdict.harmless";
    }

    /** How the edge goes through the year. */
    YearCourse course() {
        return YearCourse.of(year());
    }

    /** Whether it takes its size once and keeps it. */
    boolean isOnce() {
        return !isUnknown() && answer.settling().isPresent() && !stays().isGiven() && course().isOnce();
    }

    /** Month in which the handle stands lowest against the steel: trued then, the steel never stands up. */
    int lowestMonth() {
        return months().lowestMonth();
    }

    /** Month in which it stands highest. */
    int highestMonth() {
        return months().highestMonth();
    }

    /** Mean edge offset of every month, metres, positive where the handle stands above the steel. */
    MonthlyMeans months() {
        return MonthlyMeans.of(
                year().days().edgeOffset().stream().map(Band::value).toList());
    }

    /** What its maker stands by; empty where the shop says nothing of it. */
    Optional<String> promise() {
        return Optional.ofNullable(order.shop().promises().get(answer.verdict().word()));
    }

    /** What it costs; empty where the shop says nothing of it. */
    Optional<String> price() {
        return Optional.ofNullable(order.shop().prices().get(year().scale().id()));
    }

    /** A list of the family's own, such as what care it takes. */
    List<String> family(String key) {
        return wording().list(key + "." + year().scale().family().word());
    }
}
