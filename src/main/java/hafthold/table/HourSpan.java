package hafthold.table;

import hafthold.air.CommonYear;

/**
 * A stretch of hours of the year, from one that may run over New Year.
 *
 * @param first hour counted from 0 at midnight before 1 January
 * @param hours 0 to 8760
 */
public record HourSpan(int first, int hours) {
    /** The whole year. */
    public static final HourSpan YEAR = new HourSpan(0, CommonYear.HOURS);

    /** Rejects hours outside the year. */
    public HourSpan {
        if (first < 0 || first >= CommonYear.HOURS || hours < 0 || hours > CommonYear.HOURS) {
            throw new IllegalArgumentException("no hours of a year: " + hours + " from " + first);
        }
    }

    /** True for the whole year. */
    public boolean isWholeYear() {
        return hours == CommonYear.HOURS;
    }

    /** First and last hour for people. */
    String words() {
        return LoggerClock.dateAndHour(first) + " to "
                + LoggerClock.dateAndHour(Math.floorMod(first + hours - 1, CommonYear.HOURS));
    }

    /** True where every hour of another stretch lies within. */
    public boolean covers(HourSpan other) {
        int late = Math.floorMod(other.first - first, CommonYear.HOURS);
        return isWholeYear() || late + other.hours <= hours;
    }
}
