package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.air.StraightAir;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Leaving out samples that lie on straight lines must not show. */
class StraightAirTest {
    private static final int HOURS = 8760;
    private static final double DAY_SECONDS = 86_400;
    private static final double STRAY = Resolution.STANDARD.airStrayFraction();

    static Stream<Slab> slabs() {
        return Stream.of(Rack.hardwood(4e-3, 0), Rack.hardwood(8e-3, 0), Rack.fibreLiner());
    }

    @ParameterizedTest
    @MethodSource("slabs")
    void aBufferedRoomIsPassedInLongStepsAsFaithfullyAsInShortOnes(Slab slab) {
        AirSeries room = room(0);
        MoistureHistory quick = PeriodicMoisture.of(slab, room).history();
        MoistureHistory converged = PeriodicMoisture.of(slab, room, 0, Sheet.SATURATION, Resolution.CONVERGED)
                .history();
        assertTrue(quick.steps() < HOURS / 3, "steps " + quick.steps());
        assertEquals(HOURS, quick.size());
        assertEquals(3600, quick.stepSeconds());
        for (int i = 0; i < HOURS; i++) {
            assertEquals(converged.meanFraction(i), quick.meanFraction(i), 1e-4);
            assertEquals(converged.surfaceFraction(i), quick.surfaceFraction(i), 1e-3);
            assertEquals(converged.firstMomentFraction(i), quick.firstMomentFraction(i), 1e-3);
        }
    }

    /** Seasons alone: 40 hours a step at the standard resolution, five days for years that samples are read from. */
    @ParameterizedTest
    @MethodSource("slabs")
    void seasonsArePassedInStepsOfDays(Slab slab) {
        AirSeries seasons = seasons();
        MoistureHistory converged = PeriodicMoisture.of(slab, seasons, 0, Sheet.SATURATION, Resolution.CONVERGED)
                .history();
        MoistureHistory standard = PeriodicMoisture.of(slab, seasons).history();
        MoistureHistory sampled = PeriodicMoisture.of(slab, seasons, 0, Sheet.SATURATION, Resolution.SAMPLED)
                .history();
        assertTrue(standard.steps() <= HOURS / 36, "standard " + standard.steps());
        assertTrue(sampled.steps() <= HOURS / 100, "sampled " + sampled.steps());
        for (int i = 0; i < HOURS; i++) {
            assertEquals(converged.meanFraction(i), standard.meanFraction(i), 1e-4);
            assertEquals(converged.meanFraction(i), sampled.meanFraction(i), 5e-4);
            assertEquals(converged.firstMomentFraction(i), sampled.firstMomentFraction(i), 1e-3);
        }
    }

    /** Days keep a whole number of samples, whatever the air would bear. */
    @Test
    void daysAreNotCutInPieces() {
        AirSeries seasons = seasons();
        assertEquals(120, StraightAir.stride(seasons, STRAY, 5 * DAY_SECONDS));
        assertEquals(24, StraightAir.strideWithinDays(seasons, STRAY));
        for (int hours = 1; hours < HOURS; hours++) {
            AirSeries swaying = swaying(hours);
            assertEquals(0, 24 % StraightAir.strideWithinDays(swaying, STRAY), "period " + hours);
            hours = Math.max(hours, (int) (1.2 * hours));
        }
    }

    @Test
    void airThatSwingsByTheHourIsKeptWhole() {
        AirSeries rough = RoughYear.hourly(1);
        assertEquals(1, StraightAir.stride(rough, STRAY, DAY_SECONDS));
        assertSame(rough, StraightAir.thinned(rough, 1));
    }

    @Test
    void oneSampleOffTheLineIsEnoughToKeepThemAll() {
        assertTrue(StraightAir.stride(room(0), STRAY, DAY_SECONDS) >= 4);
        assertEquals(1, StraightAir.stride(room(0.01), STRAY, DAY_SECONDS));
    }

    private static AirSeries seasons() {
        return swaying(HOURS);
    }

    /** A sway of a period, about 8760/n hours for the nearest n. */
    private static AirSeries swaying(int hours) {
        double[] temperature = new double[HOURS];
        double[] humidity = new double[HOURS];
        int rounds = HOURS / hours;
        for (int i = 0; i < HOURS; i++) {
            double turn = 2 * Math.PI * rounds * i / HOURS;
            temperature[i] = 21 - 1.5 * Math.cos(turn);
            humidity[i] = 0.42 - 0.15 * Math.cos(turn);
        }
        return new AirSeries(3600, temperature, humidity);
    }

    /** A heated room: seasons, and weather that comes through the walls over days; one hour may be off. */
    private static AirSeries room(double offAtNoonInMay) {
        double[] temperature = new double[HOURS];
        double[] humidity = new double[HOURS];
        for (int i = 0; i < HOURS; i++) {
            double year = 2 * Math.PI * i / HOURS;
            temperature[i] = 21 - 1.5 * Math.cos(year);
            humidity[i] = 0.42 - 0.15 * Math.cos(year) + 0.05 * Math.sin(52 * year) + 0.02 * Math.sin(121 * year);
        }
        humidity[3037] += offAtNoonInMay;
        return new AirSeries(3600, temperature, humidity);
    }
}
