package hafthold.report;

import java.time.LocalDate;

/** Days of a year of 365 in words. */
final class DayWord {
    private static final int COMMON_YEAR = 2023;
    private static final int HOURS_A_DAY = 24;

    private DayWord() {}

    /** The day of an hour counted from 1 January, such as "15 January". */
    static String ofHour(int hour) {
        LocalDate day = LocalDate.ofYearDay(COMMON_YEAR, 1).plusDays(hour / HOURS_A_DAY);
        return day.getDayOfMonth() + " " + MonthWord.of(day.getMonthValue());
    }
}
