package hafthold.simulate;

import hafthold.material.Cut;
import hafthold.material.Material;
import java.util.Optional;

/** How the grain of a part lies: the shares of the principal strains in each direction of the handle under any doubt. */
final class GrainLie {
    private final Material material;
    private final Cut cut;
    private final Optional<BurlGrain> burl;

    /**
     * Shares in each direction.
     *
     * @param length along the handle
     * @param width across the tang
     * @param thickness away from the tang
     */
    record Directions(Cut.Shares length, Cut.Shares width, Cut.Shares thickness) {}

    GrainLie(Material material, Cut cut) {
        this.material = material;
        this.cut = cut;
        this.burl = cut == Cut.BURL ? Optional.of(new BurlGrain(material)) : Optional.empty();
    }

    Material material() {
        return material;
    }

    Cut cut() {
        return cut;
    }

    Directions under(Doubt doubt) {
        if (burl.isPresent()) {
            Cut.Shares any = burl.get().shares(doubt.grainLean(material));
            return new Directions(any, any, any);
        }
        double turn = doubt.ringTurnRadians(material, cut);
        return new Directions(
                cut.length().turned(-turn),
                cut.width().turned(turn),
                cut.thickness().turned(-turn));
    }
}
