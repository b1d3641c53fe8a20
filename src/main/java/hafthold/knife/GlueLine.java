package hafthold.knife;

import hafthold.quantity.Length;

/**
 * What holds the scales to the tang.
 *
 * @param adhesiveId what glue
 * @param thickness of the cured layer
 */
public record GlueLine(String adhesiveId, Length thickness) {

    /** Rejects layers that no clamp leaves. */
    public GlueLine {
        Order.requireWord("adhesive", adhesiveId);
        SizeRange.BOND_LINE.check("thickness", thickness);
    }
}
