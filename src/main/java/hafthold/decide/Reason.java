package hafthold.decide;

import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import java.util.Optional;

/**
 * One thing that moves further than a class of work allows, or that could not be judged; put into words late, by the
 * report.
 *
 * @param kind what moves
 * @param size how far, metres; of a kind that {@link Kind#isUse()} the use of strength, 1 is the limit; of
 *     {@link Kind#SOFTENING} the margin, kelvin; empty where it could not be judged, as what the scale bears is not known
 * @param heldTo the class whose limit is told beside it: the loosest that is exceeded where that asks for a change, else the
 *     strictest that is kept
 * @param keeps whether it keeps the limit of {@code heldTo}
 */
public record Reason(Kind kind, Optional<Band> size, FitLimits heldTo, boolean keeps) {

    /** Something of a known size. */
    public Reason(Kind kind, Band size, FitLimits heldTo, boolean keeps) {
        this(kind, Optional.of(size), heldTo, keeps);
    }

    /** True where the limit could not be judged. */
    public boolean isOpen() {
        return size.isEmpty();
    }

    /** True where something gives way: all of a strength is used, or something is hotter than it softens. */
    public boolean givesWay() {
        return size.map(band -> kind.isUse() ? band.value() >= 1 : kind == Kind.SOFTENING && band.value() < 0)
                .orElse(false);
    }

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
        /** Step on the face where the parts of a hybrid meet. */
        RIDGE,
        /** Line between the parts of a hybrid, or the plates of a molar, loaded near or beyond what the weaker part bears. */
        PARTS_JOINT,
        /** Scale squeezed on a pin until it may split. */
        PIN_CRACK,
        /** Glue line loaded near or beyond its strength. */
        GLUE_LINE,
        /** Scale pulled across its grain by the glue that holds it, in its middle or at its glued edge. */
        SCALE_SPLIT,
        /** Ends of a scale that neither glue nor its own strength holds. */
        END_LETS_GO,
        /** Something softens in the heat of the place. */
        SOFTENING,
        /** Stack on a tang that comes loose. */
        STACK_GAP,
        /** Stack that outgrows its tang and stands or presses. */
        STACK_SET;

        /** True where the size is a use of strength. */
        public boolean isUse() {
            return this == PIN_CRACK || this == GLUE_LINE || this == SCALE_SPLIT || this == PARTS_JOINT;
        }

        /** True where something may crack, part, soften or come loose, and not only move. */
        public boolean canHarm() {
            return isUse() || this == END_LETS_GO || this == SOFTENING || this == STACK_GAP;
        }
    }
}
