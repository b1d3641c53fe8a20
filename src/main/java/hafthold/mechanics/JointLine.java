package hafthold.mechanics;

/**
 * Two parts of a scale joined side by side along a line, one of which moves more than the other.
 *
 * <p>Parts of equal section that must keep one size share their difference: from e1 + s/E1 = e2 - s/E2 follows s = (e1 -
 * e2) / (1/E1 + 1/E2), pulling in the one that moves less and pressing in the other (Timoshenko 1925 without the
 * bending). Across the line nothing holds them: their faces part by thickness x (e1 - e2).
 *
 * @param onePascals Young's modulus of one part along the line, positive
 * @param otherPascals Young's modulus of the other, positive
 */
public record JointLine(double onePascals, double otherPascals) {

    /** Checks the moduli. */
    public JointLine {
        if (!(onePascals > 0) || !(otherPascals > 0)) {
            throw new IllegalArgumentException("moduli must be positive, got " + onePascals + ", " + otherPascals);
        }
    }

    /** Elastic stress per difference of free strain, Pa. */
    public double pascalsPerStrain() {
        return 1 / (1 / onePascals + 1 / otherPascals);
    }
}
