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
    static String sentence(Settling settling) {
        return "in new air most of its move shows within "
                + span(settling.showsDays().value()) + " ("
                + span(settling.showsDays().low()) + " to "
                + span(settling.showsDays().high()) + "); do not re-sand before " + span(settling.sandDays())
                + " have passed";
    }

    /** A time in the unit that suits it, rounded up. */
    static String span(double days) {
        if (days <= MOST_DAYS) {
            return counted(days, "day");
        }
        return days <= MOST_WEEKS_IN_DAYS ? counted(days / DAYS_A_WEEK, "week") : counted(days / DAYS_A_MONTH, "month");
    }

    private static String counted(double count, String unit) {
        long whole = Math.max(1, (long) Math.ceil(count));
        return whole + " " + unit + (whole == 1 ? "" : "s");
    }
}
