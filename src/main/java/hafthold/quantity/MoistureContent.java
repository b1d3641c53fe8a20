package hafthold.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Moisture content: mass of water over mass of the dry material.
 *
 * @param fraction kg/kg, 0 to 3 (waterlogged light wood holds about three times its dry mass)
 */
public record MoistureContent(double fraction) {
    private static final double MOST = 3;
    private static final String EXPECTATION =
            "a moisture content is a number and a %, such as \"10 %\" (of the dry mass)";
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of("%", x -> x / 100.0, "%mc", x -> x / 100.0);

    /** Rejects fractions outside 0 to 3. */
    public MoistureContent {
        if (!(fraction >= 0 && fraction <= MOST)) {
            throw new IllegalArgumentException("moisture content must lie between 0 and 3 kg/kg, got " + fraction);
        }
    }

    /**
     * Reads a moisture content with its unit, such as "10 %".
     *
     * @throws QuantityFormatException when the text is no moisture content, has no unit or lies outside 0 to 300 %
     */
    public static MoistureContent parse(String typed) {
        double fraction = UnitText.toSi(typed, UNITS, EXPECTATION);
        if (fraction < 0 || fraction > MOST) {
            throw new QuantityFormatException(typed, EXPECTATION);
        }
        return new MoistureContent(fraction);
    }

    /** The moisture content in percent of the dry mass. */
    public double percent() {
        return fraction * 100.0;
    }
}
