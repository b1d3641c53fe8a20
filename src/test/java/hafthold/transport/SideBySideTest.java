package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.material.GuggenheimAndersonDeBoerIsotherm;
import hafthold.material.MoistureDiffusivity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Slabs that go through the year side by side must not feel each other, to the last bit. */
class SideBySideTest {
    private static final AirSeries AIR = air();

    /** Quarter of the samples of a rough year, with a day of rain and one of drought: some slabs are halved, some not. */
    private static AirSeries air() {
        AirSeries hours = RoughYear.hourly(3);
        double[] temperature = new double[2190];
        double[] humidity = new double[2190];
        for (int i = 0; i < temperature.length; i++) {
            temperature[i] = hours.temperatureCelsius(4 * i);
            humidity[i] = i == 700 ? 1 : i == 1200 ? 0 : hours.relativeHumidityFraction(4 * i);
        }
        return new AirSeries(4 * 3600, temperature, humidity);
    }

    private static List<Slab> slabs() {
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < 45; i++) {
            slabs.add(Rack.hardwood(2e-3 + 2e-4 * i, i % 3 * 1e9));
            slabs.add(Rack.laminate(1e-14 * Math.pow(1.25, i), 0.08, 1.3));
        }
        slabs.add(Rack.fibreLiner());
        slabs.add(new Slab(
                3e-3,
                900,
                new GuggenheimAndersonDeBoerIsotherm(0.06, 12, 0.8),
                new MoistureDiffusivity(3e-12, 5, 20_000, 20),
                6e7));
        return slabs;
    }

    @Test
    void aSlabAmongManyIsTheSlabAloneToTheLastBit() {
        List<Slab> slabs = slabs();
        List<PeriodicMoisture> together = PeriodicMoisture.ofAll(slabs, AIR, 3);
        for (int i = 0; i < slabs.size(); i += 7) {
            assertSame(PeriodicMoisture.of(slabs.get(i), AIR, 3), together.get(i));
        }
    }

    @Test
    void theCompanyASlabIsInDoesNotShow() {
        List<Slab> slabs = slabs();
        List<PeriodicMoisture> together = PeriodicMoisture.ofAll(slabs, AIR, 3);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            order.add(i);
        }
        Collections.shuffle(order, new Random(1));
        List<PeriodicMoisture> shuffled =
                PeriodicMoisture.ofAll(order.stream().map(slabs::get).toList(), AIR, 3);
        for (int i = 0; i < order.size(); i++) {
            assertSame(together.get(order.get(i)), shuffled.get(i));
        }
    }

    private static void assertSame(PeriodicMoisture expected, PeriodicMoisture actual) {
        assertTrue(actual.repeats());
        assertEquals(expected.repeatsWithinFraction(), actual.repeatsWithinFraction());
        assertEquals(expected.spinUpYears(), actual.spinUpYears());
        assertEquals(expected.history().steps(), actual.history().steps());
        for (int sample = 0; sample < AIR.size(); sample++) {
            MoistureHistory one = expected.history();
            MoistureHistory other = actual.history();
            assertEquals(one.meanFraction(sample), other.meanFraction(sample));
            assertEquals(one.surfaceFraction(sample), other.surfaceFraction(sample));
            assertEquals(one.firstMomentFraction(sample), other.firstMomentFraction(sample));
            assertEquals(one.layerFraction(1, sample), other.layerFraction(1, sample));
        }
    }
}
