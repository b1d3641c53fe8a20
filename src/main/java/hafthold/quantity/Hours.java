package hafthold.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * A span of time at the bench.
 *
 * @param hours its length, more than zero, finite
 */
public record Hours(double hours) {
    private static final String EXPECTATION = "a time is a number and a unit, such as \"24 h\"";
    private static final Map<String, DoubleUnaryOperator> UNITS =
            Map.of("h", x -> x, "min", x -> x / 60.0, "d", x -> x * 24.0);
    private static final double SECONDS = 3600;

    /** Rejects what takes no time. */
    public Hours {
        if (!(hours > 0) || !Double.isFinite(hours)) {
            throw new IllegalArgumentException("a time must be finite and more than zero, got " + hours + " h");
        }
    }

    /**
     * Reads a time with its unit, such as "24 h", "90 min" or "3 d".
     *
     * @throws QuantityFormatException when the text is no time, has no unit or is not more than zero
     */
    public static Hours parse(String typed) {
        double hours = UnitText.toSi(typed, UNITS, EXPECTATION);
        if (!(hours > 0)) {
            throw new QuantityFormatException(typed, EXPECTATION);
        }
        return new Hours(hours);
    }

    /** The time in seconds. */
    public double seconds() {
        return hours * SECONDS;
    }
}
