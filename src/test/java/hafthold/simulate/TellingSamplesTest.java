package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.air.Setting;
import hafthold.knife.Handle;
import hafthold.material.Finish;
import hafthold.material.Material;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import hafthold.transport.Resolution;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Years looked at where they can be at their worst against the same years looked at throughout. */
class TellingSamplesTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final Finish BARE = FinishTable.read(TABLES).find("bare");
    private static final Handle HANDLE = new Handle(
            Length.ofMillimetres(110),
            Length.ofMillimetres(26),
            Length.ofMillimetres(8),
            Length.ofMillimetres(6),
            Length.ofMillimetres(0),
            Length.ofMillimetres(70));
    private static final List<ToDoubleFunction<FreeMovement>> WORST = List.of(
            FreeMovement::edgeShy,
            FreeMovement::edgeProud,
            FreeMovement::lengthMismatch,
            FreeMovement::pinGap,
            FreeMovement::pinSqueeze,
            FreeMovement::pinHeadProud,
            FreeMovement::pinHeadSunk);

    /** A micrometre is nothing to a caliper. */
    private static final double NOTHING_METRES = 1e-6;

    /** No worst is lost by more than a hundredth of it. */
    @ParameterizedTest
    @CsvSource({
        "walnut-black, yakutsk, heated-home",
        "walnut-black, singapore, uncooled-home",
        "walnut-black, oslo, outdoors",
        "antler-reindeer, phoenix, air-conditioned",
        "linen-phenolic-le, oslo, heated-home",
        "acrylic-cast, yakutsk, outdoors",
        "meteorite-iron, yakutsk, outdoors"
    })
    void hardlyAnyWorstIsLost(String id, String place, String setting) {
        Material material = LIBRARY.plain(id);
        Destination there = Destination.of(
                        PlaceTable.read(TABLES).find(place),
                        Setting.find(setting).orElseThrow())
                .thinned(Resolution.STANDARD.airStrayFraction());
        Conditions conditions = new Conditions(
                HANDLE,
                new Temperature(20),
                new RelativeHumidity(0.45),
                BARE,
                there,
                new Figure(new Band(1.05e-5, 1.1e-5, 1.15e-5), Evidence.ESTIMATED, "test", ""),
                new Figure(new Band(1.8e-5, 1.9e-5, 2.0e-5), Evidence.ESTIMATED, "test", ""),
                Optional.empty());
        DoubtedMoisture course = new LayerMoisture(there).scaleMean(material, material.usualCut(), HANDLE, BARE);
        double[] warmer = conditions.warmer();
        int[] telling = TellingSamples.of(List.of(course), warmer);
        DoubtedMoisture excerpt = course.mapped(series -> at(telling, series));
        for (Doubt doubt : new Draws(new Sampling(100, 1)).doubts()) {
            FreeMovement whole = movement(material, course, doubt, conditions, warmer);
            FreeMovement some = movement(material, excerpt, doubt, conditions, at(telling, warmer));
            for (ToDoubleFunction<FreeMovement> quantity : WORST) {
                double worst = quantity.applyAsDouble(whole);
                assertEquals(worst, quantity.applyAsDouble(some), Math.max(NOTHING_METRES, 0.01 * worst), id);
            }
        }
    }

    private static FreeMovement movement(
            Material material, DoubtedMoisture course, Doubt doubt, Conditions conditions, double[] warmer) {
        PartMotion motion = PartMotion.of(
                new GrainLie(material, material.usualCut()),
                1,
                material.water()
                        .map(water -> water.isotherm().moistureFraction(0.45, 20))
                        .orElse(0.0),
                course.course(doubt).mean(),
                0,
                doubt);
        return FreeMovement.of(List.of(motion), conditions, warmer);
    }

    private static double[] at(int[] numbers, double[] series) {
        return Arrays.stream(numbers).mapToDouble(number -> series[number]).toArray();
    }
}
