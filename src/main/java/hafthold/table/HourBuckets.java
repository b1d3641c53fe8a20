package hafthold.table;

import hafthold.air.CommonYear;
import java.util.TreeMap;

/**
 * Readings at any times, gathered as they come, in any order, into the mean of each hour: what a logger of minutes leaves
 * is as small as the year of one of hours. An hour reaches from half an hour before the clock strikes to half an hour
 * after; the mean time of its readings is kept too.
 */
final class HourBuckets {
    private static final double HALF_HOUR = 0.5;

    private final TreeMap<Long, Year> years = new TreeMap<>();
    private long latestYear = Long.MIN_VALUE;
    private Year latest = new Year();
    private long readings;
    private double first = Double.POSITIVE_INFINITY;
    private double last = Double.NEGATIVE_INFINITY;

    /** Sums over the readings of each hour of a year of 365 days. */
    private static final class Year {
        private final int[] count = new int[CommonYear.HOURS];
        private final double[] late = new double[CommonYear.HOURS];
        private final double[] celsius = new double[CommonYear.HOURS];
        private final double[] humidity = new double[CommonYear.HOURS];
    }

    /** One reading; hours count from midnight before 1 January of year 0, leap days left out. */
    void add(double hours, double celsius, double humidityFraction) {
        long hour = (long) Math.floor(hours + HALF_HOUR);
        long number = Math.floorDiv(hour, (long) CommonYear.HOURS);
        if (number != latestYear) {
            latestYear = number;
            latest = years.computeIfAbsent(number, none -> new Year());
        }
        int slot = (int) (hour - number * CommonYear.HOURS);
        latest.count[slot]++;
        latest.late[slot] += hours - hour;
        latest.celsius[slot] += celsius;
        latest.humidity[slot] += humidityFraction;
        readings++;
        first = Math.min(first, hours);
        last = Math.max(last, hours);
    }

    long readings() {
        return readings;
    }

    /** Hours from the earliest reading to the latest. */
    double spanHours() {
        return readings == 0 ? 0 : last - first;
    }

    /** The hour of the earliest reading. */
    long firstHour() {
        return (long) Math.floor(first + HALF_HOUR);
    }

    /** The hour of the latest reading. */
    long lastHour() {
        return (long) Math.floor(last + HALF_HOUR);
    }

    /** The 365 days that end with the latest reading, laid out from 1 January. */
    ClosedReadings lastYear() {
        ClosedReadings year = new ClosedReadings();
        for (int slot = 0; slot < CommonYear.HOURS; slot++) {
            put(year, slot, hourOf(slot));
        }
        return year;
    }

    /** Fills hours of gaps longer than {@code hours} from the years before, where they have them; counts them. */
    int borrow(ClosedReadings year, int hours) {
        int borrowed = 0;
        for (int slot : year.inGapsOver(hours)) {
            for (long hour = hourOf(slot) - CommonYear.HOURS; hour >= firstHour(); hour -= CommonYear.HOURS) {
                if (put(year, slot, hour)) {
                    borrowed++;
                    break;
                }
            }
        }
        return borrowed;
    }

    /** The latest hour not after the last reading that falls on an hour of the year. */
    private long hourOf(int slot) {
        long end = lastHour();
        return end - Math.floorMod(end - slot, (long) CommonYear.HOURS);
    }

    private boolean put(ClosedReadings to, int slot, long hour) {
        Year year = years.get(Math.floorDiv(hour, (long) CommonYear.HOURS));
        int n = year == null ? 0 : year.count[slot];
        if (n == 0) {
            return false;
        }
        to.put(slot, year.late[slot] / n, year.celsius[slot] / n, year.humidity[slot] / n);
        return true;
    }
}
