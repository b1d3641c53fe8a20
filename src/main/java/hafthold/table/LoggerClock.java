package hafthold.table;

import hafthold.air.CommonYear;
import hafthold.source.Message;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.Locale;

/**
 * Clock times of a logger as hours of years of 365 days. Times that state their offset from UTC are all brought to the
 * offset of the first, so that a change to summer time and back moves nothing; times without one are taken as they stand.
 */
final class LoggerClock {
    private static final double SECONDS_AN_HOUR = 3600;
    private static final int DATE_LENGTH = 10;
    private static final int MINUTES_LENGTH = 16;
    private static final int SECONDS_LENGTH = 19;

    private ZoneOffset kept;
    private String lastDate = "";
    private double lastDay;
    private boolean utc;

    /** True where the times say that they are UTC: the clock of the place is not known. */
    boolean isUtc() {
        return utc;
    }

    /**
     * Hours since midnight before 1 January of year 0, leap days left out; NaN on 29 February.
     *
     * @throws DateTimeException when the text is no ISO date and time
     */
    double hours(String text) {
        if (isPlain(text)) {
            int hour = digits(text, 11);
            int minute = digits(text, 14);
            int second = text.length() == SECONDS_LENGTH ? digits(text, 17) : 0;
            if (hour > 23 || minute > 59 || second > 59) {
                throw new DateTimeException("no time of the day");
            }
            return day(text) * CommonYear.HOURS_A_DAY + hour + (60 * minute + second) / SECONDS_AN_HOUR;
        }
        return hours(local(text));
    }

    /** True for 2025-01-31T14:30 and 2025-01-31 14:30:00: what nearly all loggers write needs no general parser. */
    private static boolean isPlain(String text) {
        int length = text.length();
        if (length != MINUTES_LENGTH && length != SECONDS_LENGTH) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            boolean right = switch (i) {
                case 4, 7 -> c == '-';
                case 10 -> c == 'T' || c == ' ';
                case 13, 16 -> c == ':';
                default -> c >= '0' && c <= '9';
            };
            if (!right) {
                return false;
            }
        }
        return true;
    }

    private static int digits(String text, int at) {
        return 10 * (text.charAt(at) - '0') + text.charAt(at + 1) - '0';
    }

    /** Readings of a day follow each other: its date is worked out once. */
    private double day(String text) {
        if (!text.regionMatches(0, lastDate, 0, DATE_LENGTH)) {
            lastDate = text.substring(0, DATE_LENGTH);
            lastDay = day(LocalDate.parse(lastDate));
        }
        return lastDay;
    }

    private static double day(LocalDate date) {
        return date.getMonth() == Month.FEBRUARY && date.getDayOfMonth() == 29
                ? Double.NaN
                : (double) date.getYear() * CommonYear.DAYS
                        + CommonYear.firstDay(date.getMonthValue())
                        + date.getDayOfMonth()
                        - 1;
    }

    private static double hours(LocalDateTime time) {
        return day(time.toLocalDate()) * CommonYear.HOURS_A_DAY
                + time.toLocalTime().toNanoOfDay() / (1e9 * SECONDS_AN_HOUR);
    }

    private LocalDateTime local(String text) {
        String iso = text.replace(' ', 'T');
        if (iso.indexOf('Z') < 0 && iso.indexOf('+') < 0 && iso.lastIndexOf('-') <= DATE_LENGTH) {
            return LocalDateTime.parse(iso);
        }
        OffsetDateTime time = OffsetDateTime.parse(iso, DateTimeFormatter.ISO_DATE_TIME);
        if (kept == null) {
            kept = time.getOffset();
            utc = kept.equals(ZoneOffset.UTC);
        }
        utc &= time.getOffset().equals(ZoneOffset.UTC);
        return time.withOffsetSameInstant(kept).toLocalDateTime();
    }

    /** Day and month of an hour of the year, as a message. */
    static Message day(int hour) {
        int month = CommonYear.monthOfHour(hour);
        return Message.day(month, hour / CommonYear.HOURS_A_DAY - CommonYear.firstDay(month) + 1);
    }

    /** Day and month of an hour of the year, for people. */
    static String date(int hour) {
        int month = CommonYear.monthOfHour(hour);
        int day = hour / CommonYear.HOURS_A_DAY - CommonYear.firstDay(month) + 1;
        return day + " " + Month.of(month).getDisplayName(TextStyle.FULL, Locale.UK);
    }

    /** Day, month and o'clock of an hour of the year, for people. */
    static String dateAndHour(int hour) {
        return date(hour) + ", " + hour % CommonYear.HOURS_A_DAY + ":00";
    }
}
