package hafthold.report;

import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Reason;
import hafthold.decide.Verdict;
import hafthold.knife.FitLimits;
import hafthold.material.Family;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a card says of one handle.
 *
 * @param order whom it is for
 * @param answer the handle in its year
 */
record CardHandle(CardOrder order, Ranked answer) {
    private static final Pattern BRACKETS = Pattern.compile("\\s*\\([^)]*\\)");
    private static final Set<Reason.Kind> TOLD_BY_KIND = Set.of(Reason.Kind.PIN_GAP, Reason.Kind.RIDGE);
    private static final double DAYS_A_WEEK = 7;
    private static final double DAYS_A_MONTH = 365.25 / 12;
    private static final double DAYS_A_YEAR = 365.25;
    private static final int MOST_DAYS = 13;
    private static final int MOST_WEEKS = 11;
    private static final int MOST_MONTHS = 23;
    private static final int MOST_YEARS = 10;

    private Wording wording() {
        return order.wording();
    }

    HandleYear year() {
        return answer.year();
    }

    /** Name a customer knows it by: the language's own, or that of the tables without what stands in brackets. */
    String name() {
        String id = year().scale().id();
        String own = "material." + id;
        String name;
        if (wording().has(own)) {
            name = wording().say(own);
        } else if (year().scale().family() == Family.TREATED_WOOD && id.contains("+")) {
            String treatment = "treatment." + id.substring(id.indexOf('+') + 1);
            String wood = plain(year().scale().name().split(",", -1)[0]);
            name = wording().say(wording().has(treatment) ? treatment : "treatment", "wood", wood);
        } else {
            name = plain(year().scale().name());
        }
        String cut = "cut." + year().scale().cut().word();
        return wording().has(cut) ? wording().say(cut, "material", name) : name;
    }

    private static String plain(String name) {
        return BRACKETS.matcher(name).replaceAll("");
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
                                span(answer.settling().orElseThrow().sandDays()),
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

    /** The widest gap at a pin or an end that is no cause to call. */
    CardLength normalGap() {
        return rounded(
                order.seasonal().gap().metres(),
                Math.max(year().pins().gap().value(), year().ends().shortBy().value()));
    }

    /** A gap beyond which the maker wants to know. */
    CardLength alarmGap() {
        return rounded(
                order.loosest().gap().metres(),
                Math.max(year().pins().gap().high(), year().ends().shortBy().high()));
    }

    /** The largest step that is no cause to call, on one side. */
    CardLength normal(EdgeStep.Side side) {
        return atLeast(side, order.seasonal(), band -> band.value());
    }

    /** A step beyond which the maker wants to know. */
    CardLength alarm(EdgeStep.Side side) {
        return atLeast(side, order.loosest(), band -> band.high());
    }

    private CardLength atLeast(EdgeStep.Side side, FitLimits limits, Function<Band, Double> expected) {
        boolean shy = side == EdgeStep.Side.SHY;
        double limit = shy ? limits.shy().metres() : limits.proud().metres();
        double comes = expected.apply(
                shy ? year().edge().bonded().shy() : year().edge().bonded().proud());
        return rounded(limit, comes);
    }

    /** The larger of both, rounded up to a hundredth of a millimetre. */
    private CardLength rounded(double limit, double comes) {
        double hundredths = Math.ceil(Math.max(limit, comes) * 1e5 - 1e-6) / 1e5;
        return CardLength.exact(hundredths, order.units(), wording());
    }

    /** When a change shows and when it is over. */
    List<String> timing() {
        if (isUnknown()) {
            return List.of(wording().say("time.unknown"));
        }
        if (answer.settling().isEmpty()) {
            return List.of(wording().say("time.heat"));
        }
        double shows = answer.settling().get().showsDays().value();
        double rest = answer.settling().get().sandDays();
        if (size().isNothing()) {
            return Stream.of(wording().say("time.nothing"), wording().say("time.slow", "span", span(shows)))
                    .toList();
        }
        return List.of(dated("time.shows", shows), dated("time.sand", rest));
    }

    /** The month to true it up in, where there is anything to true up. */
    Optional<String> bestMonth() {
        if (isOnce() && !size().isNothing()) {
            return Optional.of(wording().say("time.once"));
        }
        return isUnknown() || size().isNothing()
                ? Optional.empty()
                : Optional.of(wording().say("time.month", "month", wording().month(lowestMonth())));
    }

    private String dated(String key, double days) {
        boolean far = days > MOST_YEARS * DAYS_A_YEAR;
        return order.date().isEmpty() || far
                ? wording().say(key, "span", span(days))
                : wording()
                        .say(
                                key + ".dated",
                                "span",
                                span(days),
                                "date",
                                date(wording(), order.date().get().plusDays((long) Math.ceil(days))));
    }

    /** A day as the language writes it. */
    static String date(Wording wording, LocalDate date) {
        return wording.say(
                "date",
                "day",
                Integer.toString(date.getDayOfMonth()),
                "month",
                wording.month(date.getMonthValue()),
                "year",
                Integer.toString(date.getYear()));
    }

    private String span(double days) {
        if (days <= 1) {
            return wording().say("span.day");
        }
        if (days <= MOST_DAYS) {
            return span("span.days", days);
        }
        if (days <= MOST_WEEKS * DAYS_A_WEEK) {
            return span("span.weeks", days / DAYS_A_WEEK);
        }
        if (days <= MOST_MONTHS * DAYS_A_MONTH) {
            return span("span.months", days / DAYS_A_MONTH);
        }
        return days <= MOST_YEARS * DAYS_A_YEAR
                ? span("span.years", days / DAYS_A_YEAR)
                : wording().say("span.decade", "number", Integer.toString(MOST_YEARS));
    }

    private String span(String key, double count) {
        return wording().say(key, "number", Long.toString((long) Math.ceil(count)));
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
