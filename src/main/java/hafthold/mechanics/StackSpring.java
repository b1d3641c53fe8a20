package hafthold.mechanics;

/**
 * One part threaded on a through tang (guard, spacer, grip piece, cap), as a spring that can be crushed.
 *
 * @param name what the bench calls it
 * @param lengthMetres along the tang, m, positive
 * @param areaSquareMetres face that carries load, m2, positive
 * @param modulusPascals Young's modulus along the tang, Pa, positive
 * @param crushingPascals stress beyond which the part gives way and keeps the dent, Pa, positive; infinite for metal
 */
public record StackSpring(
        String name, double lengthMetres, double areaSquareMetres, double modulusPascals, double crushingPascals) {

    /** Checks sizes. */
    public StackSpring {
        if (!(lengthMetres > 0) || !(areaSquareMetres > 0) || !(modulusPascals > 0) || !(crushingPascals > 0)) {
            throw new IllegalArgumentException("stack part '" + name
                    + "' needs positive length, area, modulus and crushing stress, got " + 1000 * lengthMetres
                    + " mm, " + 1e6 * areaSquareMetres + " mm2, " + modulusPascals + " Pa, " + crushingPascals + " Pa");
        }
    }

    /** Shortening under one newton, m/N. */
    double softness() {
        return lengthMetres / (modulusPascals * areaSquareMetres);
    }

    /** Force that crushes the part, N. */
    double crushingNewtons() {
        return crushingPascals * areaSquareMetres;
    }
}
