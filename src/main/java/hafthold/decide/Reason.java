package hafthold.decide;

import hafthold.knife.FitLimits;
import hafthold.quantity.Band;

/**
 * One thing that moves further than a class of work allows; put into words late, by the report.
 *
 * @param kind what moves
 * @param size how far, metres; of {@link Kind#PIN_CRACK} the use of strength, 1 is the limit
 * @param heldTo the strictest class whose limit it still keeps; the loosest where it keeps none
 * @param keeps whether it keeps the limit of {@code heldTo}
 */
public record Reason(Kind kind, Band size, FitLimits heldTo, boolean keeps) {

    /** What can move. */
    public enum Kind {
        /** Steel proud of the scale at the edge. */
        EDGE_SHY,
        /** Scale proud of the steel at the edge. */
        EDGE_PROUD,
        /** Pin head above the face. */
        PIN_HEAD_PROUD,
        /** Pin head below the face. */
        PIN_HEAD_SUNK,
        /** Open ring beside a pin. */
        PIN_GAP,
        /** Scale short of the steel at bolster and butt, each end. */
        END_GAP,
        /** Scale beyond the steel at bolster and butt, each end. */
        END_PROUD,
        /** Scale squeezed on a pin until it may split. */
        PIN_CRACK
    }
}
