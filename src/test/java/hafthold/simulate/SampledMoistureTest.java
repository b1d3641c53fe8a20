package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.Setting;
import hafthold.knife.Handle;
import hafthold.material.Finish;
import hafthold.material.Material;
import hafthold.quantity.Length;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Resolution;
import org.junit.jupiter.api.Test;

/** Courses that are read between computed years against years that are computed. */
class SampledMoistureTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final Finish BARE = FinishTable.read(TABLES).find("bare");
    private static final double[] POSITIONS = {-1.3, -0.9, -0.375, 0.2, 0.9, 1.3};
    private static final Handle HANDLE = new Handle(
            Length.ofMillimetres(110),
            Length.ofMillimetres(26),
            Length.ofMillimetres(8),
            Length.ofMillimetres(6),
            Length.ofMillimetres(0),
            Length.ofMillimetres(70));

    /** Woods, whose diffusivity is good to a factor of 2.5, come within 0.12 points of moisture at any time. */
    @Test
    void woodsReadBetweenDiffusivitiesAreWithinAnEighthOfAPoint() {
        for (String id : new String[] {"walnut-black", "maple-sugar"}) {
            assertTrue(error(id, "yakutsk", "heated-home") < 1.2e-3, id);
            assertTrue(error(id, "singapore", "uncooled-home") < 2e-4, id);
            assertTrue(error(id, "oslo", "heated-home") < 1.2e-3, id);
            assertTrue(error(id, "london", "outdoors") < 1.2e-3, id);
        }
    }

    /** What is good to a factor of 5 a side only comes within 0.15 points. */
    @Test
    void whatIsHardlyKnownComesWithinASixthOfAPoint() {
        for (String id : new String[] {"antler-reindeer", "horn-buffalo", "jute-epoxy", "carbon-epoxy-woven"}) {
            assertTrue(error(id, "yakutsk", "heated-home") < 1.5e-3, id);
        }
    }

    @Test
    void atTheEndsOfTheRangeTheComputedYearsAreRead() {
        LayerMoisture moisture = new LayerMoisture(place("yakutsk", "heated-home"));
        Material wood = LIBRARY.plain("walnut-black");
        DoubtedMoisture course = moisture.scaleMean(wood, wood.usualCut(), HANDLE, BARE);
        int nodes = new DiffusivityNodes(wood.water().orElseThrow()).size();
        assertSame(course.value(), course.course(Doubt.NONE));
        for (double end : new double[] {-Draws.FURTHEST, Draws.FURTHEST}) {
            double[] computed = course.computed(end < 0 ? 0 : nodes - 1).mean().hourly();
            double[] read =
                    course.course(Doubt.alone(Input.DIFFUSIVITY, end)).mean().hourly();
            for (int i = 0; i < read.length; i++) {
                assertEquals(computed[i], read[i], 1e-12);
            }
        }
    }

    private static double error(String id, String place, String setting) {
        Destination there = place(place, setting);
        LayerMoisture moisture = new LayerMoisture(there);
        Material material = LIBRARY.plain(id);
        double worst = 0;
        for (double position : POSITIONS) {
            Doubt doubt = Doubt.alone(Input.DIFFUSIVITY, position);
            double[] read = moisture.scaleMean(material, material.usualCut(), HANDLE, BARE)
                    .course(doubt)
                    .mean()
                    .hourly();
            var computed = PeriodicMoisture.of(
                            PartSlab.scale(material, material.usualCut(), HANDLE, BARE, doubt)
                                    .orElseThrow(),
                            there.air(),
                            0)
                    .history();
            for (int i = 0; i < read.length; i++) {
                worst = Math.max(worst, Math.abs(read[i] - computed.meanFraction(i)));
            }
        }
        return worst;
    }

    private static Destination place(String place, String setting) {
        return Destination.of(
                        PlaceTable.read(TABLES).find(place),
                        Setting.find(setting).orElseThrow())
                .thinned(Resolution.STANDARD.airStrayFraction());
    }
}
