package hafthold.simulate;

import hafthold.source.PublishedModel;
import java.util.Arrays;
import java.util.function.IntFunction;

/**
 * Shares out what several things make together: of each the mean of what it adds, over all orders in which they can come
 * in one after another. The shares add up to the whole, whatever else.
 */
@PublishedModel(
        source = "shapley-1953",
        locator = "the value of a game: mean marginal contribution over all orders",
        validity = "any answer of a few things; costs two to the power of their number")
final class ShapleyShares {
    private ShapleyShares() {}

    /**
     * Shares of several answers at once.
     *
     * @param things how many, 1 to 10
     * @param answersOf the answers when the things whose bits are set have come in
     * @return by thing, then by answer
     */
    static double[][] of(int things, IntFunction<double[]> answersOf) {
        double[][] answers = new double[1 << things][];
        Arrays.setAll(answers, answersOf);
        double[][] shares = new double[things][answers[0].length];
        for (int set = 0; set < answers.length; set++) {
            int before = Integer.bitCount(set);
            for (int thing = 0; thing < things; thing++) {
                if ((set >> thing & 1) == 0) {
                    double[] without = answers[set];
                    double[] with = answers[set | 1 << thing];
                    double weight = weight(things, before);
                    double[] share = shares[thing];
                    Arrays.setAll(share, i -> share[i] + weight * (with[i] - without[i]));
                }
            }
        }
        return shares;
    }

    /** Part of all orders in which so many come before one thing, for one choice of these: s! (n - s - 1)! / n!. */
    private static double weight(int things, int before) {
        double weight = 1.0 / things;
        for (int i = 1; i <= before; i++) {
            weight *= (double) i / (things - i);
        }
        return weight;
    }
}
