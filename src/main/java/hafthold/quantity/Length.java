package hafthold.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * A length.
 *
 * @param metres the length in metres, finite
 */
public record Length(double metres) {
    private static final double METRES_PER_INCH = 0.0254;
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "mm", x -> x / 1000.0,
            "cm", x -> x / 100.0,
            "m", x -> x,
            "in", x -> x * METRES_PER_INCH,
            "inch", x -> x * METRES_PER_INCH,
            "\"", x -> x * METRES_PER_INCH,
            "thou", x -> x * METRES_PER_INCH / 1000.0);

    /** Rejects numbers that are not finite. */
    public Length {
        if (!Double.isFinite(metres)) {
            throw new IllegalArgumentException("a length must be finite, got " + metres);
        }
    }

    /** A length from millimetres. */
    public static Length ofMillimetres(double millimetres) {
        return new Length(millimetres / 1000.0);
    }

    /**
     * Reads a length with its unit, such as "8 mm", "5/16 in" or "0.3 in".
     *
     * @throws QuantityFormatException when the text is no length or has no unit
     */
    public static Length parse(String typed) {
        return new Length(
                UnitText.toSi(typed, UNITS, "a length is a number and a unit, such as \"8 mm\" or \"5/16 in\""));
    }

    /** The length in millimetres. */
    public double millimetres() {
        return metres * 1000.0;
    }

    /** For messages: the number with its unit, not rounded. */
    @Override
    public String toString() {
        return millimetres() + " mm";
    }
}
