package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Sheets in air that swings as a sine; sources and tolerances stand above the tables. */
class PeriodicAirTest {
    private static final int SAMPLES = 360;
    private static final double MIDDLE = 0.5;
    private static final double SWING = 0.4;
    private static final double TOLERANCE = 1e-3;
    private static final Resolution RESOLUTION = new Resolution(60, 0.02, 1e-5, 0.02, 0, 1);

    @ParameterizedTest
    @CsvFileSource(resources = "periodic-plate.csv", commentCharacter = '#', useHeadersInDisplayName = true)
    void aSheetFollowsASineOfTheAirLateAndDamped(
            double omega,
            double biot,
            double surface,
            double surfaceLag,
            double sealed,
            double sealedLag,
            double mean,
            double meanLag,
            double moment,
            double momentLag) {
        MoistureHistory year = sineYear(Sheet.withFilm(biot), omega);
        assertWave(surface, surfaceLag, year::surfaceFraction);
        assertWave(sealed, sealedLag, year::backFraction);
        assertWave(mean, meanLag, year::meanFraction);
        assertWave(moment, momentLag, year::firstMomentFraction);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "periodic-thick.csv", commentCharacter = '#', useHeadersInDisplayName = true)
    void aThickSheetFollowsASineOfTheAirAtItsSurface(double r, double surface, double surfaceLag) {
        double omega = 200;
        double biot = Math.sqrt(omega / 2) / r;
        assertWave(surface, surfaceLag, sineYear(Sheet.withFilm(biot), omega)::surfaceFraction);
    }

    @Test
    void airThatNeverChangesLeavesTheSheetAtRestWithIt() {
        PeriodicMoisture year = PeriodicMoisture.of(Sheet.withFilm(5), Sheet.constantAir(0.6, 3600, 48), 2);
        assertTrue(year.repeats());
        assertEquals(0.6 * Sheet.HENRY, year.history().meanFraction(17), 1e-12);
        assertEquals(0.6 * Sheet.HENRY, year.history().layerFraction(1, 17), 1e-12);
        assertEquals(0, year.history().firstMomentFraction(17), 1e-12);
    }

    private static MoistureHistory sineYear(Slab slab, double omega) {
        double period = 2 * Math.PI / omega * Sheet.UNIT_SECONDS;
        double[] temperature = new double[SAMPLES];
        double[] humidity = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            temperature[i] = Sheet.CELSIUS;
            humidity[i] = MIDDLE + SWING * Math.cos(2 * Math.PI * i / SAMPLES);
        }
        PeriodicMoisture year = PeriodicMoisture.of(
                slab, new AirSeries(period / SAMPLES, temperature, humidity), 0, Sheet.SATURATION, RESOLUTION);
        assertTrue(year.repeats(), "repeats within " + year.repeatsWithinFraction());
        return year.history();
    }

    /** Compares first Fourier coefficients, so that a lag counts only as much as its wave is high. */
    private static void assertWave(double amplitude, double lag, IntToDoubleFunction moisture) {
        double cosine = 0;
        double sine = 0;
        for (int i = 0; i < SAMPLES; i++) {
            double angle = 2 * Math.PI * i / SAMPLES;
            double share = moisture.applyAsDouble(i) / (Sheet.HENRY * SWING);
            cosine += 2.0 / SAMPLES * share * Math.cos(angle);
            sine += 2.0 / SAMPLES * share * Math.sin(angle);
        }
        assertEquals(amplitude * Math.cos(lag), cosine, TOLERANCE);
        assertEquals(amplitude * Math.sin(lag), sine, TOLERANCE);
    }
}
