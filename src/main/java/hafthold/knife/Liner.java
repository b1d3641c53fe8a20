package hafthold.knife;

import hafthold.quantity.Length;

/**
 * A sheet between tang and scale, the same on both sides.
 *
 * @param materialId what it is made of
 * @param thickness of one sheet
 */
public record Liner(String materialId, Length thickness) {

    /** Rejects sizes no liner has. */
    public Liner {
        Order.requireWord("material", materialId);
        SizeRange.LINER_THICKNESS.check("thickness", thickness);
    }
}
