package hafthold.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Relative humidity over liquid water.
 *
 * @param fraction 0 to 1
 */
public record RelativeHumidity(double fraction) {
    private static final String EXPECTATION = "a relative humidity is a number from 0 to 100 and a %, such as \"50 %\"";
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of("%", x -> x / 100.0, "%rh", x -> x / 100.0);

    /** Rejects fractions outside 0 to 1. */
    public RelativeHumidity {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException("relative humidity must lie between 0 and 1, got " + fraction);
        }
    }

    /**
     * Reads a humidity with its unit, such as "50 %".
     *
     * @throws QuantityFormatException when the text is no humidity, has no unit or lies outside 0 to 100 %
     */
    public static RelativeHumidity parse(String typed) {
        double fraction = UnitText.toSi(typed, UNITS, EXPECTATION);
        if (fraction < 0 || fraction > 1) {
            throw new QuantityFormatException(typed, EXPECTATION);
        }
        return new RelativeHumidity(fraction);
    }

    /** The humidity in percent. */
    public double percent() {
        return fraction * 100.0;
    }

    /** For messages: the number with its unit, not rounded. */
    @Override
    public String toString() {
        return 100 * fraction + " %";
    }
}
