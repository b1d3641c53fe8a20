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
     * @param printed how it is printed as a rule
     * @return empty where even four decimals do not tell a number over its limit from the limit: it is just over
     */
    static Optional<BigDecimal> of(double number, double limit, BigDecimal printed) {
        BigDecimal bound = BigDecimal.valueOf(Math.rint(limit * 1e6) / 1e6);
        if (tells(number, limit, printed, bound)) {
            return Optional.of(printed);
        }
        for (int decimals = Math.max(0, printed.scale()) + 1; decimals <= MOST_DECIMALS; decimals++) {
            BigDecimal finer = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
            if (tells(number, limit, finer, bound)) {
                return Optional.of(finer);
            }
        }
        return number > limit ? Optional.empty() : Optional.of(bound.stripTrailingZeros());
    }

    private static boolean tells(double number, double limit, BigDecimal printed, BigDecimal bound) {
        return number > limit == printed.compareTo(bound) > 0;
    }
}
