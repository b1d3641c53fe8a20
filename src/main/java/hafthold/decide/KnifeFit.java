package hafthold.decide;

import hafthold.knife.Knife;
import hafthold.simulate.Destination;
import hafthold.simulate.HandleYear;
import hafthold.source.Finding;
import java.util.List;

/** One knife held against one place: what it does, what to say of it, what to change. */
public sealed interface KnifeFit permits FullTangFit, StackFit {

    /** The knife. */
    Knife knife();

    /** Where it goes. */
    Destination destination();

    /** What every answer about a handle holds. */
    HandleYear whole();

    /** What to tell the customer. */
    Verdict verdict();

    /** Everything that is not the best class of work, the deciding one first. */
    List<Reason> reasons();

    /** How often the verdict holds. */
    Likelihood likelihood();

    /** Changes that were tried and help, the most helpful first. */
    List<Advice> advice();

    /** Choices that the answer rests on. */
    List<Finding> findings();
}
