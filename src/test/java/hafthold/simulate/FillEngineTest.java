package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.FillTrial;
import hafthold.knife.FillTrial.Soak;
import hafthold.knife.StockBlock.Sealed;
import hafthold.material.FillScale;
import hafthold.material.HalpinTsaiFilling;
import hafthold.material.Material;
import hafthold.quantity.Mass;
import hafthold.table.FillTable;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FillEngineTest {
    private static final FillScale SCALE = FillTable.read(StockBlocks.LIBRARY);
    private static final double VOLUME = 150e-3 * 45e-3 * 32e-3;

    /**
     * Published weight gains of one study (ktu-1996 of sources.csv): beech 15 %, poplar 64 %. By cell wall of 1500 and
     * resin of 1180 kg/m3 (Wood Handbook, from memory; acrylic) that is 12 % and 28 % of the lumens.
     */
    @ParameterizedTest
    @CsvSource({"beech-european, 585, 0.15, 0.12", "hardwood-light, 350, 0.64, 0.28"})
    void weightGainTellsHowMuchIsFilled(String id, double density, double gain, double filled) {
        double before = density * VOLUME;
        FillPosterior told =
                told(id, Optional.of(before), Optional.of(before * (1 + gain)), Optional.empty(), Optional.empty());
        assertEquals(filled, told.filledFraction().value(), 0.06);
        double byHand = gain * density / (HalpinTsaiFilling.lumenFraction(density) * 1180);
        assertEquals(byHand, told.filledFraction().value(), 0.06);
    }

    @Test
    void aFullLoadIsThroughAndAQuarterIsNot() {
        double before = 540 * VOLUME;
        FillPosterior full = gained(before, 0.92);
        assertEquals(FillGrade.THROUGH, full.likeliest());
        assertTrue(full.chance() > 0.8, full.chances().toString());
        FillPosterior none = gained(before, 0.05);
        assertEquals(FillGrade.LIGHT, none.likeliest());
        assertTrue(none.chance() > 0.9, none.chances().toString());
    }

    /** Weight does not tell where the resin is; a piece from the middle does. */
    @Test
    void halfALoadCannotBeToldUntilTheMiddleIsLookedAt() {
        double before = 540 * VOLUME;
        FillPosterior half = gained(before, 0.6);
        assertTrue(half.chance() < 0.8, half.chances().toString());
        double after = before + 0.6 * HalpinTsaiFilling.lumenFraction(540) * 1180 * VOLUME;
        FillPosterior open =
                told("walnut-black", Optional.of(before), Optional.of(after), Optional.of(true), Optional.empty());
        FillPosterior sound =
                told("walnut-black", Optional.of(before), Optional.of(after), Optional.of(false), Optional.empty());
        assertTrue(open.chances().get(FillGrade.CORE_OPEN) > half.chances().get(FillGrade.CORE_OPEN));
        assertTrue(sound.chances().get(FillGrade.CORE_OPEN) < half.chances().get(FillGrade.CORE_OPEN));
    }

    @Test
    void whatDrinksLikePlainWoodIsNotFilled() {
        double weight = 560 * VOLUME;
        FillPosterior thirsty = told(
                "walnut-black",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Soak(new Mass(weight), new Mass(weight + 0.05), 86_400)));
        FillPosterior tight = told(
                "walnut-black",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Soak(new Mass(weight), new Mass(weight + 0.002), 86_400)));
        assertTrue(thirsty.filledFraction().value() < tight.filledFraction().value());
        assertTrue(thirsty.soakRatio().orElseThrow() > tight.soakRatio().orElseThrow());
    }

    @Test
    void figuresThatCannotBeAreSeen() {
        double before = 540 * VOLUME;
        FillPosterior odd = told(
                "walnut-black", Optional.of(before), Optional.of(2.9 * before), Optional.empty(), Optional.empty());
        assertTrue(odd.misfit() > 3, "misfit " + odd.misfit());
    }

    private static FillPosterior gained(double before, double share) {
        return told(
                "walnut-black",
                Optional.of(before),
                Optional.of(before + share * HalpinTsaiFilling.lumenFraction(540) * 1180 * VOLUME),
                Optional.empty(),
                Optional.empty());
    }

    private static FillPosterior told(
            String id, Optional<Double> before, Optional<Double> after, Optional<Boolean> middle, Optional<Soak> soak) {
        Material wood = StockBlocks.LIBRARY.plain(id);
        FillTrial test = new FillTrial(before.map(Mass::new), after.map(Mass::new), Optional.empty(), middle, soak);
        return new FillEngine(
                        StockBlocks.block(
                                wood, Sealed.NONE, StockBlocks.size(150, 45, 32), List.of(), Optional.of(test)),
                        SCALE)
                .posterior(1);
    }
}
