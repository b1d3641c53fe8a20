package hafthold.knife;

import hafthold.material.Material;
import hafthold.quantity.Length;

/**
 * What holds a scale that is only sketched: the tang under it and the glue between.
 *
 * @param steel what the tang is made of
 * @param tangThickness the whole tang, the same from bolster to butt
 * @param adhesive what holds the scale
 * @param glueThickness the cured layer
 */
public record Bond(Material steel, Length tangThickness, Material adhesive, Length glueThickness) {

    /** Rejects sizes that no tang and no clamp leaves. */
    public Bond {
        SizeRange.TANG_THICKNESS.check("tang", tangThickness);
        SizeRange.BOND_LINE.check("glue line", glueThickness);
    }
}
