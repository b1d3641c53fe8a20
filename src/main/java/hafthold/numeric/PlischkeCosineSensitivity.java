package hafthold.numeric;

import hafthold.source.PublishedModel;

/**
 * First-order share of an input in the variance of an answer, V(E[Y|X])/V(Y), read from a sample that was drawn for
 * something else: the answers are put in the order of the input, and what their first cosine waves hold of the variance
 * is what follows the input.
 *
 * <pre>
 * c_k = sqrt(2/n) sum_j y_(j) cos(pi k (2 j + 1) / (2 n)),   S = sum_{k=1..m} c_k^2 / sum_{k=1..n-1} c_k^2
 * </pre>
 *
 * <p>Of answers that do not follow the input at all the m waves hold m/(n-1) by chance; that much is taken off again:
 * (S - m/(n-1)) / (1 - m/(n-1)), as Tissot and Prieur (2012, Reliability Engineering & System
 * Safety 107, 205-213) do for random balance designs. What is left by chance then scatters
 * about zero by about sqrt(2 m)/n. Of an answer that follows a normal input on a straight line 4 waves hold 95 to 96 %.
 */
@PublishedModel(
        source = "plischke-2012",
        locator = "cosine transform of the sorted answers; chance taken off, see above",
        validity =
                "answers that follow the input in few waves; inputs may be correlated, the share is then that of E[Y|X]")
public final class PlischkeCosineSensitivity {
    private final double[][] wave;

    /**
     * For answers at so many points.
     *
     * @param points n
     * @param waves cosine waves kept, m: 4 do for what rises, falls or bends once
     */
    public PlischkeCosineSensitivity(int points, int waves) {
        if (waves < 1 || waves >= points - 1) {
            throw new IllegalArgumentException(
                    "needs more answers than waves and at least one wave, got " + points + " and " + waves);
        }
        wave = new double[waves][points];
        for (int k = 0; k < waves; k++) {
            for (int j = 0; j < points; j++) {
                wave[k][j] = Math.cos(Math.PI * (k + 1) * (2 * j + 1) / (2.0 * points));
            }
        }
    }

    /**
     * The share of one input.
     *
     * @param rank rank of its value at each point, from 0
     * @param answers the answer at each point
     * @return 0 for none to 1 for all, a little below 0 by chance; 0 where the answer does not vary
     */
    public double share(int[] rank, double[] answers) {
        int n = answers.length;
        if (n != wave[0].length) {
            throw new IllegalArgumentException("made for " + wave[0].length + " points, got " + n);
        }
        double mean = 0;
        for (double answer : answers) {
            mean += answer / n;
        }
        double total = 0;
        for (double answer : answers) {
            total += (answer - mean) * (answer - mean);
        }
        if (total == 0) {
            return 0;
        }
        double held = 0;
        for (double[] cosine : wave) {
            double c = 0;
            for (int i = 0; i < n; i++) {
                c += (answers[i] - mean) * cosine[rank[i]];
            }
            held += 2.0 / n * c * c;
        }
        double chance = wave.length / (n - 1.0);
        return (held / total - chance) / (1 - chance);
    }

    /** Standard deviation of the share of an input that has none, by chance. */
    public static double chance(int points, int waves) {
        return Math.sqrt(2.0 * waves) / points;
    }
}
