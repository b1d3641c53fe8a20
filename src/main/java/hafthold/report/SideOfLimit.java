package hafthold.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Prints a number so that it stands on its own side of a limit that is printed beside it. */
final class SideOfLimit {
    private static final int MOST_DECIMALS = 4;

    private SideOfLimit() {}

    /**
     * The number with as many digits as that takes.
     *
     * @param number what is held to the limit
     * @param isOver whether it is more than the limit allows
     * @param limit the limit as it is printed
     * @param printed the number as it is printed as a rule
     * @return empty where even four decimals do not tell a number over its limit from the limit: it is just over
     */
    static Optional<BigDecimal> of(double number, boolean isOver, BigDecimal limit, BigDecimal printed) {
        if (tells(isOver, printed, limit)) {
            return Optional.of(printed);
        }
        for (int decimals = Math.max(0, printed.scale()) + 1; decimals <= MOST_DECIMALS; decimals++) {
            BigDecimal finer = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
            if (tells(isOver, finer, limit)) {
                return Optional.of(finer);
            }
        }
        return isOver ? Optional.empty() : Optional.of(limit.stripTrailingZeros());
    }

    private static boolean tells(boolean isOver, BigDecimal printed, BigDecimal limit) {
        return isOver == printed.compareTo(limit) > 0;
    }
}
