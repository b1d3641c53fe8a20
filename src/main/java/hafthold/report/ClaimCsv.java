package hafthold.report;

import hafthold.decide.Claim;

/** placeholder. */
public final class ClaimCsv {
    private ClaimCsv() {}

    /** x. */
    public static String of(Claim claim) {
        return claim.verdict().word();
    }
}
