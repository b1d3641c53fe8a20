package hafthold.transport;

/**
 * How finely a slab is cut in depth and time. The standard one is proved by test against {@link #CONVERGED}: mean within
 * 1e-4 kg/kg, surface and first moment within 1e-3 kg/kg under hourly air.
 *
 * @param gaps stretches between grid points, 4 or more
 * @param finestGap width of the stretch next to the air as a share of the depth that moisture reaches in an hour, positive
 * @param tolerance largest local error of a time step as a share of the moisture content in saturated air, positive
 * @param largestChangeFraction largest change of any point in a time step, kg/kg, positive: the error estimate hardly sees
 *     how the flux lags behind a steep rise or fall of the air
 * @param airStrayFraction how far air may stray from a straight line and still be passed in one step, fraction of relative
 *     humidity, zero or more
 * @param longestStepHours longest step in such air, h, positive: between moments further apart moisture would not lie on a
 *     straight line even where air does
 */
public record Resolution(
        int gaps,
        double finestGap,
        double tolerance,
        double largestChangeFraction,
        double airStrayFraction,
        double longestStepHours) {
    /** For answers. */
    public static final Resolution STANDARD = new Resolution(9, 0.5, 1e-3, 0.03, 0.0006, 40);
    /** For years that samples are read from: as the standard one, in longer steps where the air allows it. */
    public static final Resolution SAMPLED = new Resolution(9, 0.5, 1e-3, 0.03, 0.003, 120);
    /** For proofs, at thirty times the cost. */
    public static final Resolution CONVERGED = new Resolution(60, 0.06, 1e-5, 0.01, 0, 1);

    /**
     * Rejects numbers out of range.
     *
     * @throws IllegalArgumentException names all six
     */
    public Resolution {
        if (gaps < 4
                || !(finestGap > 0)
                || !(tolerance > 0)
                || !(largestChangeFraction > 0)
                || !(airStrayFraction >= 0)
                || !(longestStepHours > 0)) {
            throw new IllegalArgumentException(
                    "a resolution needs 4 gaps or more, positive finest gap, tolerance, largest change and longest step,"
                            + " and no negative stray, got " + gaps + ", " + finestGap + ", " + tolerance + ", "
                            + largestChangeFraction + ", " + longestStepHours + ", " + airStrayFraction);
        }
    }
}
