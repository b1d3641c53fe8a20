package hafthold.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * A pressure of water vapour, or a difference of two.
 *
 * @param pascals zero or more
 */
public record VapourPressure(double pascals) {
    private static final Map<String, DoubleUnaryOperator> UNITS =
            Map.of("pa", x -> x, "hpa", x -> x * 100.0, "kpa", x -> x * 1000.0);

    /** Rejects numbers that are no pressure. */
    public VapourPressure {
        if (!(pascals >= 0) || !Double.isFinite(pascals)) {
            throw new IllegalArgumentException("a vapour pressure is zero or more, got " + pascals);
        }
    }

    /**
     * Reads a pressure with its unit, such as "540 Pa".
     *
     * @throws QuantityFormatException when the text is no pressure, has no unit or is negative
     */
    public static VapourPressure parse(String typed) {
        String expectation = "a vapour pressure is a number and a unit, such as \"540 Pa\"";
        double pascals = UnitText.toSi(typed, UNITS, expectation);
        if (pascals < 0) {
            throw new QuantityFormatException(typed, expectation);
        }
        return new VapourPressure(pascals);
    }
}
