package hafthold.knife;

import hafthold.material.Cut;
import hafthold.quantity.Length;
import java.util.List;
import java.util.Optional;

/**
 * The two scales of a full-tang handle.
 *
 * @param materialId what both are made of
 * @param cutLeft how the left one is cut; empty means as the material is usually sold
 * @param cutRight how the right one is cut; empty means as the material is usually sold
 * @param thickness of one scale, from tang or liner to the outer face
 * @param length from bolster to butt
 * @param profile widths at places along the handle, the first at the bolster; straight lines between them, and as wide
 *     as the last from there to the butt
 * @param easing radius to which the edge is eased; 0 for a sharp one
 * @param finishId what is on the outside
 */
public record Scales(
        String materialId,
        Optional<Cut> cutLeft,
        Optional<Cut> cutRight,
        Length thickness,
        Length length,
        List<Station> profile,
        Length easing,
        String finishId) {

    /**
     * One width of the profile.
     *
     * @param at distance from the bolster
     * @param width edge to edge
     */
    public record Station(Length at, Length width) {

        /** Rejects sizes no handle has. */
        public Station {
            SizeRange.PLACE_ALONG.check("at", at);
            SizeRange.HANDLE_WIDTH.check("width", width);
        }
    }

    /** Rejects sizes no scale has, and profiles that go backwards or beyond the scale. */
    public Scales {
        Order.requireWord("material", materialId);
        Order.requireWord("finish", finishId);
        SizeRange.SCALE_THICKNESS.check("thickness", thickness);
        SizeRange.HANDLE_LENGTH.check("length", length);
        SizeRange.EASING.check("easing", easing);
        if (easing.metres() > thickness.metres()) {
            throw new UnfitBuildException(
                    "easing",
                    SizeRange.millimetres(easing),
                    "no more than the thickness of the scale, " + SizeRange.millimetres(thickness));
        }
        profile = List.copyOf(profile);
        checkProfile(profile, length);
    }

    private static void checkProfile(List<Station> profile, Length length) {
        if (profile.isEmpty()) {
            throw new UnfitBuildException("profile", "[]", "at least one width, the first at \"0 mm\"");
        }
        for (int i = 0; i < profile.size(); i++) {
            Length at = profile.get(i).at();
            String key = "profile[" + (i + 1) + "].at";
            if (i == 0 && at.metres() != 0) {
                throw new UnfitBuildException(
                        key, SizeRange.millimetres(at), "\"0 mm\": the first width is that at the bolster");
            }
            if (i > 0 && at.metres() <= profile.get(i - 1).at().metres()) {
                throw new UnfitBuildException(
                        key,
                        SizeRange.millimetres(at),
                        "a place further from the bolster than the one before it, "
                                + SizeRange.millimetres(profile.get(i - 1).at()));
            }
            if (at.metres() > length.metres()) {
                throw new UnfitBuildException(
                        key,
                        SizeRange.millimetres(at),
                        "a place on the scale, which is " + SizeRange.millimetres(length) + " long");
            }
        }
    }

    /**
     * Width of the scales at a place, from straight lines between the widths of the profile.
     *
     * @param along distance from the bolster, 0 to the length; beyond the last width that one holds
     */
    public Length widthAt(Length along) {
        Station before = profile.get(0);
        for (Station next : profile) {
            if (next.at().metres() >= along.metres()) {
                double span = next.at().metres() - before.at().metres();
                double share = span > 0 ? (along.metres() - before.at().metres()) / span : 0;
                return new Length(before.width().metres()
                        + share * (next.width().metres() - before.width().metres()));
            }
            before = next;
        }
        return before.width();
    }
}
