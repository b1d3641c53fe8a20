package hafthold.report;

import hafthold.simulate.Settling;

/** When a change shows and when sanding may begin, in the bench's words. */
final class SettlingWords {
    private static final double MOST_DAYS = 20;
    private static final double MOST_WEEKS_IN_DAYS = 120;
    private static final double DAYS_A_WEEK = 7;
    private static final double DAYS_A_MONTH = 365.25 / 12;

    private SettlingWords() {}

    /** Both in one sentence. */
    static String sentence(BenchStyle style, Settling settling) {
        return style.say(
                "settling",
                "shows",
                span(style, settling.showsDays().value()),
                "low",
                span(style, settling.showsDays().low()),
                "high",
                span(style, settling.showsDays().high()),
                "sand",
                span(style, settling.sandDays()));
    }

    /** A time in the unit that suits it, rounded up. */
    static String span(BenchStyle style, double days) {
        if (days <= MOST_DAYS) {
            return counted(style, days, "day");
        }
        return days <= MOST_WEEKS_IN_DAYS
                ? counted(style, days / DAYS_A_WEEK, "week")
                : counted(style, days / DAYS_A_MONTH, "month");
    }

    private static String counted(BenchStyle style, double count, String unit) {
        return style.counted(unit, Math.max(1, (long) Math.ceil(count)));
    }
}
