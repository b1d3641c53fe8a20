package hafthold.simulate;

import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.ScaleMaterial;

/**
 * Which scale an answer is about.
 *
 * @param id of the material
 * @param name of the material, for people
 * @param family of the material
 * @param cut how the scale lies; none for a hybrid, whose parts have their own
 */
public record ScaleChoice(String id, String name, Family family, Cut cut) {

    /** A material as it lies. */
    static ScaleChoice of(ScaleMaterial material, Cut cut) {
        return new ScaleChoice(material.id(), material.name(), material.family(), cut);
    }
}
