package hafthold.simulate;

import hafthold.numeric.LatinHypercube;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Draws of what is not known of a block, a Latin hypercube: ranges as {@link Draws} takes them, seeded. */
final class StockDraws {
    private StockDraws() {}

    /** So many draws; the same seed gives the same ones. */
    static List<StockInputs> of(int count, long seed) {
        List<StockInput> inputs = List.of(StockInput.values());
        double[][] shares = LatinHypercube.of(
                        inputs.size(), count, new SplittableRandom(0x5704C0L ^ Long.rotateLeft(seed, 17)))
                .columns();
        List<StockInputs> draws = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            Map<StockInput, Double> at = new EnumMap<>(StockInput.class);
            for (int place = 0; place < shares.length; place++) {
                StockInput input = inputs.get(place);
                double share = shares[place][number];
                at.put(input, input.isEven() ? share : Draws.position(share));
            }
            draws.add(new StockInputs(at::get));
        }
        return draws;
    }
}
