package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ImportanceWeightsTest {
    private static final int SAMPLES = 4000;
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    /**
     * Against a closed form: a normal quantity measured with a normal error is normal afterwards, its precision the sum of
     * both and its mean theirs by precision (the conjugate normal model, such as Gelman and others, Bayesian Data Analysis,
     * 3rd edition, equations 2.11 and 2.12; written down from memory and derived again by completing the square). The
     * tolerances are four standard errors of that many weighted samples.
     */
    @ParameterizedTest
    @CsvSource({"0, 1, 0.5, 0.5", "0, 1, -1.2, 0.4", "3, 2, 5, 1", "-0.1, 0.05, -0.2, 0.03"})
    void aNormalPriorMeasuredWithANormalErrorIsTheKnownNormal(
            double mean, double deviation, double measured, double error) {
        double[] prior = prior(mean, deviation);
        ImportanceWeights weights = new ImportanceWeights(logLikelihoods(prior, measured, error));
        double precision = 1 / (deviation * deviation) + 1 / (error * error);
        double exact = (mean / (deviation * deviation) + measured / (error * error)) / precision;
        double spread = Math.sqrt(1 / precision);
        double standardError = spread / Math.sqrt(weights.effectiveSamples());
        assertEquals(exact, weights.mean(prior), 4 * standardError);
        assertEquals(exact + 1.2816 * spread, weights.quantile(prior, 0.9), 7 * standardError);
        double[] squares =
                Arrays.stream(prior).map(value -> Math.pow(value - exact, 2)).toArray();
        assertEquals(spread, Math.sqrt(weights.mean(squares)), 4 * standardError);
        double[] drawn = Arrays.stream(weights.resampled(1000))
                .mapToDouble(sample -> prior[sample])
                .toArray();
        assertEquals(exact, Arrays.stream(drawn).average().orElseThrow(), 4 * standardError);
    }

    /** For a normal prior and error the share of samples that count is known too: the mean weight squared over its square. */
    @Test
    void fewerSamplesCountThePreciserTheMeasuring() {
        double[] prior = prior(0, 1);
        double before = SAMPLES;
        for (double error : new double[] {2, 1, 0.5, 0.2, 0.1}) {
            double effective = new ImportanceWeights(logLikelihoods(prior, 0, error)).effectiveSamples();
            // (mean of exp(-x²/2e²))² over mean of exp(-x²/e²), x standard normal.
            double exact = SAMPLES * Math.sqrt(1 + 2 / (error * error)) / (1 + 1 / (error * error));
            assertEquals(exact, effective, 0.05 * exact);
            assertTrue(effective < before);
            before = effective;
        }
    }

    @Test
    void weightsThatSayNothingLeaveEverySampleAlike() {
        ImportanceWeights weights = new ImportanceWeights(new double[] {-3, -3, -3, -3});
        assertEquals(4, weights.effectiveSamples(), 1e-12);
        assertEquals(2.5, weights.mean(new double[] {1, 2, 3, 4}), 1e-12);
        assertEquals(2, weights.quantile(new double[] {4, 3, 2, 1}, 0.5), 0);
        assertEquals("[0, 0, 1, 1, 2, 2, 3, 3]", Arrays.toString(weights.resampled(8)));
    }

    @Test
    void whereNoSampleCanBeThereAreNoWeights() {
        assertThrows(IllegalArgumentException.class, () -> new ImportanceWeights(new double[0]));
        assertThrows(
                IllegalArgumentException.class, () -> new ImportanceWeights(new double[] {Double.NEGATIVE_INFINITY}));
    }

    /** What is sampled and then measured is spread by both: for normals the variances add. */
    @Test
    void aBlurredSampleIsSpreadByBoth() {
        BlurredSample blurred = new BlurredSample(prior(1, 3), 4);
        assertEquals(1 + 5 * 1.6449, blurred.quantile(0.95), 0.1);
        assertEquals(0.5, blurred.below(1), 0.01);
        assertEquals(0.1, blurred.asFarOut(1 - 5 * 1.6449), 0.005);
    }

    private static double[] prior(double mean, double deviation) {
        double[] uniform =
                LatinHypercube.of(1, SAMPLES, new SplittableRandom(7)).column(0);
        return Arrays.stream(uniform)
                .map(share -> mean + deviation * NORMAL.inverseCumulativeProbability(share))
                .toArray();
    }

    private static double[] logLikelihoods(double[] prior, double measured, double error) {
        return Arrays.stream(prior)
                .map(value -> -Math.pow((measured - value) / error, 2) / 2)
                .toArray();
    }

    /** One sample that outweighs all others is told no more as if it were all: its lead is kept, and shrinks. */
    @Test
    void evenedWeightsCountAsManyAsIsAsked() {
        double[] logs = new double[50];
        for (int i = 0; i < logs.length; i++) {
            logs[i] = -3.0 * i;
        }
        assertTrue(new ImportanceWeights(logs).effectiveSamples() < 2);
        ImportanceWeights evened = ImportanceWeights.evened(logs, 10);
        assertTrue(evened.effectiveSamples() >= 10, "count " + evened.effectiveSamples());
        assertTrue(evened.of(0) > evened.of(1));
        assertEquals(
                new ImportanceWeights(logs).effectiveSamples(),
                ImportanceWeights.evened(logs, 1).effectiveSamples());
    }
}
