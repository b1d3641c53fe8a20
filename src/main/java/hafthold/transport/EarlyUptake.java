package hafthold.transport;

import hafthold.source.PublishedModel;

/**
 * What a plate under water has taken up before its middle notices, as a share of what it can hold:
 *
 * <pre>
 * M/Ms = 4/sqrt(pi) sqrt(t) [ sqrt(Dz)/h + sqrt(Dxy) (1/w + 1/l) ]
 * </pre>
 *
 * <p>All six faces are open, Dz through the thickness h, Dxy in the plane of w and l. It turns the 24-hour absorption that
 * makers print, and a workshop's own soak, into diffusivities: plates of two thicknesses give both.
 */
@PublishedModel(
        source = "shen-springer-1976",
        locator = "initial uptake with edge correction; Crank 1975 equation 4.20 for each pair of faces",
        validity = "constant diffusivity, share up to about one half")
public final class EarlyUptake {
    private EarlyUptake() {}

    /**
     * Share of saturation, unbounded: above one half the plate takes up less than this says.
     *
     * @param thicknessMetres h, positive
     * @param widthMetres w, positive
     * @param lengthMetres l, positive
     * @param throughSquareMetresPerSecond Dz, positive
     * @param inPlaneSquareMetresPerSecond Dxy, positive
     * @param seconds time under water, zero or more
     */
    public static double share(
            double thicknessMetres,
            double widthMetres,
            double lengthMetres,
            double throughSquareMetresPerSecond,
            double inPlaneSquareMetresPerSecond,
            double seconds) {
        if (!(thicknessMetres > 0)
                || !(widthMetres > 0)
                || !(lengthMetres > 0)
                || !(throughSquareMetresPerSecond > 0)
                || !(inPlaneSquareMetresPerSecond > 0)
                || !(seconds >= 0)) {
            throw new IllegalArgumentException(
                    "early uptake needs positive sizes and diffusivities and a time of zero or"
                            + " more, got " + thicknessMetres + ", " + widthMetres + ", " + lengthMetres + " m, "
                            + throughSquareMetresPerSecond + ", " + inPlaneSquareMetresPerSecond + " m2/s, " + seconds
                            + " s");
        }
        double faces = Math.sqrt(throughSquareMetresPerSecond) / thicknessMetres;
        double edges = Math.sqrt(inPlaneSquareMetresPerSecond) * (1 / widthMetres + 1 / lengthMetres);
        return 4 / Math.sqrt(Math.PI) * Math.sqrt(seconds) * (faces + edges);
    }
}
