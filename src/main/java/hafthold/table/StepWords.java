package hafthold.table;

import hafthold.knife.MeasuringPoint;
import hafthold.quantity.Length;
import hafthold.quantity.QuantityFormatException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a step as people say it: {@code 0.2 mm proud}, {@code tang proud 0.2 mm}, {@code sunk 3 thou}, {@code flush}, or
 * with a sign, {@code -0.2 mm}, where minus means that the scale is shy.
 *
 * <p>Proud means the scale above the steel, or a pin's head above the face; whoever says that the tang or the steel stands
 * proud means a scale that is shy.
 */
final class StepWords {
    private static final Pattern SIZE =
            Pattern.compile("([+-]?)\\s*(\\d[\\d./]*\\s*(?:mm|cm|m|in|inch|thou|\")?)(?=\\s|$)");
    /** Only right before the side: "shy all round the tang" is another thing than "tang shy". */
    private static final Pattern STEEL = Pattern.compile("\\b(tang|steel|bolster)\\s+(?=(?:proud|shy|sunk|short)\\b)");

    private static final Pattern UP = Pattern.compile("\\bproud\\b");
    private static final Pattern DOWN = Pattern.compile("\\b(shy|sunk|short)\\b");
    private static final Pattern FILLING = Pattern.compile("\\b(by|about|all|round|each|side|a|the)\\b");

    private StepWords() {}

    /** What would be right for a point. */
    static String expectation(MeasuringPoint point) {
        return switch (point) {
            case PIN_GAP -> "a width, such as \"0.1 mm\"";
            case PIN_HEADS ->
                "a step and its side, such as \"0.05 mm proud\" (head above the face) or \"0.05 mm sunk\"";
            default ->
                "a step and its side, such as \"0.2 mm proud\" (scale above the steel), \"0.2 mm shy\" (steel above"
                        + " the scale), or \"flush\"";
        };
    }

    /** The signed step, positive proud; empty where the words are not understood. */
    static Optional<Length> read(MeasuringPoint point, String typed) {
        String words = typed.strip().toLowerCase(Locale.ROOT).replace('\u2212', '-');
        if (words.equals("flush") || words.equals("none")) {
            return Optional.of(new Length(0));
        }
        Matcher size = SIZE.matcher(words);
        if (!size.find()) {
            return Optional.empty();
        }
        String rest = words.substring(0, size.start()) + " " + words.substring(size.end());
        boolean up = UP.matcher(rest).find();
        boolean down = DOWN.matcher(rest).find();
        boolean steel = STEEL.matcher(rest).find();
        String left = rest;
        for (Pattern known : new Pattern[] {STEEL, UP, DOWN, FILLING}) {
            left = known.matcher(left).replaceAll("");
        }
        boolean signed = !size.group(1).isEmpty();
        boolean understood = left.isBlank()
                && (point.isSigned()
                        ? (up ^ down) ^ signed
                        : !up && !down && !size.group(1).equals("-"));
        return understood
                ? length(size.group(2))
                        .map(length -> new Length(sign(point, size.group(1), down, steel) * length.metres()))
                : Optional.empty();
    }

    private static int sign(MeasuringPoint point, String typed, boolean down, boolean steel) {
        if (!point.isSigned()) {
            return 1;
        }
        boolean below = typed.isEmpty() ? down : typed.equals("-");
        return below != steel ? -1 : 1;
    }

    private static Optional<Length> length(String typed) {
        try {
            return Optional.of(Length.parse(typed));
        } catch (QuantityFormatException e) {
            return Optional.empty();
        }
    }
}
