package hafthold.report;

import hafthold.quantity.Band;
import hafthold.quantity.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A movement as it is read at the bench: with no more digits than its band deserves.
 *
 * <p>The last digit printed is the largest of 0.01, 0.1 and 1 mm that is not more than twice the wider half of the
 * band, so that 0.213 mm known to 0.05 mm reads 0.2. The ends of the band are rounded to that digit where it is
 * 0.01 mm, else to half of it. Below 0.45 mm it is 0.01 mm whatever the band: there the limits of the classes of work lie
 * so close that a coarser digit would hide on which side of one the movement falls. How far it may stray its range tells.
 *
 * @param metres the movement, metres
 */
record BenchLength(Band metres) {
    private static final BigDecimal FINEST = new BigDecimal("0.01");
    private static final double SLACK = 1e-9;

    /** Beyond the loosest limit of the shipped classes of work and half a tenth, millimetres. */
    private static final double BEYOND_LIMITS = 0.45;

    private static final double MILLIMETRES_PER_THOU = 0.0254;

    /** The value in millimetres as a plain number. */
    BigDecimal millimetres() {
        return rounded();
    }

    /** The value without its unit, such as "0.2". */
    String number(BenchStyle style) {
        return style.isThou() ? style.number(thou()) : style.number(rounded().toPlainString());
    }

    /** Both ends without their unit, such as "0.15–0.35"; empty where they print as the value itself. */
    String range(BenchStyle style) {
        String low = style.isThou() ? Long.toString(thou(metres.low())) : style.number(low().toPlainString());
        String high = high(style);
        return low.equals(high) ? "" : low + "–" + high;
    }

    /** Upper end without its unit. */
    String high(BenchStyle style) {
        return style.isThou() ? Long.toString(thou(metres.high())) : style.number(high().toPlainString());
    }

    /** The value in whole thousandths of an inch, such as "8"; "<1" for what is less than half of one. */
    String thou() {
        long thou = thou(metres.value());
        return thou == 0 && !isNothing() ? "<1" : Long.toString(thou);
    }

    private static long thou(double metres) {
        return Math.round(metres * 1000 / MILLIMETRES_PER_THOU);
    }

    /** The value with its unit, such as "0.2 mm" or "0.2 mm (8 thou)", number and unit held together. */
    String text(BenchStyle style) {
        return withUnit(number(style), style);
    }

    /**
     * The value to a hundredth of a millimetre whatever its band, for movements that are held against each other and
     * share their doubts.
     */
    String hundredths(BenchStyle style) {
        return withUnit(style.hundredths(metres.value()), style);
    }

    /**
     * The value with its unit beside a limit that is printed too, with as many digits as it takes to tell on which side
     * of it the value stands.
     *
     * @param toHundredths whether it is printed to a hundredth of a millimetre whatever its band
     */
    String beside(Length limit, BenchStyle style, boolean toHundredths) {
        double value = style.shown(metres.value());
        BigDecimal printed = toHundredths || style.isThou()
                ? BigDecimal.valueOf(value).setScale(style.isThou() ? 1 : 2, RoundingMode.HALF_UP)
                : rounded();
        boolean isOver = metres.value() > limit.metres();
        BigDecimal bound =
                BigDecimal.valueOf(style.shown(limit.metres())).setScale(style.isThou() ? 1 : 6, RoundingMode.HALF_UP);
        return SideOfLimit.of(value, isOver, bound, printed)
                .map(size -> withUnit(style.number(size.toPlainString()), style))
                .orElseGet(() -> style.say("just-over", "limit", withUnit(style.limit(limit), style)));
    }

    private String withUnit(String number, BenchStyle style) {
        return style.withUnit(number)
                + (style.isBoth()
                        ? " (" + thou() + Paragraph.HOLD + style.words().say("unit.thou") + ")"
                        : "");
    }

    /** Both ends to a hundredth of a millimetre, such as "0.11–0.20". */
    String hundredthsRange(BenchStyle style) {
        return style.hundredths(metres.low()) + "–" + style.hundredths(metres.high());
    }

    /** The value to a hundredth with its range behind it. */
    String sized(BenchStyle style) {
        return hundredths(style) + (metres.isExact() ? "" : " (" + hundredthsRange(style) + ")");
    }

    /** The value with its range for a table headed by the unit; a dash where nothing moves. */
    String cell(BenchStyle style) {
        if (isNothing()) {
            return "–";
        }
        String range = range(style);
        return number(style)
                + (style.isBoth() ? " / " + thou() + " " + style.words().say("unit.thou") : "")
                + (range.isEmpty() ? "" : " (" + range + ")");
    }

    /** Whether value and band print as zero. */
    boolean isNothing() {
        return rounded().signum() == 0 && metres.high() * 1000 < FINEST.doubleValue() * 1.5;
    }

    /** Whether the value prints as zero, whatever the band. */
    boolean isZero() {
        return rounded().signum() == 0;
    }

    private BigDecimal rounded() {
        return toGrid(metres.value() * 1000, digit());
    }

    private BigDecimal low() {
        BigDecimal low = end(metres.low() * 1000);
        return low.min(rounded()).setScale(low.scale());
    }

    private BigDecimal high() {
        BigDecimal high = end(metres.high() * 1000);
        return high.max(rounded()).setScale(high.scale());
    }

    private BigDecimal digit() {
        if (1000 * metres.value() < BEYOND_LIMITS) {
            return FINEST;
        }
        double halfWidth = 1000 * Math.max(metres.high() - metres.value(), metres.value() - metres.low());
        BigDecimal digit = BigDecimal.ONE;
        while (digit.compareTo(FINEST) > 0 && digit.doubleValue() > 2 * halfWidth + SLACK) {
            digit = digit.movePointLeft(1);
        }
        return digit;
    }

    private BigDecimal end(double millimetres) {
        BigDecimal digit = digit();
        return toGrid(millimetres, digit.compareTo(FINEST) > 0 ? digit.divide(BigDecimal.valueOf(2)) : digit);
    }

    /** Half steps go up, also those that binary numbers miss by a hair. */
    private static BigDecimal toGrid(double millimetres, BigDecimal grid) {
        return BigDecimal.valueOf(millimetres + SLACK)
                .divide(grid, 0, RoundingMode.HALF_UP)
                .multiply(grid);
    }
}
