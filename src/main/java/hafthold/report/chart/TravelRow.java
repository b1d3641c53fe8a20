package hafthold.report.chart;

import hafthold.quantity.Band;
import java.util.OptionalDouble;

/**
 * One row of a {@link TravelChart}: how far something travels to either side of zero.
 *
 * @param rank number before the label, 0 for none
 * @param label what it is
 * @param note a word at the end of the row
 * @param left travel to the left, zero or more
 * @param right travel to the right, zero or more
 * @param freeLeft the same unheld, where it differs
 * @param freeRight the same unheld, where it differs
 * @param isKnown false where only the range may be shown
 */
public record TravelRow(
        int rank,
        String label,
        String note,
        Band left,
        Band right,
        OptionalDouble freeLeft,
        OptionalDouble freeRight,
        boolean isKnown) {

    /** Furthest point to the left, zero or more. */
    double leftmost() {
        return Math.max(left.high(), freeLeft.orElse(0));
    }

    /** Furthest point to the right. */
    double rightmost() {
        return Math.max(right.high(), freeRight.orElse(0));
    }
}
