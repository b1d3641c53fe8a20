package hafthold.numeric;

import hafthold.source.PublishedModel;
import java.util.Arrays;

/**
 * Strata of the unit cube, along each direction, that are visited more often where earlier points had weight: importance
 * sampling whose density is a product of one histogram a direction and learns from round to round.
 *
 * <p>A share of the visits stays spread evenly, so that no place is forgotten and no weight grows beyond bounds.
 */
@PublishedModel(
        source = "lepage-1978",
        locator = "adaptive importance sampling by separable strata",
        validity = "any weight; gains where the weight lies in a part of each direction by itself")
public final class AdaptiveStrata {
    private static final int BINS = 16;
    private static final double EVEN = 0.25;

    private final double[][] chance;

    private AdaptiveStrata(double[][] chance) {
        this.chance = chance;
    }

    /** Every place alike, before anything is known. */
    public static AdaptiveStrata even(int directions) {
        double[][] chance = new double[directions][BINS];
        for (double[] bins : chance) {
            Arrays.fill(bins, 1.0 / BINS);
        }
        return new AdaptiveStrata(chance);
    }

    /**
     * Learnt from points and their weights.
     *
     * @param coordinate coordinate of each direction and point, 0 to 1
     * @param weights weights of the points
     */
    public static AdaptiveStrata learnt(double[][] coordinate, ImportanceWeights weights) {
        double[][] chance = new double[coordinate.length][BINS];
        for (int direction = 0; direction < coordinate.length; direction++) {
            for (int point = 0; point < coordinate[direction].length; point++) {
                chance[direction][bin(coordinate[direction][point])] += (1 - EVEN) * weights.of(point);
            }
            for (int bin = 0; bin < BINS; bin++) {
                chance[direction][bin] += EVEN / BINS;
            }
        }
        return new AdaptiveStrata(chance);
    }

    private static int bin(double coordinate) {
        return Math.min(BINS - 1, (int) (BINS * coordinate));
    }

    /**
     * The coordinate in a direction that a share of all visits does not exceed.
     *
     * @param direction number of the direction
     * @param share 0 to 1
     */
    public double coordinate(int direction, double share) {
        double before = 0;
        for (int bin = 0; bin < BINS; bin++) {
            double one = chance[direction][bin];
            if (share <= before + one || bin == BINS - 1) {
                return Math.min(1, (bin + (share - before) / one) / BINS);
            }
            before += one;
        }
        return 1;
    }

    /** Logarithm of how much more often than evenly a coordinate of a direction is visited. */
    public double logDensity(int direction, double coordinate) {
        return Math.log(BINS * chance[direction][bin(coordinate)]);
    }
}
