package hafthold.table;

import hafthold.quantity.Force;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.MoistureContent;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.quantity.TimeSpan;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a quantity is written in a file that people type.
 *
 * @param what the quantity, for people
 * @param units units it may have, the bench's first
 * @param example how to write one
 * @param parse reads a number with its unit
 */
record QuantityForm<T>(String what, List<String> units, String example, Function<String, T> parse) {
    static final QuantityForm<Length> LENGTH = new QuantityForm<>(
            "a length", List.of("mm", "in", "cm", "thou", "m"), "\"8 mm\" or \"5/16 in\"", Length::parse);
    static final QuantityForm<Temperature> TEMPERATURE =
            new QuantityForm<>("a temperature", List.of("C", "F", "K"), "\"20 C\" or \"70 F\"", Temperature::parse);
    static final QuantityForm<RelativeHumidity> HUMIDITY = new QuantityForm<>(
            "a relative humidity from 0 to 100 %", List.of("%"), "\"55 %\"", RelativeHumidity::parse);
    static final QuantityForm<MoistureContent> MOISTURE =
            new QuantityForm<>("a moisture content of the dry mass", List.of("%"), "\"10 %\"", MoistureContent::parse);
    static final QuantityForm<Mass> MASS =
            new QuantityForm<>("a weight", List.of("g", "kg", "oz", "gr"), "\"143.2 g\"", Mass::parse);
    static final QuantityForm<Force> FORCE =
            new QuantityForm<>("a force", List.of("N", "kN", "lbf"), "\"500 N\"", Force::parse);

    static final QuantityForm<TimeSpan> SPAN =
            new QuantityForm<>("a span of time", List.of("d", "h", "min", "weeks"), "\"12 d\"", TimeSpan::parse);

    private static final String INCH = "in";
    private static final Pattern NUMBER_FIRST = Pattern.compile("\\s*([0-9.,/\\s+-]*[0-9])(\\D*)");
    private static final Pattern MIXED = Pattern.compile("[0-9]+\\s+[0-9]+\\s*/\\s*[0-9]+");

    /** What would be right. */
    String expectation() {
        return what + ": a number and a unit (" + String.join(", ", units) + ") in quotes, such as " + example;
    }

    /** What would be right, and what may have gone wrong in a text that could not be read. */
    String expectationInsteadOf(String typed) {
        Matcher form = NUMBER_FIRST.matcher(typed);
        if (!form.matches()) {
            return expectation();
        }
        if (form.group(1).contains(",")) {
            return expectation() + "; write decimals with a point";
        }
        if (MIXED.matcher(form.group(1)).matches()) {
            return expectation() + "; write a whole number and a fraction as one, such as 1.125 or 9/8 for 1 1/8";
        }
        return expectation();
    }

    /** A bare number with the bench's first unit; empty where it has a unit or is none that can be read. */
    Optional<String> withUnit(String typed) {
        Matcher form = NUMBER_FIRST.matcher(typed);
        return form.matches() && form.group(2).isBlank()
                ? Optional.of(typed.strip() + " " + usualUnit(typed)).filter(text -> passes(text, any -> true))
                : Optional.empty();
    }

    /** Fractions are of inches, other numbers of the bench's first unit. */
    private String usualUnit(String typed) {
        return typed.contains("/") && units.contains(INCH) ? INCH : units.get(0);
    }

    /** The same number with the first unit that makes it pass. */
    Optional<String> otherUnit(String typed, Predicate<T> passes) {
        Matcher form = NUMBER_FIRST.matcher(typed);
        if (!form.matches()) {
            return Optional.empty();
        }
        String number = form.group(1).strip();
        return units.stream()
                .map(unit -> number + " " + unit)
                .filter(text -> passes(text, passes))
                .findFirst();
    }

    private boolean passes(String text, Predicate<T> test) {
        try {
            return test.test(parse.apply(text));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
