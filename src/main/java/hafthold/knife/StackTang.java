package hafthold.knife;

import hafthold.quantity.Force;
import hafthold.quantity.Length;
import java.util.Locale;

/**
 * The tang that holds a stack of parts together between guard and nut.
 *
 * @param kind through or hidden
 * @param steelId what it is made of
 * @param width of its cross-section
 * @param thickness of its cross-section
 * @param preload pull of the nut when the knife is made, 0 to 20 kN; 0 for a nut that is only snug
 */
public record StackTang(Kind kind, String steelId, Length width, Length thickness, Force preload) {
    private static final double MOST_NEWTONS = 20_000;

    /** Where the tang ends. */
    public enum Kind {
        /** It comes out at the butt, under a nut or peened. */
        THROUGH,
        /** It ends inside, in a blind nut. */
        HIDDEN;

        /** The word used in build files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Rejects sizes no tang has and pulls no nut gives. */
    public StackTang {
        Order.requireWord("steel", steelId);
        SizeRange.STACK_TANG_WIDTH.check("width", width);
        SizeRange.TANG_THICKNESS.check("thickness", thickness);
        if (!(preload.newtons() >= 0 && preload.newtons() <= MOST_NEWTONS)) {
            throw new UnfitBuildException("preload", preload.newtons() + " N", "\"snug\", or a force up to 20 kN");
        }
    }
}
