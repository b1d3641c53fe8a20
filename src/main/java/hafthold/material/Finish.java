package hafthold.material;

import hafthold.quantity.Band;
import hafthold.source.Figure;

/**
 * A finish as moisture sees it: a resistance in series with the still air at the surface.
 *
 * @param id kebab-case id
 * @param name name for people, coats included
 * @param coats number of coats, zero or more
 * @param resistance Z, m2 s Pa/kg, zero or more
 */
public record Finish(String id, String name, int coats, Figure resistance) {
    /**
     * The same finish where it resists so much and no other.
     *
     * @param resistanceSquareMetreSecondPascalsPerKilogram Z, m2 s Pa/kg, zero or more
     */
    public Finish resisting(double resistanceSquareMetreSecondPascalsPerKilogram) {
        return new Finish(
                id, name, coats, resistance.withBand(Band.exact(resistanceSquareMetreSecondPascalsPerKilogram)));
    }
}
