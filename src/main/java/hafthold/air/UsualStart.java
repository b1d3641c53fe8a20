package hafthold.air;

import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * When an event is taken to happen where nobody says: where it hurts most. Heat adds to the hottest week of the outdoor
 * year and frost to the coldest; of the rest, none of whose weeks is the worst for every scale, the middle of January is
 * taken. Always at noon.
 */
public enum UsualStart {
    /** Middle of the seven days with the highest mean temperature. */
    HOTTEST_WEEK("usual-start.hottest-week"),
    /** Middle of the seven days with the lowest mean temperature. */
    COLDEST_WEEK("usual-start.coldest-week"),
    /** 15 January. */
    MID_JANUARY("usual-start.mid-january");

    private static final int WEEK = 7;
    private static final int MIDDLE = 3;
    private static final int NOON = 12;
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;
    private static final int FIFTEENTH = 14;

    private final String key;

    UsualStart(String key) {
        this.key = key;
    }

    /** The rule for an event. */
    public static UsualStart of(Event event) {
        return event.isHot() ? HOTTEST_WEEK : event.isFreezing() ? COLDEST_WEEK : MID_JANUARY;
    }

    /**
     * An event in a year. What happens again and again without a last time goes on all year, counted so that one of its
     * times falls on that day.
     *
     * @param everySeconds time from start to start; infinity for once a year
     * @param times how often at most
     * @param outdoors closed year of outdoor air
     */
    public EventOccurrence place(Event event, double everySeconds, int times, AirSeries outdoors) {
        double noon = day(outdoors) * DAY + NOON * HOUR;
        // An hour after it the knife is out again, and all of that lies within the year.
        double latest = CommonYear.HOURS * HOUR - event.seconds() - 2 * HOUR;
        double start = Math.max(0, Math.min(noon, latest));
        boolean allYear = Double.isFinite(everySeconds) && times == Integer.MAX_VALUE;
        return new EventOccurrence(
                event, allYear ? start % everySeconds : start, everySeconds, times, Optional.of(this));
    }

    private int day(AirSeries outdoors) {
        if (this == MID_JANUARY) {
            return FIFTEENTH;
        }
        double[] days = dailyMeans(outdoors);
        int sign = this == HOTTEST_WEEK ? 1 : -1;
        int best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int first = 0; first < days.length; first++) {
            double sum = 0;
            for (int day = 0; day < WEEK; day++) {
                sum += sign * days[(first + day) % days.length];
            }
            if (sum > most) {
                most = sum;
                best = (first + MIDDLE) % days.length;
            }
        }
        return best;
    }

    private static double[] dailyMeans(AirSeries outdoors) {
        double[] sums = new double[CommonYear.DAYS];
        int[] samples = new int[CommonYear.DAYS];
        for (int i = 0; i < outdoors.size(); i++) {
            int day = (int) (i * outdoors.stepSeconds() / DAY) % CommonYear.DAYS;
            sums[day] += outdoors.temperatureCelsius(i);
            samples[day]++;
        }
        for (int day = 0; day < sums.length; day++) {
            sums[day] /= Math.max(1, samples[day]);
        }
        return sums;
    }

    /** What was taken, in a sentence. */
    Finding finding(EventOccurrence occurrence) {
        double first = occurrence.firstSeconds();
        int day = (int) (first / DAY);
        int month = CommonYear.monthOfDay(day);
        String clock = String.format(Locale.ROOT, "%02d:%02d", (int) (first % DAY / HOUR), (int) (first % HOUR / 60));
        boolean again = Double.isFinite(occurrence.everySeconds());
        boolean allYear = again && occurrence.times() == Integer.MAX_VALUE;
        return new Finding(
                Finding.Kind.DEFAULT,
                occurrence.event().id(),
                Message.of(
                        allYear ? "note.event-date.all-year" : again ? "note.event-date.again" : "note.event-date.once",
                        Map.of(
                                "event", occurrence.event().name(),
                                "date", Message.day(month, day - CommonYear.firstDay(month) + 1),
                                "time", Message.verbatim(clock),
                                "when", Message.of(key))));
    }
}
