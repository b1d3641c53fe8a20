package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.distribution.MultivariateNormalDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Against a general-purpose library: the marginal likelihood is a multivariate normal density. */
class CommonLevelTest {
    private static final double BEFORE = 1.2;
    private static final double SPREAD = 0.4;

    @Test
    void likelihoodIsThatOfTheMultivariateNormalDistribution() {
        double[] deviation = {0.1, 0.25, 0.05};
        double[][] covariance = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                covariance[i][j] = SPREAD * SPREAD + (i == j ? deviation[i] * deviation[i] : 0);
            }
        }
        MultivariateNormalDistribution library =
                new MultivariateNormalDistribution(new double[] {BEFORE, BEFORE, BEFORE}, covariance);
        double[] one = {1.0, 1.3, 1.1};
        double[] other = {1.9, 1.6, 1.7};
        double difference = new CommonLevel(BEFORE, SPREAD, one, deviation).logLikelihood()
                - new CommonLevel(BEFORE, SPREAD, other, deviation).logLikelihood();
        assertEquals(Math.log(library.density(one) / library.density(other)), difference, 1e-9);
    }

    @Test
    void levelIsTheMeanWeightedByPrecision() {
        CommonLevel level = new CommonLevel(0, 1, new double[] {2}, new double[] {1});
        assertEquals(1, level.level(), 1e-12);
        assertEquals(Math.sqrt(0.5), level.deviation(), 1e-12);
        assertEquals(1, level.misfit(), 1e-12);
    }

    @Test
    void withoutReadingsNothingIsLearnt() {
        CommonLevel level = new CommonLevel(BEFORE, SPREAD, new double[0], new double[0]);
        assertEquals(BEFORE, level.level(), 1e-12);
        assertEquals(SPREAD, level.deviation(), 1e-12);
        assertEquals(0, level.logLikelihood(), 1e-12);
        assertEquals(
                1.0, new NormalDistribution(BEFORE, SPREAD).density(BEFORE) * SPREAD * Math.sqrt(2 * Math.PI), 1e-12);
    }
}
