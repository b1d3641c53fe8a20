package hafthold.mechanics;

/**
 * Lean of the flanks of a scale that is cut between flat and quarter: as its rings stand askew it swells into a
 * parallelogram, one flank leaning out and the other in.
 *
 * <p>The free strain tensor turned by the ring angle has the shear (across - through) sin(2 angle); a scale glued by its
 * wide face is free to take it, so a flank moves by shear times height, out on one side and in on the other, beside
 * what {@link BondedSection} says of both. Elastic coupling takes part of it back: in the walnut-like example of the
 * tests at 45 degrees 28 % at mid-thickness, so this is the upper end.
 *
 * @param ringAngleRadians 0 flat-sawn, a right angle quarter-sawn
 */
public record FlankLean(double ringAngleRadians) {

    /**
     * Lean of the flank that moves out.
     *
     * @param acrossStrain free strain tangential to the rings
     * @param throughStrain free strain radial to the rings
     * @param heightMetres above the glue, m
     * @return m, not negative; the other flank moves in by the same
     */
    public double leanMetres(double acrossStrain, double throughStrain, double heightMetres) {
        return Math.abs((acrossStrain - throughStrain) * Math.sin(2 * ringAngleRadians) * heightMetres);
    }
}
