package hafthold.report.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of an axis that ends on round numbers, and its ticks.
 *
 * @param low lower end
 * @param high upper end, more than {@code low}
 * @param step distance of ticks, 1, 2 or 5 times a power of ten
 */
record Span(BigDecimal low, BigDecimal high, BigDecimal step) {

    /** The smallest stretch of whole steps that holds two values, with about so many steps. */
    static Span covering(double lowest, double highest, int wantedSteps) {
        double width = Math.max(highest - lowest, 1e-6);
        BigDecimal step = stepFor(width / wantedSteps);
        BigDecimal low = wholeSteps(lowest, step, RoundingMode.FLOOR);
        BigDecimal high = wholeSteps(highest, step, RoundingMode.CEILING);
        return new Span(low, high.compareTo(low) > 0 ? high : low.add(step), step);
    }

    /** Ticks from low to high. */
    List<BigDecimal> ticks() {
        List<BigDecimal> ticks = new ArrayList<>();
        for (BigDecimal tick = low; tick.compareTo(high) <= 0; tick = tick.add(step)) {
            ticks.add(tick);
        }
        return ticks;
    }

    /** A tick with the digits of the step and a true minus sign. */
    String label(BigDecimal tick) {
        String plain =
                tick.setScale(Math.max(0, step.scale()), RoundingMode.HALF_UP).toPlainString();
        return plain.replace('-', '\u2212');
    }

    double lowest() {
        return low.doubleValue();
    }

    double highest() {
        return high.doubleValue();
    }

    private static BigDecimal stepFor(double rough) {
        int exponent = (int) Math.floor(Math.log10(rough));
        BigDecimal unit = BigDecimal.ONE.scaleByPowerOfTen(exponent);
        for (int factor : new int[] {1, 2, 5}) {
            BigDecimal step = unit.multiply(BigDecimal.valueOf(factor));
            if (step.doubleValue() >= rough * 0.999) {
                return step;
            }
        }
        return unit.scaleByPowerOfTen(1);
    }

    private static BigDecimal wholeSteps(double value, BigDecimal step, RoundingMode mode) {
        double slack = mode == RoundingMode.FLOOR ? 1e-9 : -1e-9;
        return BigDecimal.valueOf(value + slack * step.doubleValue())
                .divide(step, 0, mode)
                .multiply(step);
    }
}
