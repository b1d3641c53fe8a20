package hafthold.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * A temperature.
 *
 * @param celsius degrees Celsius, above absolute zero
 */
public record Temperature(double celsius) {
    /** 0 degrees Celsius in kelvin (exact by definition of the Celsius scale, SI brochure 9). */
    public static final double ZERO_CELSIUS_KELVIN = 273.15;

    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "c", x -> x,
            "°c", x -> x,
            "f", x -> (x - 32.0) / 1.8,
            "°f", x -> (x - 32.0) / 1.8,
            "k", x -> x - ZERO_CELSIUS_KELVIN);

    /** Rejects numbers at or below absolute zero. */
    public Temperature {
        if (!(celsius > -ZERO_CELSIUS_KELVIN) || !Double.isFinite(celsius)) {
            throw new IllegalArgumentException("a temperature must lie above absolute zero, got " + celsius + " C");
        }
    }

    /**
     * Reads a temperature with its unit, such as "20 C" or "70 F".
     *
     * @throws QuantityFormatException when the text is no temperature or has no unit
     */
    public static Temperature parse(String typed) {
        return new Temperature(
                UnitText.toSi(typed, UNITS, "a temperature is a number and a unit, such as \"20 C\" or \"70 F\""));
    }

    /** The temperature in kelvin. */
    public double kelvin() {
        return celsius + ZERO_CELSIUS_KELVIN;
    }

    /** For messages: the number with its unit, not rounded. */
    @Override
    public String toString() {
        return celsius + " C";
    }
}
