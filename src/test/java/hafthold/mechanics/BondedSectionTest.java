package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BondedSectionTest {
    private static final List<SectionInfluence> REFINED = IntStream.range(0, 3)
            .mapToObj(refinement -> Handles.walnut().influence(OutOfSection.FREE, refinement))
            .toList();

    private static void matchesReference(int refinement, double relativeTolerance) {
        SectionInfluence influence = Handles.walnut().influence(OutOfSection.HELD, refinement);
        double[] swelling = influence.evenScaleStrain(0, 0.010, 0.008);
        for (String[] row : ReferenceTable.rows("section-wood.csv")) {
            double expected = Double.parseDouble(row[1]) * (row[2].equals("mm") ? 1e-3 : 1e6);
            double got = influence.value(SectionOutput.valueOf(row[0]), swelling);
            assertEquals(expected, got, relativeTolerance * Math.abs(expected), row[0]);
        }
    }

    @Test
    void matchesTheReferenceSolutionToHalfAPercentOnTheUsualGrid() {
        matchesReference(0, 0.005);
    }

    @Test
    void matchesTheReferenceSolutionToATenthOfAPercentOnceRefined() {
        matchesReference(1, 0.001);
    }

    @ParameterizedTest
    @EnumSource(SectionOutput.class)
    void dryingTurnsEverySign(SectionOutput output) {
        SectionInfluence influence = Handles.walnut().influence();
        double wet = influence.value(output, influence.evenScaleStrain(0.0005, 0.010, 0.008));
        double dry = influence.value(output, influence.evenScaleStrain(-0.0005, -0.010, -0.008));
        assertEquals(-wet, dry, 1e-12 * Math.abs(wet));
        assertTrue(wet != 0, output.name());
    }

    @ParameterizedTest
    @EnumSource(SectionOutput.class)
    void everyRefinementChangesTheAnswerLessThanTheLast(SectionOutput output) {
        double[] swelling = REFINED.get(0).evenScaleStrain(0.0003, 0.010, 0.008);
        double usual = REFINED.get(0).value(output, swelling);
        double fine = REFINED.get(1).value(output, swelling);
        double finest = REFINED.get(2).value(output, swelling);
        double rounding = 1e-10 * Math.abs(finest);
        assertTrue(Math.abs(finest - fine) <= 0.7 * Math.abs(fine - usual) + rounding);
    }

    @ParameterizedTest
    @CsvSource({"2, 0.03", "3, 0.3", "5, 0.03", "9, 0.3", "13, 0.1"})
    void usualGridHoldsItsAccuracyForOtherThicknesses(double scaleMillimetres, double glueMillimetres) {
        BondedSection section = BondedSection.acrossWidth(
                11e-3,
                new Layup(
                        new SectionLayer(3e-3, Handles.STEEL),
                        new SectionLayer(glueMillimetres * 1e-3, Handles.EPOXY),
                        new SectionLayer(scaleMillimetres * 1e-3, Handles.WALNUT_FLAT)));
        SectionInfluence usual = section.influence(OutOfSection.FREE, 0);
        SectionInfluence fine = section.influence(OutOfSection.FREE, 1);
        double[] swelling = usual.evenScaleStrain(0.0003, 0.010, 0.008);
        for (SectionOutput output : SectionOutput.values()) {
            double expected = fine.value(output, swelling);
            double tolerance = output == SectionOutput.EDGE_AT_GLUE ? 0.04 : 0.01;
            assertEquals(expected, usual.value(output, swelling), tolerance * Math.abs(expected), output.name());
        }
    }

    @Test
    void refusesSizesAndLayersThatNoHandleHas() {
        Layup layup = Handles.layup(Handles.WALNUT_FLAT);
        assertThrows(IllegalArgumentException.class, () -> BondedSection.acrossWidth(2e-3, layup));
        assertThrows(IllegalArgumentException.class, () -> BondedSection.acrossWidth(Double.NaN, layup));
        assertThrows(
                IllegalArgumentException.class,
                () -> new BondedSection(HandleAxis.THICKNESS, 13e-3, layup, BondedSection.DEPTH_SHARES));
        assertThrows(
                IllegalArgumentException.class,
                () -> new BondedSection(HandleAxis.WIDTH, 13e-3, layup, List.of(0.0, 0.7, 0.6, 1.0)));
        assertThrows(IllegalArgumentException.class, () -> new SectionLayer(0, Handles.STEEL));
    }
}
