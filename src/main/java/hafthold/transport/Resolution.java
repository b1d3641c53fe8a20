package hafthold.transport;

/**
 * How finely a slab is cut in depth and time. The standard one is proved by test against {@link #CONVERGED}: mean within
 * 1e-4 kg/kg, surface and first moment within 1e-3 kg/kg under hourly air.
 *
 * @param gaps stretches between grid points, 4 or more
 * @param finestGap width of the stretch next to the air as a share of the depth that an hour reaches, positive
 * @param tolerance largest local error of a time step as a share of the moisture content in saturated air, positive
 */
public record Resolution(int gaps, double finestGap, double tolerance) {
    /** For answers. */
    public static final Resolution STANDARD = new Resolution(12, 0.3, 7e-4);
    /** For proofs: ten times finer in depth, a thousand times in time error; a hundred times the cost. */
    public static final Resolution CONVERGED = new Resolution(120, 0.03, 1e-6);

    /** Rejects numbers out of range. */
    public Resolution {
        if (gaps < 4 || !(finestGap > 0) || !(tolerance > 0)) {
            throw new IllegalArgumentException(
                    "a resolution needs 4 gaps or more and positive finest gap and tolerance," + " got " + gaps + ", "
                            + finestGap + ", " + tolerance);
        }
    }
}
