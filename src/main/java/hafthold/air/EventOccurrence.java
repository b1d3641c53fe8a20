package hafthold.air;

import java.util.Optional;

/**
 * When an event happens in the year that stands for all years.
 *
 * @param event what happens
 * @param firstSeconds first start, seconds after midnight before 1 January, within the year
 * @param everySeconds time from start to start; infinity for once a year
 * @param times how often at most, 1 or more; the year ends it too
 * @param taken the rule that set the first start; empty where somebody said the date
 */
public record EventOccurrence(
        Event event, double firstSeconds, double everySeconds, int times, Optional<UsualStart> taken) {
    private static final double YEAR_SECONDS = CommonYear.HOURS * 3600.0;

    /** Rejects starts outside the year and repeats that come before the event is over. */
    public EventOccurrence {
        if (!(firstSeconds >= 0 && firstSeconds < YEAR_SECONDS) || times < 1) {
            throw new IllegalArgumentException(
                    "an event starts within the year, once or more, got " + firstSeconds + " s, " + times + " times");
        }
        if (!(everySeconds >= event.seconds())) {
            throw new IllegalArgumentException(
                    "event " + event.id() + " cannot start anew every " + everySeconds + " s before it is over");
        }
    }

    /** At a date that somebody said. */
    public EventOccurrence(Event event, double firstSeconds, double everySeconds, int times) {
        this(event, firstSeconds, everySeconds, times, Optional.empty());
    }

    /** Start of the n-th time, n from 0, seconds into the year. */
    double start(int n) {
        return n == 0 ? firstSeconds : firstSeconds + n * everySeconds;
    }

    /** How often it happens within the year. */
    int count() {
        int count = 0;
        while (count < times && start(count) < YEAR_SECONDS) {
            count++;
        }
        return count;
    }
}
