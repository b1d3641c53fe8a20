package hafthold.simulate;

import hafthold.numeric.AdaptiveStrata;
import hafthold.numeric.ImportanceWeights;
import hafthold.numeric.LatinHypercube;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Draws of what is not known of a block, a Latin hypercube: ranges as {@link Draws} takes them, seeded. Where readings leave
 * few draws that fit, the next round is drawn from where those lie.
 *
 * @param coordinate share of the probability, by input and draw
 * @param draws the draws
 * @param logPrior logarithm of how much less often than by chance each draw was made
 */
record StockDraws(double[][] coordinate, List<StockInputs> draws, double[] logPrior) {
    private static final List<StockInput> INPUTS = List.of(StockInput.values());

    /** So many draws as chance has them; the same seed gives the same ones. */
    static StockDraws of(int count, long seed) {
        return from(AdaptiveStrata.even(INPUTS.size()), count, seed);
    }

    /**
     * As many draws from where those of this round lie that fit.
     *
     * @param logWeights logarithm of the weight of each draw of this round
     * @param wantedEffective so many draws are to count in what is learnt: where fewer fit, weights are evened out
     */
    StockDraws next(double[] logWeights, double wantedEffective, long seed) {
        ImportanceWeights weights = ImportanceWeights.evened(logWeights, wantedEffective);
        return from(AdaptiveStrata.learnt(coordinate, weights), draws.size(), seed);
    }

    private static StockDraws from(AdaptiveStrata strata, int count, long seed) {
        double[][] shares = LatinHypercube.of(
                        INPUTS.size(), count, new SplittableRandom(0x5704C0L ^ Long.rotateLeft(seed, 17)))
                .columns();
        double[] logPrior = new double[count];
        List<StockInputs> draws = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            Map<StockInput, Double> at = new EnumMap<>(StockInput.class);
            for (int place = 0; place < shares.length; place++) {
                StockInput input = INPUTS.get(place);
                double coordinate = strata.coordinate(place, shares[place][number]);
                shares[place][number] = coordinate;
                logPrior[number] -= strata.logDensity(place, coordinate);
                at.put(input, input.isEven() ? coordinate : Draws.position(coordinate));
            }
            draws.add(new StockInputs(at::get));
        }
        return new StockDraws(shares, draws, logPrior);
    }
}
