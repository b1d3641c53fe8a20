package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Step;

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
        Step step = year.edge().bonded();
        return step.isRatherProud() ? new EdgeStep(Side.PROUD, step.proud()) : new EdgeStep(Side.SHY, step.shy());
    }

    /** The smaller one. */
    static EdgeStep other(HandleYear year) {
        Step step = year.edge().bonded();
        return worst(year).side == Side.SHY
                ? new EdgeStep(Side.PROUD, step.proud())
                : new EdgeStep(Side.SHY, step.shy());
    }

    /** Whether the handle counts as glued: its edges differ from those of the scale unglued. */
    static boolean isBonded(HandleYear year) {
        Step bonded = year.edge().bonded();
        Step free = year.edge().free();
        return !isAlike(bonded.shy(), free.shy()) || !isAlike(bonded.proud(), free.proud());
    }

    private static boolean isAlike(Band one, Band other) {
        return one.low() == other.low() && one.value() == other.value() && one.high() == other.high();
    }

    BenchLength length() {
        return new BenchLength(size);
    }

    /** Whether fingers find nothing: the value prints as zero. */
    boolean isFlush() {
        return length().isZero();
    }
}
