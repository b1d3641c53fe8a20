package hafthold.decide;

import hafthold.source.Finding;
import java.util.List;
import java.util.Optional;

/**
 * Everything that a file of coupons tells.
 *
 * @param studies one a material, in the order of the file
 * @param outcomes how good what was foretold was; empty where the file tells of none
 * @param findings what all of it rests on
 */
public record CouponAnswer(List<CouponStudy> studies, Optional<OutcomeTally> outcomes, List<Finding> findings) {

    /** Keeps its own copies. */
    public CouponAnswer {
        studies = List.copyOf(studies);
        findings = List.copyOf(findings);
    }
}
