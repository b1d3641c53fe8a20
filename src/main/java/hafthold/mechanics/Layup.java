package hafthold.mechanics;

import java.util.List;

/**
 * What lies on what in a full-tang handle, from the middle of the tang outwards: tang, glue, then each liner with glue
 * on it, then the scale. The other side is its mirror image.
 *
 * <p>A handle with two different scales is treated as two such layups, each as if the other side were its twin. What
 * that leaves out is the bow of the handle towards the scale that shrinks more ({@link LayeredBow}).
 *
 * @param tang the steel, with its whole thickness
 * @param glue every glue line; one line's thickness
 * @param liners sheets between tang and scale, from the tang outwards; may be empty
 * @param scale the scale
 */
public record Layup(SectionLayer tang, SectionLayer glue, List<SectionLayer> liners, SectionLayer scale) {

    /** Keeps its own list. */
    public Layup {
        liners = List.copyOf(liners);
    }

    /** A layup without liners. */
    public Layup(SectionLayer tang, SectionLayer glue, SectionLayer scale) {
        this(tang, glue, List.of(), scale);
    }
}
