package hafthold.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * A force.
 *
 * @param newtons the force in newtons, finite
 */
public record Force(double newtons) {
    /** Pound-force: 0.45359237 kg (international pound) x 9.80665 m/s2 (standard gravity), both exact by definition. */
    private static final double NEWTONS_PER_POUND = 0.45359237 * 9.80665;

    private static final Map<String, DoubleUnaryOperator> UNITS =
            Map.of("n", x -> x, "kn", x -> x * 1000.0, "lbf", x -> x * NEWTONS_PER_POUND);

    /** Rejects numbers that are not finite. */
    public Force {
        if (!Double.isFinite(newtons)) {
            throw new IllegalArgumentException("a force must be finite, got " + newtons);
        }
    }

    /**
     * Reads a force with its unit, such as "500 N" or "110 lbf".
     *
     * @throws QuantityFormatException when the text is no force or has no unit
     */
    public static Force parse(String typed) {
        return new Force(UnitText.toSi(typed, UNITS, "a force is a number and a unit, such as \"500 N\""));
    }
}
