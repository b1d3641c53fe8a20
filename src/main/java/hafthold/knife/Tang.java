package hafthold.knife;

import hafthold.quantity.Length;

/**
 * The tang between two scales.
 *
 * @param steelId what it is made of
 * @param width at its widest, edge to edge; where the scales are narrower the tang follows them
 * @param thickness at the bolster
 * @param buttThickness at the butt; as thick as at the bolster where it does not taper
 */
public record Tang(String steelId, Length width, Length thickness, Length buttThickness) {

    /** Rejects sizes no tang has, and one that grows towards the butt. */
    public Tang {
        Order.requireWord("steel", steelId);
        SizeRange.TANG_WIDTH.check("width", width);
        SizeRange.TANG_THICKNESS.check("thickness", thickness);
        SizeRange.TANG_THICKNESS.check("butt_thickness", buttThickness);
        if (buttThickness.metres() > thickness.metres()) {
            throw new UnfitBuildException(
                    "butt_thickness",
                    SizeRange.millimetres(buttThickness),
                    "no more than the thickness at the bolster, " + SizeRange.millimetres(thickness));
        }
    }
}
