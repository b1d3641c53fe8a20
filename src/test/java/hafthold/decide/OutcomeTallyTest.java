package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.StepOutcome;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class OutcomeTallyTest {
    private static StepOutcome outcome(double predicted, double measured) {
        return new StepOutcome("step", new Band(predicted - 0.03e-3, predicted, predicted + 0.03e-3), measured);
    }

    private static List<StepOutcome> outcomes(int inside, int outside) {
        List<StepOutcome> all = new ArrayList<>();
        for (int i = 0; i < inside; i++) {
            all.add(outcome(0.1e-3 + i * 0.01e-3, 0.11e-3 + i * 0.01e-3));
        }
        for (int i = 0; i < outside; i++) {
            all.add(outcome(0.2e-3, 0.3e-3));
        }
        return all;
    }

    /** By the definition of the exact interval: at either end so few or so many inside have a chance of a tenth. */
    @Test
    void theEndsOfTheShareAreWhereSoManyInsideWouldBeATenthsChance() {
        OutcomeTally tally = OutcomeTally.of(outcomes(8, 2));
        assertEquals(0.8, tally.insideShare().value(), 1e-12);
        assertEquals(
                0.1, 1 - new BinomialDistribution(null, 10, tally.insideShare().low()).cumulativeProbability(7), 1e-6);
        assertEquals(
                0.1, new BinomialDistribution(null, 10, tally.insideShare().high()).cumulativeProbability(8), 1e-6);
    }

    /** Against Commons Math's regression through zero. */
    @Test
    void theFactorIsTheSlopeThroughZero() {
        List<StepOutcome> outcomes = new ArrayList<>();
        SimpleRegression regression = new SimpleRegression(false);
        for (double[] pair : new double[][] {{-0.2, -0.25}, {0.1, 0.14}, {0.15, 0.16}, {-0.05, -0.03}}) {
            outcomes.add(outcome(pair[0] * 1e-3, pair[1] * 1e-3));
            regression.addData(pair[0], pair[1]);
        }
        Band factor = OutcomeTally.of(outcomes).factor().orElseThrow();
        assertEquals(regression.getSlope(), factor.value(), 1e-9);
        assertEquals(
                regression.getSlopeStdErr() * 1.638, // Student's t, 90 %, 3 degrees of freedom, any printed table
                factor.high() - factor.value(),
                1e-3 * factor.value());
    }

    @Test
    void allOrNoneInsideLeaveAnOpenEnd() {
        assertEquals(1, OutcomeTally.of(outcomes(3, 0)).insideShare().high(), 0);
        assertEquals(0, OutcomeTally.of(outcomes(0, 3)).insideShare().low(), 0);
    }

    @Test
    void aHandfulProvesNothing() {
        assertFalse(OutcomeTally.of(outcomes(4, 1)).says());
        assertTrue(OutcomeTally.of(outcomes(9, 3)).says());
        assertTrue(OutcomeTally.of(outcomes(1, 0)).factor().isEmpty());
    }
}
