package hafthold.numeric;

import hafthold.source.PublishedModel;
import java.util.Comparator;
import java.util.stream.IntStream;

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
    private PlischkeCosineSensitivity() {}

    /**
     * The share of one input.
     *
     * @param input its value at each point
     * @param answers the answer at each point
     * @param waves cosine waves kept, m: 4 do for what rises, falls or bends once
     * @return 0 for none to 1 for all, a little below 0 by chance; 0 where the answer does not vary
     */
    public static double share(double[] input, double[] answers, int waves) {
        int n = answers.length;
        if (input.length != n || waves < 1 || waves >= n - 1) {
            throw new IllegalArgumentException("needs as many inputs as answers and fewer waves than answers, got "
                    + input.length + ", " + n + " and " + waves);
        }
        int[] order = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> input[i]))
                .mapToInt(Integer::intValue)
                .toArray();
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
        for (int k = 1; k <= waves; k++) {
            double c = 0;
            for (int j = 0; j < n; j++) {
                c += (answers[order[j]] - mean) * Math.cos(Math.PI * k * (2 * j + 1) / (2.0 * n));
            }
            held += 2.0 / n * c * c;
        }
        double chance = waves / (n - 1.0);
        return (held / total - chance) / (1 - chance);
    }

    /** Standard deviation of the share of an input that has none, by chance. */
    public static double chance(int points, int waves) {
        return Math.sqrt(2.0 * waves) / points;
    }
}
