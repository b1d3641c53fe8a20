package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.air.Outdoors;
import hafthold.knife.Handle;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import hafthold.transport.MoistureHistory;
import hafthold.transport.TransientMoisture;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The forecast from one mode against the solver's own course after a step of the air. */
class SettlingTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final int SAMPLES = 4001;

    /**
     * An equal start leaves 8/pi^2 = 0.81 of the change to the slowest mode of a sheet without film and all of it to
     * that of one behind a heavy film, so that 1 - 0.81/e = 0.70 or 0.63 has come after one folding time and 0.96 or
     * 0.95 after three. D that changes with moisture adds a tenth.
     */
    @ParameterizedTest
    @CsvSource({
        "walnut-black, FLAT, bare, 0.5, 0.6",
        "teak, QUARTER, bare, 0.6, 0.5",
        "linen-phenolic-le, NONE, bare, 0.5, 0.7"
    })
    void comesAsFarAsItSaysInTheSolversOwnCourse(String id, Cut cut, String finish, double from, double to) {
        Conditions order = order(finish, to);
        Material material = LIBRARY.plain(id);
        Settling settling = Settling.of(order, material, cut).orElseThrow();
        double seconds = settling.foldingDays().value() * 86_400;
        double start = material.water().orElseThrow().isotherm().moistureFraction(from, 20);
        double end = material.water().orElseThrow().isotherm().moistureFraction(to, 20);
        MoistureHistory course = TransientMoisture.from(
                PartSlab.scale(material, cut, order.handle(), order.finish(), Doubt.NONE)
                        .orElseThrow(),
                new double[] {start},
                steady(3 * seconds / (SAMPLES - 1), SAMPLES, to),
                0);
        assertEquals(0.665, (course.meanFraction((SAMPLES - 1) / 3) - start) / (end - start), 0.1);
        assertEquals(0.955, (course.meanFraction(SAMPLES - 1) - start) / (end - start), 0.03);
    }

    @Test
    void aFinishMakesItLater() {
        double bare = days(order("bare", 0.5));
        FinishTable.read(TABLES).all().stream()
                .filter(finish -> finish.resistance().value() > 0)
                .forEach(finish -> assertTrue(days(order(finish.id(), 0.5)) > bare, finish.id()));
    }

    /** Behind a tight film the film alone counts, and how tight it may be says how long: 18, 54 and 81 in the table. */
    @Test
    void behindATightFinishTheBandIsThatOfTheFinish() {
        Settling coated = Settling.of(order("epoxy-clear", 0.5), LIBRARY.find("walnut-black"), Cut.FLAT)
                .orElseThrow();
        assertEquals(18.0 / 54, coated.showsDays().low() / coated.showsDays().value(), 0.05);
        assertEquals(81.0 / 54, coated.showsDays().high() / coated.showsDays().value(), 0.05);
    }

    @Test
    void whatTakesUpNoWaterHasNone() {
        assertEquals(Optional.empty(), Settling.of(order("bare", 0.5), LIBRARY.find("meteorite-iron"), Cut.NONE));
    }

    @Test
    void nobodySandsItBeforeItsUsualRestNorWaitsLongerThanAYearForTheSlowestWater() {
        assertEquals(60, settling(5, 10, 20).sandDays(), 1e-9);
        assertEquals(365, settling(5, 10, 200).sandDays(), 1e-9);
        assertEquals(600, settling(5, 200, 900).sandDays(), 1e-9);
    }

    private static Settling settling(double low, double value, double high) {
        return new Settling(new hafthold.quantity.Band(low, value, high));
    }

    private static double days(Conditions order) {
        return Settling.of(order, LIBRARY.find("walnut-black"), Cut.FLAT)
                .orElseThrow()
                .foldingDays()
                .value();
    }

    private static AirSeries steady(double step, int samples, double humidity) {
        double[] temperature = new double[samples];
        double[] relative = new double[samples];
        Arrays.fill(temperature, 20);
        Arrays.fill(relative, humidity);
        return new AirSeries(step, temperature, relative);
    }

    private static Conditions order(String finish, double humidity) {
        return new Conditions(
                new Handle(
                        Length.ofMillimetres(110),
                        Length.ofMillimetres(26),
                        Length.ofMillimetres(8),
                        Length.ofMillimetres(6),
                        Length.ofMillimetres(0),
                        Length.ofMillimetres(70)),
                new Temperature(20),
                new RelativeHumidity(0.5),
                FinishTable.read(TABLES).find(finish),
                Destination.recorded("steady", "steady", Outdoors.usual(), steady(3600, 8760, humidity), 0),
                LIBRARY.plain("brass-free-cutting").thermalExpansionPerKelvin().get(Axis.ALONG),
                LIBRARY.plain("brass-free-cutting").thermalExpansionPerKelvin().get(Axis.ALONG),
                Optional.empty());
    }
}
