package hafthold.report.chart;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class SpanProperties {

    @Property
    void holdsBothValuesOnRoundEndsWithAHandfulOfTicks(
            @ForAll @DoubleRange(min = -200, max = 200) double a,
            @ForAll @DoubleRange(min = -200, max = 200) double b) {
        Span span = Span.covering(Math.min(a, b), Math.max(a, b), 6);
        double slack = 1e-6 * span.step().doubleValue();
        assertTrue(span.lowest() <= Math.min(a, b) + slack && span.highest() >= Math.max(a, b) - slack);
        List<BigDecimal> ticks = span.ticks();
        assertTrue(ticks.size() >= 2 && ticks.size() <= 9, ticks.toString());
        assertTrue(ticks.get(ticks.size() - 1).compareTo(span.high()) == 0);
        String digit = span.step().stripTrailingZeros().unscaledValue().toString();
        assertTrue(List.of("1", "2", "5").contains(digit), digit);
    }

    @Property
    void setsLabelsApartInTheOrderOfWhatTheyName(
            @ForAll @Size(min = 1, max = 5) double @net.jqwik.api.constraints.NotEmpty [] raw) {
        double[] wanted = Arrays.stream(raw)
                .map(value -> Double.isFinite(value) ? Math.abs(value % 300) : 0)
                .toArray();
        double[] heights = DoubleStream.generate(() -> 30).limit(wanted.length).toArray();
        double[] centres = LabelSpread.apart(wanted, heights, 0, 300);
        for (int i = 0; i < wanted.length; i++) {
            assertTrue(centres[i] >= 15 - 1e-9 && centres[i] <= 285 + 1e-9);
            for (int j = 0; j < wanted.length; j++) {
                if (i != j) {
                    assertTrue(Math.abs(centres[i] - centres[j]) >= 30 - 1e-9);
                    assertTrue(wanted[i] >= wanted[j] || centres[i] < centres[j]);
                }
            }
        }
    }
}
