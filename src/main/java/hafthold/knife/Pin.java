package hafthold.knife;

import hafthold.quantity.Length;
import java.util.Locale;

/**
 * A pin through scales and tang.
 *
 * @param kind solid, tube or hidden
 * @param metalId what it is made of
 * @param diameter of the pin, outside
 * @param hole diameter as drilled, in the scales and in the tang
 * @param along from the bolster to the middle of the pin
 * @param up from the centre line towards the back, negative towards the belly
 * @param fill what is in the ring between pin and hole
 */
public record Pin(Kind kind, String metalId, Length diameter, Length hole, Length along, Length up, Fill fill) {
    private static final Length WIDEST_RING = Length.ofMillimetres(2);

    /** Sorts of pin. */
    public enum Kind {
        /** A rod that shows on both faces. */
        SOLID,
        /** A pipe, such as one for a lanyard. */
        TUBE,
        /** A rod that ends inside the scales. */
        HIDDEN;

        /** The word used in build files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What can be in the ring between pin and hole. */
    public enum Fill {
        /** Nothing: the ring is room to move. */
        OPEN,
        /** Hard glue: the ring is no room at all. */
        HARD_EPOXY,
        /** Something soft that gives. */
        FLEXIBLE;

        /** The word used in build files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Rejects sizes no pin has, and holes that the pin does not go into. */
    public Pin {
        Order.requireWord("metal", metalId);
        SizeRange.PIN_DIAMETER.check("diameter", diameter);
        SizeRange.HOLE_DIAMETER.check("hole", hole);
        SizeRange.PLACE_ALONG.check("along", along);
        SizeRange.PLACE_UP.check("up", up);
        if (hole.metres() < diameter.metres() || hole.metres() > diameter.metres() + WIDEST_RING.metres()) {
            throw new UnfitBuildException(
                    "hole",
                    SizeRange.millimetres(hole),
                    "a hole no smaller than the pin of " + SizeRange.millimetres(diameter) + " and at most "
                            + SizeRange.millimetres(WIDEST_RING) + " larger");
        }
    }

    /** Hole minus pin that is room to move: none where hard glue fills it. */
    public Length openClearance() {
        return new Length(fill == Fill.HARD_EPOXY ? 0 : hole.metres() - diameter.metres());
    }
}
