package hafthold.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * How long something lay somewhere.
 *
 * @param seconds zero or more, finite
 */
public record TimeSpan(double seconds) {
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.ofEntries(
            Map.entry("min", x -> x * 60),
            Map.entry("h", x -> x * HOUR),
            Map.entry("hour", x -> x * HOUR),
            Map.entry("hours", x -> x * HOUR),
            Map.entry("d", x -> x * DAY),
            Map.entry("day", x -> x * DAY),
            Map.entry("days", x -> x * DAY),
            Map.entry("week", x -> x * 7 * DAY),
            Map.entry("weeks", x -> x * 7 * DAY));

    /** Rejects what is no span of time. */
    public TimeSpan {
        if (!(seconds >= 0) || Double.isInfinite(seconds)) {
            throw new IllegalArgumentException("a span of time is zero or more, got " + seconds + " s");
        }
    }

    /** A span from days. */
    public static TimeSpan ofDays(double days) {
        return new TimeSpan(days * DAY);
    }

    /**
     * Reads a span with its unit, such as "6 h", "12 d" or "3 weeks".
     *
     * @throws QuantityFormatException when the text is no span of time or has no unit
     */
    public static TimeSpan parse(String typed) {
        double seconds =
                UnitText.toSi(typed, UNITS, "a span of time is a number and min, h, d or weeks, such as \"12 d\"");
        if (seconds < 0) {
            throw new QuantityFormatException(typed, "a span of time is zero or more, such as \"12 d\"");
        }
        return new TimeSpan(seconds);
    }

    /** The span in days. */
    public double days() {
        return seconds / DAY;
    }
}
