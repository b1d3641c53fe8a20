package hafthold.knife;

import hafthold.material.Cut;
import hafthold.quantity.Length;
import java.util.Optional;

/**
 * One part threaded on a tang.
 *
 * @param materialId what it is made of
 * @param cut how it lies, the handle's length being the length; empty means as the material is usually sold
 * @param length that it takes up along the tang
 */
public record StackPart(String materialId, Optional<Cut> cut, Length length) {

    /** Rejects sizes no part has. */
    public StackPart {
        Order.requireWord("material", materialId);
        SizeRange.PART_LENGTH.check("length", length);
    }
}
