package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.stat.StatUtils;

/** What McKay, Beckman and Conover (1979) promise of a Latin hypercube. */
class LatinHypercubeProperties {

    @Property(tries = 50)
    void everyStratumOfEveryDirectionHoldsOnePoint(
            @ForAll @IntRange(min = 1, max = 8) int directions,
            @ForAll @IntRange(min = 1, max = 300) int points,
            @ForAll long seed) {
        for (double[] column : LatinHypercube.of(directions, points, new SplittableRandom(seed))
                .columns()) {
            int[] held = new int[points];
            for (double u : column) {
                assertTrue(u > 0 && u < 1, "" + u);
                held[Math.min(points - 1, (int) Math.ceil(u * points - 1e-9) - 1)]++;
            }
            assertTrue(Arrays.stream(held).allMatch(count -> count == 1), Arrays.toString(held));
        }
    }

    @Property(tries = 10)
    void theSameSeedGivesTheSamePoints(@ForAll long seed) {
        double[][] one = LatinHypercube.of(3, 40, new SplittableRandom(seed)).columns();
        double[][] other = LatinHypercube.of(3, 40, new SplittableRandom(seed)).columns();
        for (int i = 0; i < one.length; i++) {
            assertArrayEquals(one[i], other[i], 0);
        }
    }

    /**
     * The variance of a mean falls against plain sampling where the answer is monotone in every input (their section 2.4);
     * for a sum of inputs it falls by about n squared over n: here, 50 points, below a hundredth.
     */
    @Example
    void meansOfMonotoneAnswersScatterLessThanWithPlainSampling() {
        int points = 50;
        int replicates = 300;
        double[] sumHypercube = new double[replicates];
        double[] sumPlain = new double[replicates];
        double[] productHypercube = new double[replicates];
        double[] productPlain = new double[replicates];
        SplittableRandom random = new SplittableRandom(20);
        for (int r = 0; r < replicates; r++) {
            double[][] hypercube = LatinHypercube.of(3, points, random).columns();
            for (int i = 0; i < points; i++) {
                double[] plain = {random.nextDouble(), random.nextDouble(), random.nextDouble()};
                sumHypercube[r] += hypercube[0][i] + hypercube[1][i] + hypercube[2][i];
                sumPlain[r] += plain[0] + plain[1] + plain[2];
                productHypercube[r] += hypercube[0][i] * hypercube[1][i] * hypercube[2][i];
                productPlain[r] += plain[0] * plain[1] * plain[2];
            }
        }
        assertTrue(StatUtils.variance(sumHypercube) < 0.01 * StatUtils.variance(sumPlain));
        assertTrue(StatUtils.variance(productHypercube) < 0.5 * StatUtils.variance(productPlain));
        assertEquals(1.5, StatUtils.mean(sumHypercube) / points, 1e-3);
    }
}
