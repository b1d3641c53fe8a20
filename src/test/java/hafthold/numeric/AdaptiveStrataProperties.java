package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

class AdaptiveStrataProperties {
    private static final int POINTS = 4000;

    /** Weighed back by the density, visits stand for the even distribution whatever was learnt. */
    @Property(tries = 30)
    void visitsWeighedBackAreEven(
            @ForAll @LongRange(min = 0, max = 1000) long seed,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double peak) {
        AdaptiveStrata strata = learnt(seed, peak);
        double sum = 0;
        double below = 0;
        for (int i = 0; i < POINTS; i++) {
            double coordinate = strata.coordinate(0, (i + 0.5) / POINTS);
            double weight = Math.exp(-strata.logDensity(0, coordinate)) / POINTS;
            assertTrue(coordinate >= 0 && coordinate <= 1);
            sum += weight;
            below += coordinate < 0.3 ? weight : 0;
        }
        assertEquals(1, sum, 0.02);
        assertEquals(0.3, below, 0.02);
    }

    @Property(tries = 30)
    void placesWithWeightAreVisitedMoreAndNoneIsForgotten(@ForAll @DoubleRange(min = 0.05, max = 0.95) double peak) {
        AdaptiveStrata strata = learnt(1, peak);
        assertTrue(strata.logDensity(0, peak) > 0);
        for (double place = 0; place <= 1; place += 0.1) {
            assertTrue(strata.logDensity(0, place) >= Math.log(0.25) - 1e-9);
        }
    }

    private static AdaptiveStrata learnt(long seed, double peak) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] at = random.doubles(POINTS).toArray();
        double[] logs = Arrays.stream(at)
                .map(place -> -(place - peak) * (place - peak) / 0.005)
                .toArray();
        return AdaptiveStrata.learnt(new double[][] {at}, new ImportanceWeights(logs));
    }
}
