package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class SectionProperties {
    private static final SectionInfluence WALNUT = Handles.walnut().influence();

    @Property
    void statesAddUp(
            @ForAll @Scale(6) @DoubleRange(min = -0.02, max = 0.02) double first,
            @ForAll @Scale(6) @DoubleRange(min = -0.02, max = 0.02) double second,
            @ForAll @Scale(6) @DoubleRange(min = -0.002, max = 0.002) double steel) {
        double[] a = WALNUT.evenScaleStrain(0, first, second);
        double[] b = WALNUT.evenScaleStrain(first, 0, second);
        b[WALNUT.tangColumn()] = steel;
        double[] sum = new double[a.length];
        for (int m = 0; m < a.length; m++) {
            sum[m] = a[m] + b[m];
        }
        for (SectionOutput output : SectionOutput.values()) {
            double parts = WALNUT.value(output, a) + WALNUT.value(output, b);
            double size = Math.abs(WALNUT.value(output, a)) + Math.abs(WALNUT.value(output, b));
            assertEquals(parts, WALNUT.value(output, sum), 1e-12 * size + 1e-30);
        }
    }

    @Property(tries = 20)
    void equalExpansionOfAllPartsStrainsNothing(@ForAll @Scale(6) @DoubleRange(min = -0.01, max = 0.01) double strain) {
        double[] all = WALNUT.evenScaleStrain(strain, strain, strain);
        all[WALNUT.tangColumn()] = strain;
        all[WALNUT.glueColumn()] = strain;
        for (SectionOutput output : SectionOutput.values()) {
            double expected = switch (output) {
                case EXTENSION_OUT -> strain;
                case FACE_CENTRE, FACE_EDGE, FREE_FACE -> strain * 9.1e-3;
                default -> 0;
            };
            // Stresses cancel out of terms near 200 GPa x strain.
            double tolerance = output.name().contains("STRESS") || output.name().contains("GLUE_") ? 50 : 1e-12;
            assertEquals(expected, WALNUT.value(output, all), tolerance, output.name());
        }
    }

    /** Virtual work: a free body has no mean stress, and the glue as a whole neither pulls nor pushes. */
    @Property(tries = 20)
    void forcesBalance(
            @ForAll @Scale(6) @DoubleRange(min = 4e-3, max = 60e-3) double halfWidth,
            @ForAll @Scale(6) @DoubleRange(min = 2e-3, max = 12e-3) double thickness,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1.5708) double ringAngle) {
        Layup layup = new Layup(
                new SectionLayer(4e-3, Handles.STEEL),
                new SectionLayer(0.1e-3, Handles.EPOXY),
                new SectionLayer(thickness, Handles.WALNUT_FLAT.turnedAboutLength(ringAngle)));
        BondedSection section = BondedSection.acrossWidth(halfWidth, layup);
        SectionGrid grid = SectionGrading.grid(section, 0);
        PlaneStiffness[] material = section.parts().stream()
                .map(part -> part.elasticity().inSection(HandleAxis.WIDTH))
                .toArray(PlaneStiffness[]::new);
        FreeStrain swelling = new FreeStrain(grid.firstRow(2), grid.rows(), 0.01, 0.008, 0.0005);
        SectionSolution solution = new SectionSolution(grid, material, List.of(swelling));
        double[][] whole = new double[4][1];
        double[][] glue = new double[4][1];
        double work = 0;
        for (int column = 0; column < grid.columns(); column++) {
            for (int row = 0; row < grid.rows(); row++) {
                double[][] one = new double[4][1];
                solution.addStress(column, row, one);
                solution.addStress(column, row, whole);
                work += Math.abs(one[0][0]) + Math.abs(one[1][0]);
                if (grid.layerOfRow(row) == 1) {
                    solution.addStress(column, row, glue);
                }
            }
        }
        assertEquals(0, whole[0][0], 1e-8 * work);
        assertEquals(0, whole[1][0], 1e-8 * work);
        assertEquals(0, glue[1][0], 1e-8 * work);
    }

    /** What Poisson's ratio and dents at the corners cannot undo: bonding never lets the flank out further. */
    @Property(tries = 30)
    void gluedFlankMovesLessThanFree(
            @ForAll @Scale(6) @DoubleRange(min = 5e-3, max = 30e-3) double halfWidth,
            @ForAll @Scale(6) @DoubleRange(min = 2e-3, max = 12e-3) double thickness) {
        Layup layup = new Layup(
                new SectionLayer(4e-3, Handles.STEEL),
                new SectionLayer(0.1e-3, Handles.EPOXY),
                new SectionLayer(thickness, Handles.WALNUT_FLAT));
        SectionInfluence influence = BondedSection.acrossWidth(halfWidth, layup).influence();
        double[] swelling = influence.evenScaleStrain(0.0003, 0.010, 0.008);
        double glued = influence.value(SectionOutput.EDGE_MID, swelling);
        double line = influence.value(SectionOutput.EDGE_TANG_LINE, swelling);
        double free = influence.value(SectionOutput.FREE_EDGE, swelling);
        assertTrue(0 < line && line < glued && glued < free);
    }

    /** Held along its length, a scale also grows across by Poisson's ratio: that is as far as glue can push an edge. */
    @Property(tries = 30)
    void gluedFlankMovesLessThanOneThatIsHeldAlongItsLengthOnly(
            @ForAll @Scale(6) @DoubleRange(min = 5e-3, max = 30e-3) double halfWidth,
            @ForAll @Scale(6) @DoubleRange(min = 2e-3, max = 12e-3) double thickness,
            @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 0.45) double poisson,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.01) double along) {
        OrthotropicElasticity plastic = OrthotropicElasticity.isotropic(3e9, poisson);
        Layup layup = new Layup(
                new SectionLayer(4e-3, Handles.STEEL),
                new SectionLayer(0.1e-3, Handles.EPOXY),
                new SectionLayer(thickness, plastic));
        SectionInfluence influence = BondedSection.acrossWidth(halfWidth, layup).influence();
        double glued = influence.value(SectionOutput.EDGE_MID, influence.evenScaleStrain(along, 0.010, 0.010));
        assertTrue(0 < glued && glued < halfWidth * (0.010 + poisson * along) * 1.005, "glued " + glued);
    }

    @Property
    void turningKeepsTheInvariantOfThePlane(@ForAll @Scale(4) @DoubleRange(min = 0, max = 3.1415) double angle) {
        OrthotropicElasticity turned = Handles.WALNUT_FLAT.turnedAboutLength(angle);
        // S11 + S22 + 2 S12 does not depend on the direction of the axes.
        double expected = 1 / 710e6 + 1 / 1350e6 - 2 * 0.378 / 710e6;
        double got = 1 / turned.widthModulusPascals()
                + 1 / turned.thicknessModulusPascals()
                + 2 * turned.compliancePerPascal(HandleAxis.WIDTH, HandleAxis.THICKNESS);
        assertEquals(expected, got, 1e-9 * expected);
    }
}
