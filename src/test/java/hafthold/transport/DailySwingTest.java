package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.air.AirSeries;
import hafthold.material.WaterUptake;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What bare wood as thick as a scale takes up and gives back each day, 8 h at 75 % and 16 h at 33 % relative humidity and
 * 23 °C, per percent of humidity and area: the practical moisture buffer value of Rode and others 2005, Moisture buffering of
 * building materials, a NORDTEST report. Its laboratories found about 1.15 g/(m2 %) for boards of spruce and 0.9 (0.6 to 1.0)
 * for panels of birch; both cited from memory.
 *
 * <p>The tables' diffusivity gives 1.06 and 1.20; half of it, as boards in a stack dry, 0.77 and 0.88. So spruce follows at
 * the tables' speed and birch at about half of it: the tables err on the quick side, which overstates what a room does to a
 * scale. The bounds are ours; at twice the speed both fail, at half of it spruce does.
 */
class DailySwingTest {
    private static final double CELSIUS = 23;
    private static final double DAMP = 0.75;
    private static final double DRY = 0.33;
    private static final int MINUTES_A_DAY = 24 * 60;
    private static final int DAYS = 40;

    @ParameterizedTest
    @CsvSource({"spruce, 22, 1.15, 0.15", "birch-silver, 22, 0.9, 0.35"})
    void woodTakesUpInADayWhatLaboratoriesWeighed(
            String wood, double millimetres, double gramsPerSquareMetrePercent, double tolerance) {
        double computed = bufferValue(wood, millimetres / 1000);
        assertEquals(gramsPerSquareMetrePercent, computed, tolerance * gramsPerSquareMetrePercent);
    }

    private static double bufferValue(String wood, double thickness) {
        WaterUptake water =
                MaterialLibrary.read(TableSet.builtIn()).plain(wood).water().orElseThrow();
        double density = water.dryDensity().value();
        Slab slab = new Slab(
                thickness,
                density,
                water.isotherm(),
                water.diffusivity(),
                StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM);
        MoistureHistory history =
                TransientMoisture.from(slab, water.isotherm().moistureFraction(0.45, CELSIUS), dailyAir());
        int morning = (DAYS - 1) * MINUTES_A_DAY;
        int noon = morning + MINUTES_A_DAY / 3;
        double rise = history.meanFraction(noon) - history.meanFraction(morning);
        double fall = history.meanFraction(noon) - history.meanFraction(morning + MINUTES_A_DAY);
        return 1000 * density * thickness * (rise + fall) / 2 / (100 * (DAMP - DRY));
    }

    /** Damp in the first third of each day; changes take a minute. */
    private static AirSeries dailyAir() {
        double[] humidity = new double[DAYS * MINUTES_A_DAY + 1];
        Arrays.setAll(humidity, i -> i % MINUTES_A_DAY > 0 && i % MINUTES_A_DAY <= MINUTES_A_DAY / 3 ? DAMP : DRY);
        double[] temperature = new double[humidity.length];
        Arrays.fill(temperature, CELSIUS);
        return new AirSeries(60, temperature, humidity);
    }
}
