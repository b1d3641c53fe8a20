package hafthold.numeric;

import hafthold.source.PublishedModel;
import java.util.SplittableRandom;

/**
 * Latin hypercube of the unit cube: in every direction each of n equal strata holds exactly one of n points, placed at
 * random inside it, and the strata are paired at random between the directions.
 */
@PublishedModel(
        source = "mckay-1979",
        locator = "section 2.3, Latin hypercube sampling",
        validity = "any number of points and directions; means of answers that are about additive gain most")
public final class LatinHypercube {
    private LatinHypercube() {}

    /**
     * The points, column by column: one a direction.
     *
     * @param directions how many coordinates a point has
     * @param points how many points, one or more
     * @param random source of chance; the same state gives the same points on every machine
     * @return coordinate of each direction and point, inside (0, 1)
     */
    public static RankedColumns of(int directions, int points, SplittableRandom random) {
        double[][] ascending = new double[directions][points];
        int[][] rank = new int[directions][points];
        for (int c = 0; c < directions; c++) {
            for (int i = 0; i < points; i++) {
                // Half open (0, 1]: never 0, where a normal distribution has no quantile; n is never reached by u < 1.
                double coordinate = (i + 1 - random.nextDouble()) / points;
                ascending[c][i] = Math.min(coordinate, Math.nextDown(1.0));
                rank[c][i] = i;
            }
            shuffle(rank[c], random);
        }
        return new RankedColumns(ascending, rank);
    }

    private static void shuffle(int[] column, SplittableRandom random) {
        for (int i = column.length - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int kept = column[i];
            column[i] = column[other];
            column[other] = kept;
        }
    }
}
