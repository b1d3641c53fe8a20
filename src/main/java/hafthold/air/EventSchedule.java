package hafthold.air;

import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All events of a year in the order they happen. One that would start while another lasts waits until it is over and the
 * knife has been out for an hour.
 *
 * @param occurrences what was asked for
 * @param years how many years in a row the events are repeated, 1 or more
 */
public record EventSchedule(List<EventOccurrence> occurrences, int years) {
    private static final double PAUSE_SECONDS = 3600;
    private static final double YEAR_SECONDS = CommonYear.HOURS * 3600.0;

    /** Keeps its own copy. */
    public EventSchedule {
        occurrences = List.copyOf(occurrences);
        if (years < 1) {
            throw new IllegalArgumentException("events go on for a year or more, got " + years);
        }
    }

    /** No events. */
    public static EventSchedule none() {
        return new EventSchedule(List.of(), 1);
    }

    /** True where nothing happens. */
    public boolean isEmpty() {
        return occurrences.isEmpty();
    }

    /** The distinct events, in the order asked for. */
    public List<Event> events() {
        return occurrences.stream().map(EventOccurrence::event).distinct().toList();
    }

    /** The dates that nobody said, one sentence each. */
    public List<Finding> taken() {
        return occurrences.stream()
                .flatMap(occurrence -> occurrence.taken().map(rule -> rule.finding(occurrence)).stream())
                .toList();
    }

    /**
     * One event at its time.
     *
     * @param event what happens
     * @param startSeconds seconds after the first midnight of the first year
     */
    public record Start(Event event, double startSeconds) {}

    /** Every start of all years, in order; what would not be over before the last year ends is left out. */
    public List<Start> starts() {
        List<Start> asked = new ArrayList<>();
        for (int year = 0; year < years; year++) {
            for (EventOccurrence occurrence : occurrences) {
                for (int n = 0; n < occurrence.count(); n++) {
                    asked.add(new Start(occurrence.event(), year * YEAR_SECONDS + occurrence.start(n)));
                }
            }
        }
        asked.sort(Comparator.comparingDouble(Start::startSeconds));
        List<Start> kept = new ArrayList<>();
        double free = 0;
        for (Start start : asked) {
            double from = Math.max(free, start.startSeconds());
            double over = from + start.event().seconds() + PAUSE_SECONDS;
            if (over < years * YEAR_SECONDS) {
                kept.add(new Start(start.event(), from));
                free = over;
            }
        }
        return kept;
    }
}
