package hafthold.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Splits "5/16 in" into a number and a unit; shared by every quantity that a person types. */
final class UnitText {
    private static final Pattern FORM =
            Pattern.compile("\\s*([+-]?[0-9]+(?:\\.[0-9]+)?|[+-]?\\.[0-9]+)(?:\\s*/\\s*([0-9]+))?\\s*(\\D*?)\\s*");

    private UnitText() {}

    /** The typed amount in SI, by the unit's own rule; the expectation is shown when the text does not fit. */
    static double toSi(String typed, Map<String, DoubleUnaryOperator> units, String expectation) {
        Matcher form = FORM.matcher(typed);
        if (!form.matches()) {
            throw new QuantityFormatException(typed, expectation);
        }
        double amount = Double.parseDouble(form.group(1));
        if (form.group(2) != null) {
            double divisor = Double.parseDouble(form.group(2));
            if (divisor == 0) {
                throw new QuantityFormatException(typed, expectation);
            }
            amount /= divisor;
        }
        String unit = form.group(3).toLowerCase(Locale.ROOT);
        if (unit.isEmpty()) {
            throw new QuantityFormatException(typed, "the unit is missing; " + expectation);
        }
        DoubleUnaryOperator rule = units.get(unit);
        if (rule == null) {
            throw new QuantityFormatException(typed, "unit '" + unit + "' is not known here; " + expectation);
        }
        return rule.applyAsDouble(amount);
    }
}
