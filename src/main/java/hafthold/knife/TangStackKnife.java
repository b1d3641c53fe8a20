package hafthold.knife;

import hafthold.material.Cut;
import hafthold.material.Finish;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import java.util.List;

/**
 * A tang-stack build with its materials in hand.
 *
 * @param build the build, as its maker wrote it
 * @param steel the tang
 * @param parts one a part of the build, from the guard to the nut
 * @param finish finish on the outside
 */
public record TangStackKnife(TangStackBuild build, Material steel, List<ScaleMaterial> parts, Finish finish)
        implements Knife {

    /** Keeps its own copy; each part needs its material. */
    public TangStackKnife {
        parts = List.copyOf(parts);
        if (parts.size() != build.parts().size()) {
            throw new IllegalArgumentException(
                    "expected one material for each of " + build.parts().size() + " parts, got " + parts.size());
        }
    }

    /** How a part lies: as the build says, else as the material is usually sold. */
    public Cut cut(int part) {
        return build.parts().get(part).cut().orElse(parts.get(part).usualCut());
    }
}
