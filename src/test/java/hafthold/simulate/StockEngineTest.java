package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.StockBlock;
import hafthold.knife.StockBlock.Sealed;
import hafthold.knife.StockReading;
import hafthold.numeric.SampleQuantile;
import hafthold.transport.BlockMoisture;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Blocks whose truth is known, read as a balance would show them: what is inferred must hold the truth. */
class StockEngineTest {
    private static final double DAY = 86_400;
    private static final double SHELF = 0.45;
    private static final StockAim AIM = new StockAim(SHELF, StockBlocks.CELSIUS, 0.01);
    private static final Sampling SAMPLING = new Sampling(600, 1);

    @Test
    void bandsHoldTheTruthAsOftenAsTheySay() {
        int held = 0;
        int trials = 12;
        SplittableRandom random = new SplittableRandom(7);
        for (int trial = 0; trial < trials; trial++) {
            double speed = 2 * random.nextDouble() - 1;
            double sorption = 2 * random.nextDouble() - 1;
            Truth truth = truth(0.09 + 0.10 * random.nextDouble(), speed, sorption);
            StockPosterior told = new StockEngine(
                            StockBlocks.block(StockBlocks.walnut(), Sealed.NONE, truth.readings),
                            StockBlocks.shelf(SHELF, 0.1))
                    .posterior(AIM, SAMPLING);
            double low = quantile(told, StockOutlook::meanNow, 0.1);
            double high = quantile(told, StockOutlook::meanNow, 0.9);
            held += truth.mean >= low && truth.mean <= high ? 1 : 0;
        }
        assertTrue(held >= 7, "held " + held + " of " + trials);
    }

    /** A single weight tells next to nothing: the dry mass is known to a tenth, which is ten points of moisture. */
    @Test
    void oneWeightTellsLittleAndManyTellMuch() {
        Truth truth = truth(0.14, 0, 0);
        double once = width(truth.readings.subList(0, 1));
        double often = width(truth.readings);
        assertTrue(once > 0.05, "one weight leaves " + once);
        assertTrue(often < 0.7 * once, "many leave " + often);
    }

    @Test
    void aCoarseBalanceTellsLessAndItsChangeIsCounted() {
        Truth truth = truth(0.14, 0, 0);
        StockPosterior fine = posterior(truth.readings, 0.1);
        StockPosterior coarse = posterior(truth.readings, 5);
        assertTrue(spread(fine) < spread(coarse));
        assertTrue(quantile(fine, StockOutlook::telltaleKilograms, 0.5) > 0);
    }

    @Test
    void equalSeedsGiveEqualAnswers() {
        Truth truth = truth(0.14, 0, 0);
        assertEquals(
                posterior(truth.readings, 0.1).outlooks().stream()
                        .map(StockOutlook::meanNow)
                        .toList(),
                posterior(truth.readings, 0.1).outlooks().stream()
                        .map(StockOutlook::meanNow)
                        .toList());
    }

    /** In the air it has long been in, nothing is to come: ready at once. Far wetter, it is not. */
    @Test
    void restIsReadyAndWetIsNot() {
        List<StockReading> still =
                List.of(StockBlocks.weighed(0, 120), StockBlocks.weighed(30, 120.0), StockBlocks.weighed(120, 120.0));
        StockPosterior rest = posterior(still, 0.1);
        assertTrue(share(rest) > 0.8, "ready in " + share(rest));
        StockPosterior wet = posterior(truth(0.2, 0, 0).readings.subList(0, 2), 0.1);
        assertTrue(share(wet) < 0.1, "ready in " + share(wet));
    }

    private static double share(StockPosterior told) {
        return told.outlooks().stream().filter(StockOutlook::isReady).count()
                / (double) told.outlooks().size();
    }

    private static StockPosterior posterior(List<StockReading> readings, double balance) {
        return new StockEngine(
                        StockBlocks.block(StockBlocks.walnut(), Sealed.NONE, readings),
                        StockBlocks.shelf(SHELF, balance))
                .posterior(AIM, SAMPLING);
    }

    private static double width(List<StockReading> readings) {
        return spread(posterior(readings, 0.1));
    }

    private static double spread(StockPosterior told) {
        return quantile(told, StockOutlook::meanNow, 0.9) - quantile(told, StockOutlook::meanNow, 0.1);
    }

    private static double quantile(StockPosterior told, ToDoubleFunction<StockOutlook> of, double at) {
        return new SampleQuantile(told.outlooks().stream().mapToDouble(of).toArray()).at(at);
    }

    private record Truth(List<StockReading> readings, double mean) {}

    /** Readings to 0.1 g over eight weeks of a block of known figures, 115 g dry. */
    private static Truth truth(double start, double speed, double sorption) {
        StockBlock empty = StockBlocks.block(StockBlocks.walnut(), Sealed.NONE, List.of());
        BlockPiece piece = new BlockPiece(
                empty,
                StockBlocks.shelf(SHELF, 0.1),
                new StockInputs(input -> input == StockInput.DIFFUSIVITY
                        ? speed
                        : input == StockInput.SORPTION ? sorption : input.isEven() ? 0.5 : 0));
        BlockMoisture block = piece.uniform(start);
        List<StockReading> readings = new ArrayList<>();
        for (int day = 0; day <= 56; day++) {
            if (day % 14 == 0) {
                readings.add(StockBlocks.weighed(day, Math.round(1150 * (1 + block.meanFraction())) / 10.0));
            }
            if (day < 56) {
                piece.lie(block, SHELF, StockBlocks.CELSIUS, DAY);
            }
        }
        return new Truth(readings, block.meanFraction());
    }
}
