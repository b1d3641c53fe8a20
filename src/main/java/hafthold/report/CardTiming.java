package hafthold.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When a handle moves, when it has done so, and when to true it up.
 *
 * @param handle the handle in its year
 */
record CardTiming(CardHandle handle) {
    private static final double DAYS_A_WEEK = 7;
    private static final double DAYS_A_MONTH = 365.25 / 12;
    private static final double DAYS_A_YEAR = 365.25;
    private static final int MOST_DAYS = 13;
    private static final int MOST_WEEKS = 11;
    private static final int MOST_MONTHS = 23;
    private static final int MOST_YEARS = 10;

    private Wording wording() {
        return handle.order().wording();
    }

    /** When a change shows and when it is over. */
    List<String> sentences() {
        if (handle.isUnknown()) {
            return List.of(wording().say("time.unknown"));
        }
        if (handle.answer().settling().isEmpty()) {
            return List.of(wording().say("time.heat"));
        }
        double shows = handle.answer().settling().get().showsDays().value();
        double rest = handle.answer().settling().get().sandDays();
        if (handle.size().isNothing()) {
            return Stream.of(wording().say("time.nothing"), wording().say("time.slow", "span", span(shows)))
                    .toList();
        }
        return List.of(dated("time.shows", shows), dated("time.sand", rest));
    }

    /** The month to true it up in, where there is anything to true up. */
    Optional<String> bestMonth() {
        if (handle.isOnce() && !handle.size().isNothing()) {
            return Optional.of(wording().say("time.once"));
        }
        return handle.isUnknown() || handle.size().isNothing()
                ? Optional.empty()
                : Optional.of(wording().say("time.month", "month", wording().month(handle.lowestMonth())));
    }

    private String dated(String key, double days) {
        boolean far = days > MOST_YEARS * DAYS_A_YEAR;
        return handle.order().date().isEmpty() || far
                ? wording().say(key, "span", span(days))
                : wording()
                        .say(
                                key + ".dated",
                                "span",
                                span(days),
                                "date",
                                wording().date(handle.order().date().get().plusDays((long) Math.ceil(days))));
    }

    /** A time in whole days, weeks, months or years, rounded up. */
    String span(double days) {
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
}
