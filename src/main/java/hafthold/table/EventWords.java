package hafthold.table;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.Event;
import hafthold.air.EventOccurrence;
import hafthold.air.UsualStart;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads when an event happens from plain words:
 *
 * <pre>
 * EVENT [from DATE [TIME]] [every N min|h|d|weeks] [N times]
 * dishwasher from 2026-02-10 20:00 every 7 d
 * </pre>
 *
 * <p>A date is 2026-02-10 or 02-10; the year it names does not count, as one year stands for all. Without a date it starts
 * where {@link UsualStart} puts it, without a time at noon, without a repeat it happens once a year.
 */
public final class EventWords {
    /** What the words look like. */
    public static final String FORM = "EVENT [from DATE [TIME]] [every N min|h|d|weeks] [N times], such as"
            + " \"dishwasher from 2026-02-10 20:00 every 7 d\"";

    private static final Pattern DATE = Pattern.compile("(?:\\d{4}-)?(\\d{1,2})-(\\d{1,2})");
    private static final Pattern TIME = Pattern.compile("(\\d{1,2}):(\\d{2})");
    private static final Pattern LENGTH = Pattern.compile("(\\d+(?:\\.\\d+)?)([a-z]*)");
    private static final double HOUR = 3600;
    private static final int FOR_EVER = Integer.MAX_VALUE;

    private final String typed;
    private final EventTable events;
    private OptionalDouble first = OptionalDouble.empty();
    private double every = Double.POSITIVE_INFINITY;
    private int times = FOR_EVER;

    private EventWords(String typed, EventTable events) {
        this.typed = typed;
        this.events = events;
    }

    /**
     * One occurrence.
     *
     * @param outdoors the closed year of outdoor air that it is placed in where no date is said
     * @throws UnknownEventWordsException when the words are not understood
     * @throws UnknownIdException when there is no such event
     */
    public static EventOccurrence read(String typed, EventTable events, AirSeries outdoors) {
        return new EventWords(typed, events).read(outdoors);
    }

    private EventOccurrence read(AirSeries outdoors) {
        List<String> words = Arrays.asList(typed.strip().split("\\s+"));
        if (words.get(0).isEmpty()) {
            throw fault("is empty");
        }
        Event event = events.find(words.get(0));
        Iterator<String> rest = words.subList(1, words.size()).iterator();
        String word = rest.hasNext() ? rest.next() : "";
        while (!word.isEmpty()) {
            String next;
            switch (word) {
                case "from" -> {
                    double day = date(next(rest, "a date after 'from'"));
                    next = rest.hasNext() ? rest.next() : "";
                    Matcher time = TIME.matcher(next);
                    if (time.matches()) {
                        first = OptionalDouble.of(day + clock(next, time));
                        next = rest.hasNext() ? rest.next() : "";
                    } else {
                        first = OptionalDouble.of(day + 12 * HOUR);
                    }
                }
                case "every" -> {
                    every = length(next(rest, "a time after 'every', such as 7 d"), rest);
                    next = rest.hasNext() ? rest.next() : "";
                }
                default -> {
                    if (!word.matches("\\d{1,6}") || !"times".equals(next(rest, "'times' after " + word))) {
                        throw fault("has '" + word + "' where from, every or N times should be");
                    }
                    times = Integer.parseInt(word);
                    if (times < 1) {
                        throw fault("has to happen once or more");
                    }
                    next = rest.hasNext() ? rest.next() : "";
                }
            }
            word = next;
        }
        if (every < event.seconds()) {
            throw fault(String.format(
                    Locale.ROOT, "starts anew before it is over: %s takes %.1f h", event.id(), event.seconds() / HOUR));
        }
        int count = Double.isInfinite(every) ? 1 : times;
        return first.isPresent()
                ? new EventOccurrence(event, first.getAsDouble(), every, count)
                : UsualStart.of(event).place(event, every, count, outdoors);
    }

    private String next(Iterator<String> rest, String expected) {
        if (!rest.hasNext()) {
            throw fault("ends where there should be " + expected);
        }
        return rest.next();
    }

    private double date(String word) {
        Matcher date = DATE.matcher(word);
        if (date.matches()) {
            int month = Integer.parseInt(date.group(1));
            int day = Integer.parseInt(date.group(2));
            if (month >= 1 && month <= CommonYear.MONTHS && day >= 1) {
                // 29 February has no place of its own in a year of 365 days.
                int known = month == 2 && day == 29 ? 28 : day;
                if (known <= CommonYear.daysOfMonth(month)) {
                    return (CommonYear.firstDay(month) + known - 1) * 24 * HOUR;
                }
            }
        }
        throw fault("has '" + word + "' for a date; write 2026-02-10 or 02-10");
    }

    private double clock(String word, Matcher time) {
        int hour = Integer.parseInt(time.group(1));
        int minute = Integer.parseInt(time.group(2));
        if (hour > 23 || minute > 59) {
            throw fault("has '" + word + "' for a time; write 00:00 to 23:59");
        }
        return hour * HOUR + minute * 60.0;
    }

    private double length(String word, Iterator<String> rest) {
        Matcher length = LENGTH.matcher(word);
        if (!length.matches()) {
            throw fault("has '" + word + "' for a time; write a number and min, h, d or weeks");
        }
        String unit = length.group(2).isEmpty() ? next(rest, "min, h, d or weeks") : length.group(2);
        double seconds = switch (unit) {
            case "min", "minutes" -> 60;
            case "h", "hour", "hours" -> HOUR;
            case "d", "day", "days" -> 24 * HOUR;
            case "w", "week", "weeks" -> 168 * HOUR;
            default -> throw fault("has '" + unit + "' for a unit of time; write min, h, d or weeks");
        };
        double amount = Double.parseDouble(length.group(1)) * seconds;
        if (!(amount > 0)) {
            throw fault("has to take time between starts");
        }
        return amount;
    }

    private UnknownEventWordsException fault(String what) {
        return new UnknownEventWordsException("event '" + typed + "' " + what + "; write " + FORM);
    }
}
