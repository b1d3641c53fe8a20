package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;

/** Quantiles against another program's: Commons Math, estimation type R_5, which is definition 5 too. */
class SampleQuantileProperties {

    @Property(tries = 200)
    void agreesWithCommonsMath(
            @ForAll @Size(min = 1, max = 120) List<@DoubleRange(min = -1e3, max = 1e3) Double> values,
            @ForAll @IntRange(min = 1, max = 100) int percent) {
        double[] sample = values.stream().mapToDouble(Double::doubleValue).toArray();
        double expected =
                new Percentile().withEstimationType(EstimationType.R_5).evaluate(sample, percent);
        assertEquals(expected, new SampleQuantile(sample).at(percent / 100.0), 1e-8);
    }

    @Property(tries = 50)
    void risesWithTheProbability(@ForAll @Size(min = 1, max = 50) List<@DoubleRange(min = -1, max = 1) Double> values) {
        SampleQuantile quantile = new SampleQuantile(
                values.stream().mapToDouble(Double::doubleValue).toArray());
        assertTrue(quantile.at(0) <= quantile.at(0.1));
        assertTrue(quantile.at(0.1) <= quantile.at(0.5));
        assertTrue(quantile.at(0.5) <= quantile.at(1));
    }
}
