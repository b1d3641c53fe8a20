package hafthold.knife;

import hafthold.quantity.Length;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A knife with a scale either side of its tang.
 *
 * @param order whom it is for
 * @param tang the steel
 * @param scales the pair of scales
 * @param liners from the tang outwards, the same on both sides; empty for none
 * @param bolsterId what the bolster is made of; empty for none
 * @param pins at most 20, in any order; empty for a handle that is only glued
 * @param glue between tang and scales
 * @param glueUp the stock when it is bonded: zero of stress
 * @param made the stock at final sanding: zero of every step and gap
 */
public record FullTangBuild(
        Order order,
        Tang tang,
        Scales scales,
        List<Liner> liners,
        Optional<String> bolsterId,
        List<Pin> pins,
        GlueLine glue,
        WorkState glueUp,
        WorkState made)
        implements KnifeBuild {
    private static final int MOST_LINERS = 8;

    /** Rejects parts that do not fit together. */
    public FullTangBuild {
        liners = List.copyOf(liners);
        pins = List.copyOf(pins);
        bolsterId.ifPresent(id -> Order.requireWord("bolster.material", id));
        if (liners.size() > MOST_LINERS) {
            throw new UnfitBuildException(
                    "liners[" + (MOST_LINERS + 1) + "]",
                    liners.size() + " liners",
                    "at most " + MOST_LINERS + " liners a side");
        }
        double widest = scales.profile().stream()
                .mapToDouble(station -> station.width().metres())
                .max()
                .orElseThrow();
        if (tang.width().metres() > widest) {
            throw new UnfitBuildException(
                    "tang.width",
                    SizeRange.millimetres(tang.width()),
                    "no more than the widest place of the scales, " + SizeRange.millimetres(new Length(widest))
                            + ": scales must cover the tang");
        }
        new PinLayout(tang, scales).check(pins);
    }

    /**
     * Width of the tang at a place: its full width, or that of the scales where they are narrower.
     *
     * @param along distance from the bolster, 0 to the length of the scales
     */
    public Length tangWidthAt(Length along) {
        Length scale = scales.widthAt(along);
        return scale.metres() < tang.width().metres() ? scale : tang.width();
    }

    @Override
    public String finishId() {
        return scales.finishId();
    }

    @Override
    public Set<String> materialIds() {
        Set<String> ids = new LinkedHashSet<>();
        ids.add(tang.steelId());
        ids.add(scales.materialId());
        liners.forEach(liner -> ids.add(liner.materialId()));
        bolsterId.ifPresent(ids::add);
        pins.forEach(pin -> ids.add(pin.metalId()));
        ids.add(glue.adhesiveId());
        return Collections.unmodifiableSet(ids);
    }
}
