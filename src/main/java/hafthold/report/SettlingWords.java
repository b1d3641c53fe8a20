package hafthold.report;

import hafthold.simulate.Settling;

/** When a change shows and when sanding may begin, in the bench's words. */
final class SettlingWords {
    private static final Wording WORDS = Wording.english();
    private static final double MOST_DAYS = 20;
    private static final double MOST_WEEKS_IN_DAYS = 120;
    private static final double DAYS_A_WEEK = 7;
    private static final double DAYS_A_MONTH = 365.25 / 12;

    private SettlingWords() {}

    /** Both in one sentence. */
    static String sentence(Settling settling) {
        return WORDS.say(
                "bench.settling",
                "shows",
                span(settling.showsDays().value()),
                "low",
                span(settling.showsDays().low()),
                "high",
                span(settling.showsDays().high()),
                "sand",
                span(settling.sandDays()));
    }

    /** A time in the unit that suits it, rounded up. */
    static String span(double days) {
        if (days <= MOST_DAYS) {
            return counted(days, "bench.day");
        }
        return days <= MOST_WEEKS_IN_DAYS
                ? counted(days / DAYS_A_WEEK, "bench.week")
                : counted(days / DAYS_A_MONTH, "bench.month");
    }

    private static String counted(double count, String unit) {
        long whole = Math.max(1, (long) Math.ceil(count));
        return WORDS.say(unit + (whole == 1 ? ".one" : ".many"), "count", Long.toString(whole));
    }
}
