package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.Setting;
import hafthold.knife.Bond;
import hafthold.knife.Handle;
import hafthold.material.Finish;
import hafthold.material.Hybrid;
import hafthold.material.ScaleMaterial;
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
    private static final List<ToDoubleFunction<Movement>> WORST = List.of(
            Movement::edgeShy,
            Movement::edgeProud,
            Movement::tangLineShy,
            Movement::tangLineProud,
            Movement::endShort,
            Movement::endLong,
            Movement::pinHeadProud,
            Movement::pinHeadSunk,
            movement -> movement.free().edgeShy(),
            movement -> movement.free().edgeProud(),
            movement -> movement.free().lengthMismatch(),
            movement -> movement.free().pinGap(),
            movement -> movement.free().pinSqueeze());

    /** A micrometre is nothing to a caliper. */
    private static final double NOTHING_METRES = 1e-6;

    /** A thousandth of the strength, and of a strain of one percent. */
    private static final double NOTHING_OF_A_SHARE = 1e-3;

    private static final double NOTHING_OF_A_STRAIN = 1e-5;

    /** No worst is lost by more than a fiftieth of it, glued or free, of one material or two. */
    @ParameterizedTest
    @CsvSource({
        "walnut-black, yakutsk, heated-home",
        "walnut-black, singapore, uncooled-home",
        "walnut-black, oslo, outdoors",
        "antler-reindeer, phoenix, air-conditioned",
        "linen-phenolic-le, oslo, heated-home",
        "hybrid-walnut-burl-epoxy, yakutsk, heated-home",
        "hybrid-walnut-burl-epoxy, oslo, outdoors",
        "acrylic-cast, yakutsk, outdoors",
        "meteorite-iron, yakutsk, outdoors"
    })
    void hardlyAnyWorstIsLost(String id, String place, String setting) {
        ScaleMaterial material = LIBRARY.find(id);
        Destination there = Destination.of(
                        PlaceTable.read(TABLES).find(place),
                        Setting.find(setting).orElseThrow())
                .thinned(Resolution.STANDARD.airStrayFraction());
        Bond bond = new Bond(
                LIBRARY.plain("steel-carbon"),
                Length.ofMillimetres(4),
                LIBRARY.plain("epoxy-two-part"),
                Length.ofMillimetres(0.1));
        Conditions conditions = new Conditions(
                HANDLE,
                new Temperature(20),
                new RelativeHumidity(0.45),
                BARE,
                there,
                new Figure(new Band(1.05e-5, 1.1e-5, 1.15e-5), Evidence.ESTIMATED, "test", ""),
                new Figure(new Band(1.8e-5, 1.9e-5, 2.0e-5), Evidence.ESTIMATED, "test", ""),
                Optional.of(bond));
        List<Hybrid.Part> materials = HandleEngine.partsOf(material, material.usualCut());
        Optional<GluedSections.Readings> sections =
                Optional.of(new GluedSections(HANDLE, bond).under(ScaleElasticity.of(materials, Doubt.NONE)));
        LayerMoisture moisture = new LayerMoisture(there);
        List<MovingScale.Part> parts = materials.stream()
                .map(part -> new MovingScale.Part(
                        part.share().value(),
                        new GrainLie(part.material(), part.cut()),
                        doubt -> part.material()
                                .water()
                                .map(water -> water.isotherm().moistureFraction(0.45, 20))
                                .orElse(0.0),
                        1,
                        moisture.scaleMean(part.material(), part.cut(), HANDLE, BARE)))
                .toList();
        double[] warmer = conditions.warmer();
        int[] telling =
                TellingSamples.of(parts.stream().map(MovingScale.Part::moisture).toList(), warmer);
        assertTrue(telling.length <= 300, "moments " + telling.length);
        List<MovingScale.Part> excerpt = parts.stream()
                .map(part -> part.mapped(series -> at(telling, series)))
                .toList();
        for (Doubt doubt : new Draws(new Sampling(100, 1)).doubts()) {
            Movement whole = Movement.of(motions(parts, doubt), sections, conditions, warmer);
            Movement some = Movement.of(motions(excerpt, doubt), sections, conditions, at(telling, warmer));
            for (int i = 0; i < WORST.size(); i++) {
                near(
                        id + " " + i,
                        WORST.get(i).applyAsDouble(whole),
                        WORST.get(i).applyAsDouble(some),
                        NOTHING_METRES);
            }
            near(id + " pins", whole.free().pinCrackUse(), some.free().pinCrackUse(), NOTHING_OF_A_SHARE);
            near(
                    id + " ridge",
                    whole.free().joint().thicknessStrain(),
                    some.free().joint().thicknessStrain(),
                    NOTHING_OF_A_STRAIN);
            near(
                    id + " joint",
                    whole.free().joint().lineStrain(),
                    some.free().joint().lineStrain(),
                    NOTHING_OF_A_STRAIN);
        }
    }

    private static void near(String what, double whole, double some, double nothing) {
        assertEquals(whole, some, Math.max(nothing, 0.02 * whole), what);
    }

    private static List<PartMotion> motions(List<MovingScale.Part> parts, Doubt doubt) {
        return parts.stream().map(part -> part.motion(doubt)).toList();
    }

    private static double[] at(int[] numbers, double[] series) {
        return Arrays.stream(numbers).mapToDouble(number -> series[number]).toArray();
    }
}
