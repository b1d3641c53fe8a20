package hafthold.report;

import hafthold.decide.Claim;

/** placeholder.
 * @param style x
 */
public record ClaimText(BenchStyle style) {
    /** x. */
    public String of(Claim claim) {
        return claim.verdict().word();
    }
}
