package hafthold.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * A mass, as a balance shows it.
 *
 * @param kilograms the mass in kilograms, zero or more
 */
public record Mass(double kilograms) {
    /** Avoirdupois ounce, a sixteenth of the pound of 0.45359237 kg, exact by definition. */
    private static final double KILOGRAMS_PER_OUNCE = 0.45359237 / 16;

    /** Grain, 1/7000 of the pound, exact by definition. */
    private static final double KILOGRAMS_PER_GRAIN = 0.45359237 / 7000;

    private static final String EXPECTATION = "a mass is a number and a unit, such as \"143.2 g\"";
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "g", x -> x / 1000.0,
            "mg", x -> x / 1e6,
            "kg", x -> x,
            "oz", x -> x * KILOGRAMS_PER_OUNCE,
            "gr", x -> x * KILOGRAMS_PER_GRAIN);

    /** Rejects what is no mass. */
    public Mass {
        if (!(kilograms >= 0) || !Double.isFinite(kilograms)) {
            throw new IllegalArgumentException("a mass must be finite and not negative, got " + kilograms);
        }
    }

    /** A mass from grams. */
    public static Mass ofGrams(double grams) {
        return new Mass(grams / 1000.0);
    }

    /**
     * Reads a mass with its unit, such as "143.2 g" or "5 oz".
     *
     * @throws QuantityFormatException when the text is no mass, has no unit or is below zero
     */
    public static Mass parse(String typed) {
        double kilograms = UnitText.toSi(typed, UNITS, EXPECTATION);
        if (kilograms < 0) {
            throw new QuantityFormatException(typed, EXPECTATION);
        }
        return new Mass(kilograms);
    }

    /** The mass in grams. */
    public double grams() {
        return kilograms * 1000.0;
    }
}
