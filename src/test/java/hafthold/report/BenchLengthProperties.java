package hafthold.report;

import hafthold.quantity.Band;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Assertions;

class BenchLengthProperties {

    @Property
    void printedEndsEncloseThePrintedValueAndLieWithinAQuarterOfTheLastDigitOfTheBand(
            @ForAll @DoubleRange(min = 0, max = 5) double a,
            @ForAll @DoubleRange(min = 0, max = 5) double b,
            @ForAll @DoubleRange(min = 0, max = 5) double c) {
        double[] millimetres = {a, b, c};
        Arrays.sort(millimetres);
        BenchLength length =
                new BenchLength(new Band(millimetres[0] / 1000, millimetres[1] / 1000, millimetres[2] / 1000));
        if (length.range(BenchStyle.ENGLISH).isEmpty()) {
            return;
        }
        List<String> ends = List.of(length.range(BenchStyle.ENGLISH).split("–", -1));
        BigDecimal value = length.millimetres();
        BigDecimal low = new BigDecimal(ends.get(0));
        BigDecimal high = new BigDecimal(ends.get(1));
        Assertions.assertTrue(low.compareTo(value) <= 0 && value.compareTo(high) <= 0);
        double quarter = Math.max(0.005, Math.pow(10, -value.scale()) / 4) + 1e-6;
        Assertions.assertTrue(low.doubleValue() <= millimetres[0] + quarter);
        Assertions.assertTrue(high.doubleValue() >= millimetres[2] - quarter);
    }

    @Property
    void printedValueIsOffByNoMoreThanTheWiderHalfOfTheBandOrHalfTheFinestDigit(
            @ForAll @DoubleRange(min = 0, max = 5) double value,
            @ForAll @DoubleRange(min = 0, max = 2) double halfWidth) {
        BenchLength length = new BenchLength(
                new Band(Math.max(0, value - halfWidth) / 1000, value / 1000, (value + halfWidth) / 1000));
        double printed = length.millimetres().doubleValue();
        Assertions.assertTrue(Math.abs(printed - value) <= Math.max(0.005, halfWidth) + 1e-6);
    }
}
