package hafthold.transport.coupled;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import hafthold.numeric.GradedGrid;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Moisture taken up and given back by a thick body whose air is damp for 8 h and dry for 16 h of each day:
 *
 * <pre>
 * G = b_m dp h(a) sqrt(t_p/pi),   h(a) = 2/pi sum sin^2(n pi a)/n^(3/2),   b_m = sqrt(delta dw/dp),   h(1/3) = 1.007
 * </pre>
 *
 * <p>Closed form of the ideal moisture buffer value: Rode and others 2005, Moisture buffering of building materials, a
 * NORDTEST report; cited from memory, worked out again from the Fourier series of a square wave. Tolerance 0.5 %, ours.
 */
class MoistureBufferTest {
    private static final double CELSIUS = 23;
    private static final double DAY = 86_400;
    private static final double DAMP = 0.75;
    private static final double DRY = 0.33;
    private static final double PERMEABILITY = 2e-11;
    private static final double WATER_PER_HUMIDITY = 60;

    @Test
    void aDayTakesUpTheIdealBufferValue() {
        SaturationPressure saturation = new HylandWexlerSaturationPressure();
        double saturated = saturation.pascals(CELSIUS);
        PorousMaterial material = new PorousMaterial(
                new StraightStorage(),
                (w, t) -> PERMEABILITY,
                LiquidConductivity.NONE,
                WaterDiffusivity.NONE,
                (w, t) -> 1,
                new HeatCapacity(1e6, 0));
        int days = 12;
        OpenFace face = new OpenFace(1e5, 1e6, Surroundings.of(air(days), saturation));
        CoupledSlab slab = new CoupledSlab(material, SealedFace.BARE, face, saturation, 0, Sources.NONE);
        double mean = DRY + (DAMP - DRY) / 3;
        CoupledProfile start = CoupledProfile.even(GradedGrid.of(0.25, 100, 5e-5), WATER_PER_HUMIDITY * mean, CELSIUS);
        double dampBegins = (days - 1) * DAY;
        CoupledHistory history =
                CoupledSolution.through(slab, start, new Accuracy(0.01, 0.1), dampBegins, dampBegins + DAY / 3);
        double taken = 0.25
                * (history.last().meanWaterKilogramsPerCubicMetre()
                        - history.profiles().get(0).meanWaterKilogramsPerCubicMetre());
        double effusivity = Math.sqrt(PERMEABILITY * WATER_PER_HUMIDITY / saturated);
        double ideal = effusivity * (DAMP - DRY) * saturated * shape(1 / 3.0) * Math.sqrt(DAY / Math.PI);
        assertEquals(1.007, shape(1 / 3.0), 5e-4);
        assertEquals(ideal, taken, 0.005 * ideal);
    }

    private static double shape(double share) {
        double sum = 0;
        for (int n = 1; n <= 2_000_000; n++) {
            double sine = Math.sin(n * Math.PI * share);
            sum += sine * sine / (n * Math.sqrt(n));
        }
        return 2 / Math.PI * sum;
    }

    /** Damp in the first third of each day; changes take a minute. */
    private static AirSeries air(int days) {
        int minutesADay = 1440;
        double[] humidity = new double[days * minutesADay + 1];
        Arrays.setAll(humidity, i -> i % minutesADay > 0 && i % minutesADay <= minutesADay / 3 ? DAMP : DRY);
        double[] temperature = new double[humidity.length];
        Arrays.fill(temperature, CELSIUS);
        return new AirSeries(60, temperature, humidity);
    }

    private record StraightStorage() implements MoistureStorage {
        @Override
        public double relativeHumidityFraction(double w, double t) {
            return w / WATER_PER_HUMIDITY;
        }

        @Override
        public double waterKilogramsPerCubicMetre(double humidity, double t) {
            return WATER_PER_HUMIDITY * humidity;
        }
    }
}
