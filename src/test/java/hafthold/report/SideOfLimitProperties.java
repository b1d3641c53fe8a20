package hafthold.report;

import hafthold.quantity.Band;
import hafthold.quantity.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Assertions;

class SideOfLimitProperties {

    @Property
    void whatIsPrintedStandsOnTheSameSideOfTheLimitAsTheNumber(
            @ForAll @DoubleRange(min = 0, max = 0.5) double number,
            @ForAll @IntRange(min = 1, max = 50) int hundredths) {
        double limit = hundredths / 100.0;
        BigDecimal printed = BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
        Optional<BigDecimal> told = SideOfLimit.of(number, number > limit, BigDecimal.valueOf(limit), printed);
        if (told.isPresent()) {
            Assertions.assertEquals(number > limit, told.get().doubleValue() > limit);
            Assertions.assertTrue(Math.abs(told.get().doubleValue() - number) <= 0.05 + 1e-9);
        } else {
            Assertions.assertTrue(number > limit && number < limit + 1e-4);
        }
    }

    @Example
    void aMovementJustOverItsLimitDoesNotPrintAsEqualToIt() {
        Length limit = Length.ofMillimetres(0.2);
        BenchLength over = new BenchLength(new Band(0.15, 0.2034, 0.26).times(1e-3));
        Assertions.assertEquals("0.203\u00a0mm", over.beside(limit, BenchStyle.ENGLISH, true));
        Assertions.assertEquals("0.203\u00a0mm", over.beside(limit, BenchStyle.ENGLISH, false));
        Assertions.assertEquals(
                "just over 0.2\u00a0mm",
                new BenchLength(Band.exact(0.20000001e-3)).beside(limit, BenchStyle.ENGLISH, true));
        Assertions.assertEquals(
                "0.20\u00a0mm", new BenchLength(Band.exact(0.2e-3)).beside(limit, BenchStyle.ENGLISH, true));
    }

    @Example
    void aMovementWithinItsLimitDoesNotPrintAsMore() {
        BenchLength within = new BenchLength(new Band(0.45, 0.548, 0.65).times(1e-3));
        Assertions.assertEquals("0.5\u00a0mm", within.text(BenchStyle.ENGLISH));
        BenchLength rounded = new BenchLength(new Band(0.45, 0.552, 0.65).times(1e-3));
        Assertions.assertEquals("0.6\u00a0mm", rounded.text(BenchStyle.ENGLISH));
        Assertions.assertEquals("0.55\u00a0mm", rounded.beside(Length.ofMillimetres(0.56), BenchStyle.ENGLISH, false));
    }
}
