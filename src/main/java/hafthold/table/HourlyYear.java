package hafthold.table;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Makes a closed year of hours of gathered readings, and says what was bridged, borrowed and left out. */
final class HourlyYear {
    private static final double STEP_SECONDS = 3600;
    /** Readings further apart than this say nothing about day and night, hours. */
    private static final int LONGEST_INTERVAL_HOURS = 25;

    private static final int DAY_AND_NIGHT_HOURS = 6;
    private static final int NEXT_HOUR = 1;

    private final String file;
    private final HourlyReading may;
    private final List<Finding> findings = new ArrayList<>();

    HourlyYear(String file, HourlyReading may) {
        this.file = file;
        this.may = may;
    }

    /** Another thing that was done to the file. */
    void note(Message message) {
        findings.add(new Finding(Finding.Kind.ESTIMATE, file, message));
    }

    /** Likewise, told with the file and a count of rows or times. */
    void note(String key, long count) {
        note(Message.of(key, Map.of("file", Message.verbatim(file), "count", Message.number((double) count, 0))));
    }

    /**
     * The year.
     *
     * @param name what the file says it is
     * @throws InvalidTableException when the readings leave gaps that may not be bridged
     */
    HourlyFile of(String name, HourBuckets readings) {
        if (readings.readings() == 0) {
            throw new InvalidTableException(file, "holds no readings; expected a row a reading below the header");
        }
        ClosedReadings year = readings.lastYear();
        int usual = usualInterval(year.slots());
        int borrowed = readings.borrow(year, usual - 1 + HourlyReading.SHORT_GAP_HOURS);
        boolean wholeYear = readings.spanHours() >= CommonYear.HOURS - usual - may.bridgedHours() - 1.0;
        if (!wholeYear && !may.partOfYear()) {
            throw new InvalidTableException(file, tooShort(readings));
        }
        if (usual > LONGEST_INTERVAL_HOURS) {
            throw new InvalidTableException(
                    file, "has readings " + usual + " hours apart; expected one a day at least");
        }
        int filled = bridge(year.slots(), usual, wholeYear ? -1 : slot(readings.lastHour()));
        if (wholeYear && readings.spanHours() > CommonYear.HOURS + usual) {
            note(Message.of(
                    borrowed == 0 ? "note.air.last-year" : "note.air.last-year.lacking",
                    Map.of(
                            "file", Message.verbatim(file),
                            "days", Message.number(readings.spanHours() / CommonYear.HOURS_A_DAY, 0),
                            "date", LoggerClock.day(slot(readings.lastHour())),
                            "borrowed", Message.number(borrowed, 0))));
        }
        if (usual >= DAY_AND_NIGHT_HOURS) {
            note("note.air.far-apart", usual);
        }
        double[] temperature = new double[CommonYear.HOURS];
        double[] humidity = new double[CommonYear.HOURS];
        year.lines(temperature, humidity);
        return new HourlyFile(
                name,
                new AirSeries(STEP_SECONDS, temperature, humidity),
                wholeYear
                        ? HourSpan.YEAR
                        : new HourSpan(
                                slot(readings.firstHour()),
                                (int) (readings.lastHour() - readings.firstHour()) + NEXT_HOUR),
                filled,
                findings);
    }

    /** Hours between neighbours, the middle one of all. */
    private static int usualInterval(int[] slots) {
        int[] apart = new int[slots.length];
        Arrays.setAll(apart, i -> ClosedReadings.apart(slots, i));
        Arrays.sort(apart);
        return apart[(apart.length - 1) / 2];
    }

    /**
     * Counts the hours that are put in where the file lacks some.
     *
     * @param end hour that nothing follows, -1 in a closed year
     */
    private int bridge(int[] slots, int usual, int end) {
        int filled = 0;
        int longest = 0;
        int gaps = 0;
        for (int i = 0; i < slots.length; i++) {
            int lacks = slots[i] == end ? 0 : ClosedReadings.apart(slots, i) - usual;
            if (2 * lacks <= usual - 1) {
                continue;
            }
            if (lacks > may.bridgedHours()) {
                throw new InvalidTableException(file, gap(slots[i], lacks));
            }
            filled += lacks;
            longest = Math.max(longest, lacks);
            gaps++;
        }
        if (filled > 0) {
            note(Message.of(
                    gaps == 1 ? "note.air.gap" : "note.air.gaps",
                    Map.of(
                            "file", Message.verbatim(file),
                            "hours", Message.number(filled, 0),
                            "gaps", Message.number(gaps, 0),
                            "longest", Message.number(longest, 0))));
        }
        return filled;
    }

    private String gap(int before, int hours) {
        return "has nothing for " + hours + " hours after " + LoggerClock.dateAndHour(before) + "; expected gaps of "
                + HourlyReading.SHORT_GAP_HOURS + " hours at most"
                + (hours <= HourlyReading.LONGEST_GAP_HOURS
                        ? "; --allow-gaps draws a straight line over as many as " + HourlyReading.LONGEST_GAP_HOURS
                        : ", with --allow-gaps " + HourlyReading.LONGEST_GAP_HOURS);
    }

    private String tooShort(HourBuckets readings) {
        return "covers " + Math.round(readings.spanHours() / CommonYear.HOURS_A_DAY) + " of 365 days, "
                + LoggerClock.dateAndHour(slot(readings.firstHour())) + " to "
                + LoggerClock.dateAndHour(slot(readings.lastHour()))
                + "; a year that repeats needs readings all year round. For less, name the file as the climate of a stay"
                + " before the last in a table of --stays: it counts there as recorded";
    }

    private static int slot(long hour) {
        return (int) Math.floorMod(hour, (long) CommonYear.HOURS);
    }
}
