package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;

/**
 * The larger of the two edge steps of a year.
 *
 * @param side which way
 * @param size how far, metres a side
 */
record EdgeStep(Side side, Band size) {

    /** The bench's signs. */
    enum Side {
        /** Scale below the steel. */
        SHY("shy"),
        /** Scale above the steel. */
        PROUD("proud");

        private final String word;

        Side(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** The step that {@code year.worstMonth()} speaks of: the larger value, shy where both are equal. */
    static EdgeStep worst(HandleYear year) {
        return year.edgeProud().value() > year.edgeShy().value()
                ? new EdgeStep(Side.PROUD, year.edgeProud())
                : new EdgeStep(Side.SHY, year.edgeShy());
    }

    /** The smaller one. */
    static EdgeStep other(HandleYear year) {
        return worst(year).side == Side.SHY
                ? new EdgeStep(Side.PROUD, year.edgeProud())
                : new EdgeStep(Side.SHY, year.edgeShy());
    }

    /** Whether the handle counts as glued: its edges differ from those of the scale unglued. */
    static boolean isBonded(HandleYear year) {
        return !year.edgeShy().equals(year.freeShy()) || !year.edgeProud().equals(year.freeProud());
    }

    BenchLength length() {
        return new BenchLength(size);
    }

    /** Whether fingers find nothing: the value prints as zero. */
    boolean isFlush() {
        return length().isZero();
    }
}
