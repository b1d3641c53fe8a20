package hafthold.table;

import hafthold.air.CommonYear;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/** Clock times of a logger as hours of years of 365 days. */
final class LoggerClock {
    private static final double SECONDS_AN_HOUR = 3600;

    private LoggerClock() {}

    /** Hours since midnight before 1 January of year 0, leap days left out; NaN on 29 February. */
    static double hours(CsvRow row) {
        LocalDateTime time = time(row);
        if (time.getMonth() == Month.FEBRUARY && time.getDayOfMonth() == 29) {
            return Double.NaN;
        }
        double day = CommonYear.firstDay(time.getMonthValue()) + time.getDayOfMonth() - 1;
        return ((double) time.getYear() * CommonYear.DAYS + day) * CommonYear.HOURS_A_DAY
                + time.toLocalTime().toSecondOfDay() / SECONDS_AN_HOUR;
    }

    private static LocalDateTime time(CsvRow row) {
        String text = row.required("time").replace(' ', 'T');
        try {
            TemporalAccessor time =
                    DateTimeFormatter.ISO_DATE_TIME.parseBest(text, OffsetDateTime::from, LocalDateTime::from);
            return time instanceof OffsetDateTime offset ? offset.toLocalDateTime() : LocalDateTime.from(time);
        } catch (DateTimeException e) {
            throw row.fault("time", "a date and time such as 2025-01-31T14:30");
        }
    }

    /** Day and month of an hour of the year, for people. */
    static String date(int hour) {
        int month = CommonYear.monthOfHour(hour);
        int day = hour / CommonYear.HOURS_A_DAY - CommonYear.firstDay(month) + 1;
        return day + " " + Month.of(month).getDisplayName(TextStyle.FULL, Locale.UK);
    }
}
