package hafthold.decide;

import hafthold.knife.FullTangKnife;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.simulate.HandleYear;
import hafthold.source.Finding;
import java.util.List;

/**
 * A full-tang knife held against one place.
 *
 * @param knife the knife
 * @param destination where it goes
 * @param year what it does there
 * @param verdict what to tell the customer
 * @param reasons everything that is not the best class of work, the deciding one first
 * @param likelihood how often the verdict holds
 * @param advice changes that were tried and help, the most helpful first
 * @param findings choices that the answer rests on
 */
public record FullTangFit(
        FullTangKnife knife,
        Destination destination,
        FitYear year,
        Verdict verdict,
        List<Reason> reasons,
        Likelihood likelihood,
        List<Advice> advice,
        List<Finding> findings)
        implements KnifeFit {

    /** Keeps its own copies. */
    public FullTangFit {
        reasons = List.copyOf(reasons);
        advice = List.copyOf(advice);
        findings = List.copyOf(findings);
    }

    @Override
    public HandleYear whole() {
        return year.whole();
    }
}
