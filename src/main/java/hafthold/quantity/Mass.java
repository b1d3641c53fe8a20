package hafthold.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * A mass as a scale shows it.
 *
 * @param kilograms the mass in kilograms, finite
 */
public record Mass(double kilograms) {
    /** International avoirdupois ounce, exact by definition. */
    private static final double KILOGRAMS_PER_OUNCE = 0.028349523125;

    /** Grain, 1/7000 of the pound of 16 ounces, exact by definition. */
    private static final double KILOGRAMS_PER_GRAIN = 6.479891e-5;

    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "g", x -> x / 1000.0,
            "mg", x -> x / 1e6,
            "kg", x -> x,
            "oz", x -> x * KILOGRAMS_PER_OUNCE,
            "gr", x -> x * KILOGRAMS_PER_GRAIN);

    /** Rejects numbers that are not finite. */
    public Mass {
        if (!Double.isFinite(kilograms)) {
            throw new IllegalArgumentException("a mass must be finite, got " + kilograms);
        }
    }

    /** A mass from grams. */
    public static Mass ofGrams(double grams) {
        return new Mass(grams / 1000.0);
    }

    /**
     * Reads a mass with its unit, such as "25.4 g" or "0.9 oz".
     *
     * @throws QuantityFormatException when the text is no mass or has no unit
     */
    public static Mass parse(String typed) {
        return new Mass(UnitText.toSi(typed, UNITS, "a mass is a number and a unit, such as \"25.4 g\""));
    }

    /** The mass in grams. */
    public double grams() {
        return kilograms * 1000.0;
    }
}
