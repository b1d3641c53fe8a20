package hafthold.knife;

import hafthold.quantity.Length;

/**
 * The outside of a stacked handle.
 *
 * @param width from back to belly
 * @param thickness from side to side
 * @param finishId what is on the outside
 */
public record Grip(Length width, Length thickness, String finishId) {

    /** Rejects sizes no handle has. */
    public Grip {
        SizeRange.HANDLE_WIDTH.check("width", width);
        SizeRange.HANDLE_THICKNESS.check("thickness", thickness);
        Order.requireWord("finish", finishId);
    }
}
