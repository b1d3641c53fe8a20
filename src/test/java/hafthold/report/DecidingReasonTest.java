package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Reason;
import hafthold.decide.Verdict;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What decides names the limit that it exceeds where something has to change, and the one it keeps where care will do. */
class DecidingReasonTest {
    private static final ReasonWords WORDS = new ReasonWords(BenchStyle.ENGLISH, false);

    @Test
    void aChangeIsAskedForByALimitThatIsExceeded() {
        List<Ranked> answers = answers(Verdict.CHANGE);
        assertFalse(answers.isEmpty());
        for (Ranked answer : answers) {
            Reason decides = answer.reasons().get(0);
            assertFalse(decides.keeps(), answer.year().scale().id());
            if (!decides.kind().isUse()) {
                assertTrue(decides.heldTo().name().equals("seasonal"), WORDS.clause(decides));
                assertTrue(WORDS.clause(decides).contains("more than seasonal work allows"), WORDS.clause(decides));
            }
        }
    }

    @Test
    void careIsAskedForWithinALimitThatIsKept() {
        List<Ranked> answers = answers(Verdict.CARE);
        assertFalse(answers.isEmpty());
        for (Ranked answer : answers) {
            assertTrue(answer.reasons().get(0).keeps(), answer.year().scale().id());
        }
    }

    /** The number that is told stands on its own side of the limit beside it. */
    @Test
    void theSizeNeverPrintsOnTheOtherSideOfItsLimit() {
        for (Ranked answer : answers(Verdict.CHANGE)) {
            Reason decides = answer.reasons().get(0);
            if (decides.kind() == Reason.Kind.EDGE_SHY) {
                assertTrue(new BenchLength(decides.size().orElseThrow())
                                .millimetres()
                                .doubleValue()
                        >= decides.heldTo().shy().millimetres() - 1e-9);
            }
        }
    }

    private static List<Ranked> answers(Verdict verdict) {
        List<Ranked> answers = new ArrayList<>();
        for (Comparison comparison :
                List.of(InventedComparison.glued(), InventedComparison.unglued(), InventedComparison.damp())) {
            comparison.ranked().stream()
                    .filter(answer -> answer.verdict() == verdict)
                    .forEach(answers::add);
        }
        return answers;
    }
}
