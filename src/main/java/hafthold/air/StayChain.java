package hafthold.air;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The stays of a knife from final sanding on, hour by hour: each by the calendar until the next, the last for a year, and
 * then the year of the last stay as it comes round again for ever.
 *
 * <p>Air changes from one stay to the next within an hour. On 29 February the air of the day before is taken.
 */
public final class StayChain {
    private static final double STEP_SECONDS = 3600;

    private final List<Stay> stays;
    private final int[] firstDays;

    /**
     * A chain.
     *
     * @param stays one or more, in rising order of their days; the first day is that of final sanding
     */
    public StayChain(List<Stay> stays) {
        if (stays.isEmpty()) {
            throw new IllegalArgumentException("there must be a stay");
        }
        this.stays = List.copyOf(stays);
        firstDays = new int[stays.size()];
        for (int i = 1; i < firstDays.length; i++) {
            firstDays[i] = Math.toIntExact(
                    ChronoUnit.DAYS.between(stays.get(0).from(), stays.get(i).from()));
            if (firstDays[i] <= firstDays[i - 1]) {
                throw new IllegalArgumentException("stays must follow each other, got "
                        + stays.get(i - 1).from() + " and then " + stays.get(i).from());
            }
        }
    }

    /** The stays in their order. */
    public List<Stay> stays() {
        return stays;
    }

    /** The last one. */
    public Stay last() {
        return stays.get(stays.size() - 1);
    }

    /** Days before the year that repeats: those to the last stay, and a year there. */
    public int daysBeforeRepeat() {
        return firstDays[firstDays.length - 1] + CommonYear.DAYS;
    }

    /** All days: those before, and the year that repeats. */
    public int days() {
        return daysBeforeRepeat() + CommonYear.DAYS;
    }

    /** The day counted from final sanding. */
    public LocalDate date(int day) {
        return stays.get(0).from().plusDays(day);
    }

    /** Which stay a day belongs to, counted from 0. */
    public int stayOfDay(int day) {
        int stay = 0;
        while (stay + 1 < firstDays.length && firstDays[stay + 1] <= day) {
            stay++;
        }
        return stay;
    }

    /** First day of a stay, counted from final sanding. */
    public int firstDay(int stay) {
        return firstDays[stay];
    }

    /** The day of a year of 365, counted from 0 on 1 January, whose air a day has. */
    public int dayOfYear(int day) {
        if (day >= daysBeforeRepeat()) {
            return (dayOfYear(date(daysBeforeRepeat())) + day - daysBeforeRepeat()) % CommonYear.DAYS;
        }
        return dayOfYear(date(day));
    }

    private static int dayOfYear(LocalDate date) {
        int month = date.getMonthValue();
        return CommonYear.firstDay(month) + Math.min(date.getDayOfMonth(), CommonYear.daysOfMonth(month)) - 1;
    }

    /** The days of the year that repeats, from 1 January on, as days counted from final sanding. */
    public List<Integer> repeatingDays() {
        int first = dayOfYear(daysBeforeRepeat());
        List<Integer> days = new ArrayList<>();
        for (int day = 0; day < CommonYear.DAYS; day++) {
            days.add(daysBeforeRepeat() + Math.floorMod(day - first, CommonYear.DAYS));
        }
        return days;
    }

    /**
     * Air about the knife over all days.
     *
     * @param side -1, 0 or 1: every humidity lower by its doubt, as it is, or higher
     */
    public AirSeries air(int side) {
        return air(0, days(), side);
    }

    /** Air over the year that repeats, from the day it begins with. */
    public AirSeries repeatingAir(int side) {
        return air(daysBeforeRepeat(), days(), side);
    }

    private AirSeries air(int from, int to, int side) {
        double[] temperature = new double[(to - from) * CommonYear.HOURS_A_DAY];
        double[] humidity = new double[temperature.length];
        for (int day = from; day < to; day++) {
            Stay stay = stays.get(stayOfDay(day));
            int source = dayOfYear(day) * CommonYear.HOURS_A_DAY;
            int target = (day - from) * CommonYear.HOURS_A_DAY;
            for (int hour = 0; hour < CommonYear.HOURS_A_DAY; hour++) {
                temperature[target + hour] = stay.air().temperatureCelsius(source + hour);
                double there = stay.air().relativeHumidityFraction(source + hour);
                humidity[target + hour] = Math.max(0, Math.min(1, there + side * stay.humidityDoubtFraction()));
            }
        }
        return new AirSeries(STEP_SECONDS, temperature, humidity);
    }
}
