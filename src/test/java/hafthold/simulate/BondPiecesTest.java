package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.air.Outdoors;
import hafthold.knife.FullTangKnife;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.mechanics.HandleAxis;
import hafthold.mechanics.LekhnitskiiHole;
import hafthold.mechanics.OrthotropicElasticity;
import hafthold.mechanics.SectionInfluence;
import hafthold.mechanics.SectionOutput;
import hafthold.table.BuildFile;
import hafthold.table.KnifeFile;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pieces between tables and sections, each against what it stands for. */
class BondPiecesTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);

    @TempDir
    private Path folder;

    /** Wood Handbook 2010 chapter 5, Tables 5-1 and 5-2 (from memory): ratios of black walnut to E_L 12.76 GPa. */
    @Test
    void walnutLiesInTheHandleAsItsCutSays() {
        Material walnut = LIBRARY.plain("walnut-black");
        OrthotropicElasticity flat = ScaleElasticity.of(walnut, Cut.FLAT, Doubt.NONE);
        OrthotropicElasticity quarter = ScaleElasticity.of(walnut, Cut.QUARTER, Doubt.NONE);
        OrthotropicElasticity cross = ScaleElasticity.of(walnut, Cut.CROSS, Doubt.NONE);
        assertEquals(12.76e9, flat.lengthModulusPascals(), 0.01e9);
        assertEquals(0.056, flat.widthModulusPascals() / flat.lengthModulusPascals(), 0.001);
        assertEquals(0.106, flat.thicknessModulusPascals() / flat.lengthModulusPascals(), 0.001);
        assertEquals(0.378, flat.widthThicknessPoisson(), 0.005, "nu_TR = nu_RT E_T / E_R");
        assertEquals(flat.widthModulusPascals(), quarter.thicknessModulusPascals(), 1e3);
        assertEquals(flat.lengthModulusPascals(), cross.thicknessModulusPascals(), 1e3);
        assertEquals(flat.widthModulusPascals(), cross.lengthModulusPascals(), 1e3);
    }

    @Test
    void everyMaterialOfTheRackHasAStiffnessThatABodyCanHave() {
        LIBRARY.listed("scale").forEach(row -> {
            for (var part : HandleEngine.partsOf(LIBRARY.find(row.id()), Cut.FLAT)) {
                OrthotropicElasticity elasticity =
                        ScaleElasticity.of(part.material(), part.cut(), Doubt.alone(Input.STIFFNESS, 1));
                assertTrue(elasticity.widthModulusPascals() > 0, row.id());
            }
        });
    }

    /** A series that never changes keeps its lasting share, one that is over in a day all of it. */
    @Test
    void lastingStrainRelaxesAndAQuickOneDoesNot() throws IOException {
        double[] lasting = new double[8760];
        Arrays.fill(lasting, 2.0);
        double[] quick = new double[8760];
        quick[5000] = 1.0;
        FreeStrains strains = new FreeStrains(example(), List.of(), List.of(), new double[][] {lasting, quick}, true);
        double[][] relaxed = strains.relaxed(0.25).series();
        assertEquals(0.5, relaxed[0][0], 1e-12);
        assertEquals(0.5, relaxed[0][8759], 1e-12);
        assertEquals(1 - 0.75 / 720, relaxed[1][5000], 1e-12);
        assertEquals(0, relaxed[1][4999], 1e-12);
    }

    /** Folding the modes of a section into what really varies changes no answer. */
    @Test
    void aFoldedSectionAnswersAsTheSectionDoes() throws IOException {
        FullTangKnife knife = example();
        double[] air = new double[24];
        Destination place = Destination.recorded(
                "invented", "invented", Outdoors.usual(), new AirSeries(3600, air, new double[24]), 0);
        BondedEngine.Setup setup = new BondedEngine.Setup(
                knife,
                place,
                new Draws(Sampling.VALUE_ONLY),
                new LayerMoisture(place),
                new java.util.concurrent.ConcurrentHashMap<>(),
                new java.util.concurrent.ConcurrentHashMap<>());
        var parts = HandleEngine.partsOf(knife.scale(), knife.cutLeft());
        StiffnessNodes nodes = StiffnessNodes.of(
                setup,
                parts,
                Doubt.NONE,
                doubt -> new SectionPlan(knife, parts, doubt)
                        .acrossWidth(SectionPlan.positions(knife).get(0)));
        SectionInfluence section = nodes.first();
        FreeStrains strains = FreeStrains.since(knife.build().made(), setup, parts, Doubt.NONE);
        double[] folded = strains.on(nodes).year(SectionOutput.EDGE_MID, strains.series());
        double[] amplitudes = new double[section.columns()];
        PartMotion wood = strains.scale().get(0);
        double colder = strains.warmer()[12];
        for (int k = 0; k < LayerMoisture.LAYERS; k++) {
            double drier = strains.series()[k][12];
            amplitudes[section.scaleColumnOf(HandleAxis.LENGTH, k)] =
                    wood.length().strain(drier, colder);
            amplitudes[section.scaleColumnOf(HandleAxis.WIDTH, k)] =
                    wood.width().strain(drier, colder);
            amplitudes[section.scaleColumnOf(HandleAxis.THICKNESS, k)] =
                    wood.thickness().strain(drier, colder);
        }
        amplitudes[section.tangColumn()] = colder
                * knife.steel().thermalExpansionPerKelvin().get(Axis.ALONG).value();
        amplitudes[section.glueColumn()] = colder
                * knife.adhesive().thermalExpansionPerKelvin().get(Axis.ALONG).value();
        assertEquals(section.value(SectionOutput.EDGE_MID, amplitudes), folded[12], 1e-12);
        assertTrue(folded[12] < -0.1e-3, "bone dry and at 0 C it is well shy: " + folded[12]);
    }

    /** Reading contact stress between solved directions stays within 2 % of solving each. */
    @Test
    void contactsReadBetweenDirectionsAgreeWithSolvedOnes() {
        OrthotropicElasticity walnut = ScaleElasticity.of(LIBRARY.plain("walnut-black"), Cut.FLAT, Doubt.NONE);
        PinSplit split = new PinSplit(walnut, false);
        LekhnitskiiHole hole = LekhnitskiiHole.throughScale(walnut);
        for (double along : new double[] {-0.004, -0.0007, 0, 0.0012, 0.006}) {
            double solved = hole.pinContact(along, 0.01).largestTensionAcrossPascals();
            assertEquals(solved, split.tensionPascals(along, 0.01), 0.02 * solved, "" + along);
        }
        assertEquals(0, split.tensionPascals(-0.001, -0.002), 0);
    }

    @Test
    void glueBearsLessInTheHeatAndPressureDoesNoHarm() {
        GlueStrength glue = new GlueStrength(20e6, 10e6, 63);
        assertEquals(0.5, glue.use(10e6, 0, 20), 1e-12);
        assertEquals(0.5, glue.use(10e6, -50e6, -40), 1e-12);
        assertEquals(0.5, glue.use(0, 5e6, 20), 1e-12);
        assertEquals(1.0, glue.use(10e6, 0, 63), 1e-12, "half of its strength at the softening point");
        assertEquals(2.5, glue.use(10e6, 0, 64), 1e-12);
    }

    private FullTangKnife example() throws IOException {
        Path file = Files.writeString(folder.resolve("knife.toml"), BuildFile.example());
        return (FullTangKnife) KnifeFile.read(file, TABLES, LIBRARY).knife();
    }
}
