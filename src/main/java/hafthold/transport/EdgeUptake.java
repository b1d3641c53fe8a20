package hafthold.transport;

import hafthold.source.PublishedModel;

/**
 * Water that enters by edges and ends as well as by the face: the factor on D that makes a slab settle as fast as the
 * block.
 *
 * <p>By the product rule the unfilled shares of three crossed slabs multiply, so that in the slowest mode their rates
 * add: pi^2/4 (D/h^2 + D_W/b^2 + D_L/l^2) = pi^2/4 D/h^2 x [1 + (D_W/D)(h/b)^2 + (D_L/D)(h/l)^2].
 *
 * <p>It is exact for the end of settling of a block of one D without film; early uptake by the edges is local, which a
 * slab cannot show.
 */
@PublishedModel(
        source = "newman-1931",
        locator = "product of the solutions of crossed slabs",
        validity = "diffusivity and film the same on all exposed faces; first mode")
public final class EdgeUptake {
    private EdgeUptake() {}

    /**
     * Factor on the diffusivity through the thickness, 1 or more.
     *
     * @param thicknessMetres h, from the sealed face to the open one, positive
     * @param halfWidthMetres b, from the middle to an exposed edge, positive; infinity where the edges are sealed
     * @param halfLengthMetres l, from the middle to an exposed end, positive; infinity where the ends are sealed
     * @param widthRatio D_W/D, diffusivity across the width over that through the thickness, zero or more
     * @param lengthRatio D_L/D, diffusivity along the length over that through the thickness, zero or more
     */
    public static double factor(
            double thicknessMetres,
            double halfWidthMetres,
            double halfLengthMetres,
            double widthRatio,
            double lengthRatio) {
        if (!(thicknessMetres > 0)
                || !(halfWidthMetres > 0)
                || !(halfLengthMetres > 0)
                || !(widthRatio >= 0)
                || !(lengthRatio >= 0)) {
            throw new IllegalArgumentException("edge uptake needs positive sizes and ratios of zero or more, got "
                    + thicknessMetres + ", " + halfWidthMetres + ", " + halfLengthMetres + " m, ratios " + widthRatio
                    + ", " + lengthRatio);
        }
        double edges = widthRatio * square(thicknessMetres / halfWidthMetres);
        double ends = lengthRatio * square(thicknessMetres / halfLengthMetres);
        return 1 + edges + ends;
    }

    /**
     * Exposed surface over that of the face alone, 1 + h/b + h/l: by this the film and the finish of the slab are thinner
     * in effect where edges and ends are open too and finished alike.
     *
     * <p>It is the same rule for slabs that the surface holds back: their rates k/h + k/b + k/l add.
     *
     * @param thicknessMetres h, positive
     * @param halfWidthMetres b, positive; infinity where the edges are sealed
     * @param halfLengthMetres l, positive; infinity where the ends are sealed
     */
    public static double exposedAreaRatio(double thicknessMetres, double halfWidthMetres, double halfLengthMetres) {
        if (!(thicknessMetres > 0) || !(halfWidthMetres > 0) || !(halfLengthMetres > 0)) {
            throw new IllegalArgumentException("exposed area needs positive sizes, got " + thicknessMetres + ", "
                    + halfWidthMetres + ", " + halfLengthMetres + " m");
        }
        return 1 + thicknessMetres / halfWidthMetres + thicknessMetres / halfLengthMetres;
    }

    private static double square(double x) {
        return x * x;
    }
}
