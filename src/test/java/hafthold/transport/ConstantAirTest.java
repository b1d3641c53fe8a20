package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.air.AirSeries;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Sheets whose air steps once, after Crank, The mathematics of diffusion, 2nd edition (1975). Sources and tolerances stand
 * above the tables.
 */
class ConstantAirTest {
    private static final double UPTAKE_TOLERANCE = 1e-4;
    private static final double EXPONENTIAL_TOLERANCE = 3e-4;

    @Test
    void aSheetWithoutFilmTakesUpWaterAsTheSeriesSays() {
        BenchTable table = BenchTable.read("step-uptake.csv");
        double step = 0.0005;
        MoistureHistory history =
                transientOf(Sheet.withFilm(Sheet.NO_FILM), 0, Sheet.constantAir(1, step * Sheet.UNIT_SECONDS, 6001));
        assertAll(IntStream.range(0, table.size()).mapToObj(row -> () -> {
            int sample = sample(table.number(row, "fourier_number"), step);
            assertShare(table.number(row, "uptake"), history.meanFraction(sample), UPTAKE_TOLERANCE);
            assertShare(table.number(row, "first_moment"), history.firstMomentFraction(sample), UPTAKE_TOLERANCE);
            assertShare(table.number(row, "c_0"), history.backFraction(sample), UPTAKE_TOLERANCE);
        }));
    }

    @ParameterizedTest
    @CsvSource({"0.25, c_0_25", "0.5, c_0_5", "0.75, c_0_75", "0.9, c_0_9"})
    void theProfileInASheetWithoutFilmIsThatOfTheSeries(double place, String column) {
        BenchTable table = BenchTable.read("step-uptake.csv");
        AirSeries air = Sheet.constantAir(1, 0.0005 * Sheet.UNIT_SECONDS, 6001);
        Slab slab = Sheet.withFilm(Sheet.NO_FILM);
        SlabLayout layout = SlabLayout.of(slab, MeanAir.of(air), Sheet.FINE);
        BundleRun run = new BundleRun(List.of(layout), new AirTrack(air, List.of(slab), Sheet.SATURATION));
        double width = 2e-3;
        double[] weight =
                layout.grid().meanWeights((place - width) * Sheet.THICKNESS, (place + width) * Sheet.THICKNESS);
        run.start(0, new double[layout.points()], 0);
        int sample = 0;
        for (int row = 0; row < table.size(); row++) {
            int next = sample(table.number(row, "fourier_number"), 0.0005);
            run.pass(sample, next);
            sample = next;
            double value = 0;
            double[] moisture = run.profile(0);
            for (int i = 0; i < weight.length; i++) {
                value += weight[i] * moisture[i];
            }
            assertShare(table.number(row, column), value, 3e-4);
        }
    }

    static List<String> films() {
        return BenchTable.read("film-uptake.csv").distinct("biot");
    }

    @ParameterizedTest
    @MethodSource("films")
    void aSheetBehindAFilmTakesUpWaterAsTheSeriesSays(String biot) {
        BenchTable table = BenchTable.read("film-uptake.csv").where("biot", biot);
        double step = 0.01;
        MoistureHistory history = transientOf(
                Sheet.withFilm(Double.parseDouble(biot)), 0, Sheet.constantAir(1, step * Sheet.UNIT_SECONDS, 1001));
        assertAll(IntStream.range(0, table.size()).mapToObj(row -> () -> {
            int sample = sample(table.number(row, "fourier_number"), step);
            assertShare(table.number(row, "uptake"), history.meanFraction(sample), UPTAKE_TOLERANCE);
            assertShare(table.number(row, "c_surface"), history.surfaceFraction(sample), UPTAKE_TOLERANCE);
            assertShare(table.number(row, "c_sealed"), history.backFraction(sample), UPTAKE_TOLERANCE);
            assertShare(table.number(row, "first_moment"), history.firstMomentFraction(sample), UPTAKE_TOLERANCE);
        }));
    }

    @ParameterizedTest
    @CsvSource({
        "1, sorption",
        "1, desorption",
        "2.30259, sorption",
        "2.30259, desorption",
        "3, sorption",
        "3, desorption"
    })
    void diffusivityThatRisesWithMoistureSpeedsUptakeMoreThanDrying(String exponent, String direction) {
        BenchTable table = BenchTable.read("exponential-uptake.csv")
                .where("exponent", exponent)
                .where("direction", direction);
        double step = 0.0005;
        boolean wetting = direction.equals("sorption");
        MoistureHistory history = exponentialStep(Double.parseDouble(exponent), wetting, step, 3001);
        assertAll(IntStream.range(0, table.size()).mapToObj(row -> () -> {
            int sample = sample(table.number(row, "fourier_number"), step);
            assertEquals(table.number(row, "uptake"), share(history, sample, wetting), EXPONENTIAL_TOLERANCE);
        }));
    }

    @ParameterizedTest
    @CsvSource({
        "1, sorption",
        "1, desorption",
        "2.30259, sorption",
        "2.30259, desorption",
        "3, sorption",
        "3, desorption"
    })
    void theEarlySlopeShowsTheWeightedMeanDiffusivity(String exponent, String direction) {
        BenchTable table = BenchTable.read("exponential-slope.csv")
                .where("exponent", exponent)
                .where("direction", direction);
        boolean wetting = direction.equals("sorption");
        double step = 1e-4;
        int sample = 50;
        MoistureHistory history = exponentialStep(Double.parseDouble(exponent), wetting, step, sample + 1);
        double slope = share(history, sample, wetting) / Math.sqrt(step * sample);
        assertEquals(1, slope / table.number(0, "slope"), 2e-3);
        double slopeOfMean = 2 * Math.sqrt(table.number(0, "weighted_mean") / Math.PI);
        assertEquals(1, slope / slopeOfMean, 5e-3);
    }

    private static MoistureHistory exponentialStep(double exponent, boolean wetting, double step, int samples) {
        Slab slab = Sheet.of(Sheet.NO_FILM, exponent / Sheet.HENRY);
        AirSeries air = Sheet.constantAir(wetting ? 1 : 0, step * Sheet.UNIT_SECONDS, samples);
        return transientOf(slab, wetting ? 0 : Sheet.HENRY, air);
    }

    private static double share(MoistureHistory history, int sample, boolean wetting) {
        double mean = history.meanFraction(sample) / Sheet.HENRY;
        return wetting ? mean : 1 - mean;
    }

    private static MoistureHistory transientOf(Slab slab, double start, AirSeries air) {
        return TransientMoisture.from(slab, new double[] {start}, air, 0, Sheet.SATURATION, Sheet.FINE);
    }

    private static int sample(double fourierNumber, double step) {
        return (int) Math.round(fourierNumber / step);
    }

    private static void assertShare(double expected, double moisture, double tolerance) {
        assertEquals(expected, moisture / Sheet.HENRY, tolerance);
    }
}
