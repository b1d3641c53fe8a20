package hafthold.report;

import hafthold.decide.Claim;
import hafthold.knife.FitLimits;
import hafthold.source.Finding;
import java.util.List;
import java.util.Map;

/** placeholder.
 * @param style x
 * @param limits x
 * @param cautions x
 * @param input x
 * @param command x
 */
public record ClaimReport(
        BenchStyle style, List<FitLimits> limits, List<Finding> cautions, String input, String command) {
    /** x. */
    public static final String PAGE = "claim.html";

    /** x. */
    public Map<String, String> files(Claim claim) {
        return Map.of("claim.json", ClaimJson.of(claim));
    }
}
