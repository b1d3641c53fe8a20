package hafthold.material;

import hafthold.source.PublishedModel;

/**
 * Stiffness across the grain of wood whose lumens hold something: walls with openings in them, whose shape is read from
 * the plain wood.
 *
 * <p>With E of the whole, Ew of the walls, Ef of what the lumens hold and V their share of the volume (Halpin and Kardos,
 * equations 1 and 2, walls as the matrix):
 *
 * <pre>
 *   E / Ew = (1 + xi eta V) / (1 - eta V),   eta = (Ef / Ew - 1) / (Ef / Ew + xi)
 * </pre>
 *
 * <p>The shape xi of the openings is usually fitted. Here plain wood, Ef = 0, tells it: E / Ew = (1 - V) / (1 + V / xi), so
 * that each direction has its own, and light wood, whose walls bend, gains more than dense wood, whose walls are short. xi
 * without end gives the bound of Voigt, 0 that of Reuss. Wood that is stiffer than its walls side by side would be has
 * walls of just that stiffness.
 *
 * <p>Shear goes by the same law with the shear moduli of wall and content.
 *
 * @param lumenFraction V, share of the volume that the lumens take, 0 to below 1
 * @param wallPascals Ew, Pa, positive
 */
@PublishedModel(
        source = "halpin-kardos-1976",
        locator = "equations 1 and 2",
        validity =
                "two linear elastic phases, firmly joined; isotropic walls across the grain; lumens of a quarter of the volume"
                        + " or more: below, the law gives a few openings more weight than they can have")
public record HalpinTsaiFilling(double lumenFraction, double wallPascals) {
    /** Dry mass of a volume of cell wall without pores, kg/m3; Wood Handbook chapter 4, from memory. */
    public static final double CELL_WALL_DENSITY = 1500;

    /** Young's modulus of the cell wall across its length, Pa; from memory, 4 to 10 in what was read on wood as cells. */
    public static final double WALL_ACROSS_PASCALS = 7e9;

    /** Poisson's ratio of wall and resin, from memory: turns Young's moduli into shear moduli. */
    public static final double POISSON = 0.37;

    /** Checks the shares. */
    public HalpinTsaiFilling {
        if (!(lumenFraction >= 0 && lumenFraction < 1) || !(wallPascals > 0)) {
            throw new IllegalArgumentException(
                    "lumens need a share of the volume from 0 to below 1 and walls a positive" + " modulus, got "
                            + lumenFraction + " and " + wallPascals + " Pa");
        }
    }

    /**
     * Share of the volume that the lumens of a wood take, 0 where it is as dense as its walls.
     *
     * @param dryDensity kg/m3, positive
     */
    public static double lumenFraction(double dryDensity) {
        return Math.max(0, 1 - dryDensity / CELL_WALL_DENSITY);
    }

    /** Young's modulus across the grain for a wood of this dry density, kg/m3. */
    public static HalpinTsaiFilling across(double dryDensity) {
        return new HalpinTsaiFilling(lumenFraction(dryDensity), WALL_ACROSS_PASCALS);
    }

    /** The same law for shear. */
    public HalpinTsaiFilling inShear() {
        return new HalpinTsaiFilling(lumenFraction, shear(wallPascals));
    }

    /** Shear modulus of a wall or resin with this Young's modulus, Pa. */
    public static double shear(double youngsPascals) {
        return youngsPascals / (2 * (1 + POISSON));
    }

    /**
     * Modulus of the filled wood, Pa, at least that of the plain one.
     *
     * @param plainPascals modulus of the plain wood in the same direction or plane, Pa, positive
     * @param contentPascals Ef, modulus of what the lumens hold, spread over all of them, Pa, not negative
     */
    public double filledPascals(double plainPascals, double contentPascals) {
        double v = lumenFraction;
        if (v == 0) {
            return plainPascals;
        }
        double wall = Math.max(wallPascals, plainPascals / (1 - v));
        double slenderness = (wall * (1 - v) / plainPascals - 1) / v;
        double content = contentPascals / wall;
        double bent = slenderness * content + 1;
        return wall * (bent + v * (content - 1)) / (bent + slenderness * v * (1 - content));
    }
}
