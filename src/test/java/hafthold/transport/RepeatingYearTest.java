package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RepeatingYearTest {
    private static final AirSeries AIR = RoughYear.hourly(3);

    static Stream<Slab> slabs() {
        return Stream.of(
                Rack.hardwood(8e-3, 0),
                Rack.hardwood(8e-3, 1e10),
                Rack.laminate(5e-13, 0.08, 1.3),
                Rack.laminate(1e-15, 0.05, 1.5),
                Rack.fibreLiner());
    }

    @ParameterizedTest
    @MethodSource("slabs")
    void theYearIsTheSameWhicheverMonthItIsBegunIn(Slab slab) {
        int shift = 5 * 730;
        PeriodicMoisture january = PeriodicMoisture.of(slab, AIR);
        PeriodicMoisture june = PeriodicMoisture.of(slab, RoughYear.begunLater(AIR, shift));
        assertTrue(january.repeats() && june.repeats());
        for (int i = 0; i < AIR.size(); i++) {
            int same = (i + shift) % AIR.size();
            assertEquals(january.history().meanFraction(same), june.history().meanFraction(i), 5e-5);
            assertEquals(january.history().backFraction(same), june.history().backFraction(i), 5e-5);
        }
    }

    /** A slab with a memory of two years, waited for during thirty. */
    @Test
    void theYearFoundIsTheOneThatPatienceFinds() {
        Slab slab = Rack.laminate(5e-13, 0.08, 1.3);
        PeriodicMoisture found = PeriodicMoisture.of(slab, AIR);
        SlabLayout layout = SlabLayout.of(slab, MeanAir.of(AIR), Resolution.STANDARD);
        BundleRun patient = new BundleRun(List.of(layout), new AirTrack(AIR, List.of(slab), Sheet.SATURATION));
        double[] moisture = new double[layout.points()];
        Arrays.fill(moisture, 0.03);
        patient.start(0, moisture, 0);
        patient.pass(0, 30 * AIR.size());
        moisture = patient.profile(0);
        assertEquals(moisture[0], found.history().backFraction(0), 2e-5);
        assertEquals(moisture[moisture.length - 1], found.history().surfaceFraction(0), 2e-5);
    }

    @Test
    void aSlabThatNeedsCenturiesIsFoundInTwoYearsOfWork() {
        PeriodicMoisture year = PeriodicMoisture.of(Rack.laminate(1e-15, 0.05, 1.5), AIR);
        assertTrue(year.repeats(), "within " + year.repeatsWithinFraction());
        assertTrue(year.spinUpYears() <= 2, "years " + year.spinUpYears());
    }

    @Test
    void aSlabThatForgetsInDaysIsLedInByWeeksOnly() {
        PeriodicMoisture year = PeriodicMoisture.of(Rack.fibreLiner(), AIR);
        assertTrue(year.repeats(), "within " + year.repeatsWithinFraction());
        assertTrue(year.spinUpYears() < 0.1, "years " + year.spinUpYears());
    }

    @Test
    void leapYearsAndDailyAirAreYearsToo() {
        AirSeries leap = RoughYear.hours(5, 8784);
        assertTrue(PeriodicMoisture.of(Rack.laminate(5e-13, 0.08, 1.3), leap).repeats());
        double[] temperature = new double[365];
        double[] humidity = new double[365];
        for (int day = 0; day < 365; day++) {
            temperature[day] = 20;
            humidity[day] = 0.5 + 0.2 * Math.sin(2 * Math.PI * day / 365);
        }
        PeriodicMoisture daily =
                PeriodicMoisture.of(Rack.hardwood(8e-3, 0), new AirSeries(86_400, temperature, humidity));
        assertTrue(daily.repeats());
        assertTrue(daily.history().waterBalanceResidual() < 1e-12);
    }
}
