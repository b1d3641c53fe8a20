package hafthold.knife;

import hafthold.material.Cut;
import hafthold.material.Finish;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import java.util.List;
import java.util.Optional;

/**
 * A full-tang build with its materials in hand.
 *
 * @param build the build, as its maker wrote it
 * @param steel the tang
 * @param scale both scales
 * @param liners one a liner of the build, in its order
 * @param pinMetals one a pin of the build, in its order
 * @param bolster the bolster, where there is one
 * @param adhesive what holds the scales
 * @param finish finish on the scales
 */
public record FullTangKnife(
        FullTangBuild build,
        Material steel,
        ScaleMaterial scale,
        List<Material> liners,
        List<Material> pinMetals,
        Optional<Material> bolster,
        Material adhesive,
        Finish finish)
        implements Knife {

    /** Keeps its own copies; each liner and pin needs its material. */
    public FullTangKnife {
        liners = List.copyOf(liners);
        pinMetals = List.copyOf(pinMetals);
        if (liners.size() != build.liners().size()
                || pinMetals.size() != build.pins().size()) {
            throw new IllegalArgumentException("expected one material for each of "
                    + build.liners().size() + " liners and " + build.pins().size() + " pins, got " + liners.size()
                    + " and " + pinMetals.size());
        }
    }

    /** How the left scale lies: as the build says, else as the material is usually sold. */
    public Cut cutLeft() {
        return build.scales().cutLeft().orElse(scale.usualCut());
    }

    /** How the right scale lies: as the build says, else as the material is usually sold. */
    public Cut cutRight() {
        return build.scales().cutRight().orElse(scale.usualCut());
    }

    /** Cuts to work out, left before right: one where both scales are alike, as those of a hybrid are. */
    public List<Cut> sides() {
        return scale instanceof Hybrid || cutLeft() == cutRight() ? List.of(cutLeft()) : List.of(cutLeft(), cutRight());
    }

    /** The same materials in a changed build with as many liners and pins. */
    public FullTangKnife with(FullTangBuild changed) {
        return new FullTangKnife(changed, steel, scale, liners, pinMetals, bolster, adhesive, finish);
    }
}
