package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** First-order shares against answers whose shares are known in closed form. */
class PlischkeCosineSensitivityTest {
    private static final double A = 7;
    private static final double B = 0.1;

    /** Share of the variance of a normal quantile function in its first four cosine waves, by its own sum. */
    private static final double LINE_IN_FOUR_WAVES = lineInFourWaves();

    /**
     * Ishigami and Homma 1990: f = sin x1 + a sin^2 x2 + b x3^4 sin x1, x uniform in -pi..pi. From its integrals
     * V1 = (1 + b pi^4/5)^2/2, V2 = a^2/8, V3 = 0 and V = V1 + V2 + 8 b^2 pi^8/225; printed in many places as 0.3139,
     * 0.4424 and 0. Ten thousand points, 6 waves: chance is sqrt(12)/10000.
     */
    @Test
    void sharesOfTheIshigamiFunctionAreThePublishedOnes() {
        double pi4 = Math.pow(Math.PI, 4);
        double first = Math.pow(1 + B * pi4 / 5, 2) / 2;
        double second = A * A / 8;
        double variance = first + second + 8 * B * B * pi4 * pi4 / 225;
        assertEquals(0.3139, first / variance, 0.00005);
        assertEquals(0.4424, second / variance, 0.00005);

        int n = 10_000;
        double[][] x = LatinHypercube.of(3, n, new SplittableRandom(3)).columns();
        double[] answers = new double[n];
        for (int i = 0; i < n; i++) {
            double sine = Math.sin(angle(x[0][i]));
            answers[i] = sine + A * Math.pow(Math.sin(angle(x[1][i])), 2) + B * Math.pow(angle(x[2][i]), 4) * sine;
        }
        assertEquals(0.3139, new PlischkeCosineSensitivity(answers.length, 6).share(Ranks.of(x[0]), answers), 0.01);
        assertEquals(0.4424, new PlischkeCosineSensitivity(answers.length, 6).share(Ranks.of(x[1]), answers), 0.01);
        assertEquals(0, new PlischkeCosineSensitivity(answers.length, 6).share(Ranks.of(x[2]), answers), 0.005);
    }

    private static double lineInFourWaves() {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        int n = 100_000;
        double[] wave = new double[5];
        double total = 0;
        for (int i = 0; i < n; i++) {
            double u = (i + 0.5) / n;
            double z = normal.inverseCumulativeProbability(u);
            total += z * z;
            for (int k = 1; k <= 4; k++) {
                wave[k] += z * Math.cos(Math.PI * k * u);
            }
        }
        double held = 0;
        for (double sum : wave) {
            held += 2.0 / n * sum * sum;
        }
        return held / total;
    }

    private static double angle(double uniform) {
        return Math.PI * (2 * uniform - 1);
    }

    /** Of a sum of normal inputs each holds the square of its coefficient over the sum of squares. */
    @Test
    void sharesOfASumAreTheSquaresOfItsCoefficients() {
        double[] coefficients = {3, 2, 1, 0};
        int n = 2000;
        double[][] x = normal(LatinHypercube.of(4, n, new SplittableRandom(5)).columns());
        double[] answers = new double[n];
        for (int i = 0; i < n; i++) {
            for (int c = 0; c < 4; c++) {
                answers[i] += coefficients[c] * x[c][i];
            }
        }
        for (int c = 0; c < 4; c++) {
            assertEquals(
                    LINE_IN_FOUR_WAVES * coefficients[c] * coefficients[c] / 14.0,
                    new PlischkeCosineSensitivity(answers.length, 4).share(Ranks.of(x[c]), answers),
                    0.02,
                    "input " + c);
        }
    }

    /** An input that goes with another is worth what it tells of both: here corr^2 = 0.64 of an answer it is not in. */
    @Test
    void aCorrelatedInputIsWorthWhatItTells() {
        int n = 5000;
        double[][] x = normal(LatinHypercube.of(2, n, new SplittableRandom(9)).columns());
        double[] answers = new double[n];
        for (int i = 0; i < n; i++) {
            answers[i] = 0.8 * x[0][i] + 0.6 * x[1][i];
        }
        assertEquals(
                LINE_IN_FOUR_WAVES * 0.64,
                new PlischkeCosineSensitivity(answers.length, 4).share(Ranks.of(x[0]), answers),
                0.02);
    }

    /** Chance alone: a hundred points, 4 waves, 2000 trials about zero with the standard deviation that is claimed. */
    @Test
    void whatChanceLeavesIsAsLargeAsClaimed() {
        SplittableRandom random = new SplittableRandom(11);
        double sum = 0;
        double squares = 0;
        int trials = 2000;
        for (int t = 0; t < trials; t++) {
            double[] input = random.doubles(100).toArray();
            double[] answers = random.doubles(100).toArray();
            double share = new PlischkeCosineSensitivity(answers.length, 4).share(Ranks.of(input), answers);
            sum += share / trials;
            squares += share * share / trials;
        }
        assertEquals(0, sum, 0.003);
        assertEquals(PlischkeCosineSensitivity.chance(100, 4), Math.sqrt(squares), 0.003);
    }

    @Test
    void anAnswerThatStandsStillHasNoShares() {
        assertTrue(new PlischkeCosineSensitivity(7, 4)
                        .share(Ranks.of(new double[] {1, 2, 3, 4, 5, 6, 7}), new double[7])
                == 0);
    }

    private static double[][] normal(double[][] uniform) {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        double[][] result = new double[uniform.length][uniform[0].length];
        for (int c = 0; c < uniform.length; c++) {
            for (int i = 0; i < uniform[c].length; i++) {
                result[c][i] = normal.inverseCumulativeProbability(uniform[c][i]);
            }
        }
        return result;
    }
}
