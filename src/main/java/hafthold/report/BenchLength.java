package hafthold.report;

import hafthold.quantity.Band;
import hafthold.quantity.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * A movement as it is read at the bench: with no more digits than its band deserves.
 *
 * <p>The last digit printed is the largest of 0.01, 0.1 and 1 mm that is not more than twice the wider half of the
 * band, so that 0.213 mm known to 0.05 mm reads 0.2. The ends of the band are rounded to that digit where it is
 * 0.01 mm, else to half of it.
 *
 * @param metres the movement, metres
 */
record BenchLength(Band metres) {
    private static final BigDecimal FINEST = new BigDecimal("0.01");
    private static final double SLACK = 1e-9;
    private static final double MILLIMETRES_PER_THOU = 0.0254;

    /** The value in millimetres, such as "0.2". */
    String millimetres() {
        return rounded().toPlainString();
    }

    /** Both ends in millimetres, such as "0.15–0.35"; empty where they print as the value itself. */
    String range() {
        String low = low().toPlainString();
        String high = high().toPlainString();
        return low.equals(high) ? "" : low + "–" + high;
    }

    /** Upper end in millimetres. */
    String highMillimetres() {
        return high().toPlainString();
    }

    /** The value in whole thousandths of an inch, such as "8"; "<1" for what is less than half of one. */
    String thou() {
        long thou = Math.round(metres.value() * 1000 / MILLIMETRES_PER_THOU);
        return thou == 0 && !isNothing() ? "<1" : Long.toString(thou);
    }

    /** The value with its unit, such as "0.2 mm" or "0.2 mm (8 thou)", number and unit held together. */
    String text(LengthUnits units) {
        return withUnit(millimetres(), units);
    }

    /**
     * The value to a hundredth of a millimetre whatever its band, for movements that are held against each other and
     * share their doubts.
     */
    String hundredths(LengthUnits units) {
        return withUnit(String.format(Locale.ROOT, "%.2f", 1000 * metres.value()), units);
    }

    /**
     * The value with its unit beside a limit that is printed too, with as many digits as it takes to tell on which side
     * of it the value stands.
     *
     * @param toHundredths whether it is printed to a hundredth of a millimetre whatever its band
     */
    String beside(Length limit, LengthUnits units, boolean toHundredths) {
        double millimetres = 1000 * metres.value();
        BigDecimal printed =
                toHundredths ? BigDecimal.valueOf(millimetres).setScale(2, RoundingMode.HALF_UP) : rounded();
        return SideOfLimit.of(millimetres, limit.millimetres(), printed)
                .map(size -> withUnit(size.toPlainString(), units))
                .orElseGet(() -> "just over " + withUnit(AnswerWords.plain(limit.millimetres()), units));
    }

    private String withUnit(String millimetres, LengthUnits units) {
        return millimetres + Paragraph.HOLD + "mm"
                + (units == LengthUnits.INCH ? " (" + thou() + Paragraph.HOLD + "thou)" : "");
    }

    /** Both ends to a hundredth of a millimetre, such as "0.11–0.20". */
    String hundredthsRange() {
        return String.format(Locale.ROOT, "%.2f–%.2f", 1000 * metres.low(), 1000 * metres.high());
    }

    /** The value with its range for a table headed in millimetres; a dash where nothing moves. */
    String cell(LengthUnits units) {
        if (isNothing()) {
            return "–";
        }
        String range = range();
        return millimetres()
                + (units == LengthUnits.INCH ? " / " + thou() + " thou" : "")
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
