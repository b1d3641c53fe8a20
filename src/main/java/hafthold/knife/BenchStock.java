package hafthold.knife;

import hafthold.quantity.MoistureContent;
import java.util.Optional;

/**
 * Stock in a workshop, and what its maker does with it: how it is kept, what a meter reads of it today, and how long a scale
 * of it lies glued before it is sanded flush.
 *
 * @param blank how it is kept
 * @param reading moisture content that was read today, the mean of the piece, 0 to 40 %; empty where nothing was read
 * @param gluedDays days from glue-up to final sanding, 0 (the same day) to 180
 */
public record BenchStock(Blank blank, Optional<MoistureContent> reading, int gluedDays) {
    private static final double WETTEST = 0.40;
    private static final int LONGEST = 180;

    /** Rejects wood too wet to work and handles that nobody finishes. */
    public BenchStock {
        reading.filter(read -> read.fraction() > WETTEST).ifPresent(read -> {
            throw new UnfitBuildException(
                    "moisture", read.percent() + " %", "a moisture content from 0 % to 40 % of the dry mass");
        });
        if (gluedDays < 0 || gluedDays > LONGEST) {
            throw new UnfitBuildException("days glued", Integer.toString(gluedDays), "0 to " + LONGEST + " days");
        }
    }

    /** Stock that nobody read, sanded flush in the week in which it is glued. */
    public static BenchStock unread(Blank blank) {
        return new BenchStock(blank, Optional.empty(), 0);
    }
}
