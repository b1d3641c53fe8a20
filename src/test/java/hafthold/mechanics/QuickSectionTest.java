package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the quick grid with two depth layers may be off, in shares of the free movement. */
class QuickSectionTest {
    private static final List<Double> HALVES = List.of(0.0, 0.5, 1.0);
    private static final List<Double> EIGHTHS =
            IntStream.rangeClosed(0, 8).mapToObj(k -> k / 8.0).toList();
    private static final OrthotropicElasticity WOOD = Handles.WALNUT_FLAT;
    private static final Map<String, OrthotropicElasticity> SCALES = Map.of(
            "flat", WOOD,
            "rift", WOOD.turnedAboutLength(Math.PI / 4),
            "quarter", WOOD.turnedAboutLength(Math.PI / 2),
            "burl", new RosenHashinAggregate(WOOD).stiffness(),
            "cross", WOOD.laid(HandleAxis.WIDTH, HandleAxis.THICKNESS, HandleAxis.LENGTH),
            "acrylic", Handles.ACRYLIC,
            "glass laminate", new OrthotropicElasticity(18e9, 18e9, 9e9, 5e9, 4e9, 4e9, 0.15, 0.3, 0.3),
            "stone", OrthotropicElasticity.isotropic(50e9, 0.25),
            "iron", OrthotropicElasticity.isotropic(180e9, 0.29));

    @ParameterizedTest
    @CsvSource({"9, 4", "9, 12", "13, 4", "13, 8", "20, 8", "20, 12"})
    void edgeAndFaceAcrossTheWidthAreRightWithinTwoPercentOfTheFreeMovement(double halfWidth, double thickness) {
        SCALES.forEach((name, scale) -> {
            Comparison even = new Comparison(HandleAxis.WIDTH, halfWidth, thickness, scale, depth -> 1);
            even.check(name, SectionOutput.EDGE_MID, 0.02);
            even.check(name, SectionOutput.EDGE_TANG_LINE, 0.025);
            even.check(name, SectionOutput.FACE_CENTRE, 0.01);
            Comparison lopsided = new Comparison(HandleAxis.WIDTH, halfWidth, thickness, scale, depth -> depth - 0.5);
            lopsided.check(name, SectionOutput.EDGE_MID, 0.02);
            lopsided.check(name, SectionOutput.EDGE_TANG_LINE, 0.025);
            lopsided.check(name, SectionOutput.FACE_CENTRE, 0.01);
        });
    }

    @ParameterizedTest
    @CsvSource({"40, 4", "55, 8", "55, 12", "75, 8"})
    void theEndAlongTheBladeIsRightWithinTwoAndAHalfPercentOfTheFreeMovement(double halfLength, double thickness) {
        SCALES.forEach((name, scale) -> {
            new Comparison(HandleAxis.LENGTH, halfLength, thickness, scale, depth -> 1)
                    .check(name, SectionOutput.EDGE_MID, 0.025);
            new Comparison(HandleAxis.LENGTH, halfLength, thickness, scale, depth -> depth - 0.5)
                    .check(name, SectionOutput.EDGE_MID, 0.025);
        });
    }

    /** The reference section of 26 x 7 mm, +1.0 % width, +0.8 % thickness, plane strain: see section-wood.csv. */
    @Test
    void theReferenceSectionComesOutWithinTwoPercent() {
        SectionInfluence quick = new SectionInfluence(
                new BondedSection(HandleAxis.WIDTH, 13e-3, Handles.layup(WOOD), HALVES),
                OutOfSection.HELD,
                SectionGrading.quick(new BondedSection(HandleAxis.WIDTH, 13e-3, Handles.layup(WOOD), HALVES)));
        double[] swelling = quick.evenScaleStrain(0, 0.010, 0.008);
        assertEquals(0.07291e-3, quick.value(SectionOutput.EDGE_MID, swelling), 0.02 * 0.07291e-3);
        assertEquals(0.0770e-3, quick.value(SectionOutput.FACE_CENTRE, swelling), 0.01 * 0.0770e-3);
    }

    /** One section solved both ways under a free strain of 1 % across, 0.6 % through and 0.5 % along the handle. */
    private static final class Comparison {
        private final SectionInfluence fine;
        private final SectionInfluence quick;
        private final double[] fineStrain;
        private final double[] quickStrain;
        private final double size;
        private final double thickness;

        Comparison(
                HandleAxis along,
                double halfSize,
                double thickness,
                OrthotropicElasticity scale,
                java.util.function.DoubleUnaryOperator profile) {
            Layup layup = new Layup(
                    new SectionLayer(4e-3, Handles.STEEL),
                    new SectionLayer(0.1e-3, Handles.EPOXY),
                    new SectionLayer(thickness * 1e-3, scale));
            this.size = halfSize * 1e-3;
            this.thickness = thickness * 1e-3;
            fine = new BondedSection(along, size, layup, EIGHTHS).influence(OutOfSection.FREE, 0);
            quick = new BondedSection(along, size, layup, HALVES).quickInfluence();
            fineStrain = strain(fine, profile);
            // Two even halves with the mean and the first moment of the profile.
            double mean = profile.applyAsDouble(0.5);
            double moment = profile.applyAsDouble(1) - profile.applyAsDouble(0);
            quickStrain = strain(quick, depth -> mean + (depth < 0.5 ? -moment : moment) / 3);
        }

        private static double[] strain(SectionInfluence influence, java.util.function.DoubleUnaryOperator profile) {
            double[] amplitudes = new double[influence.columns()];
            int layers = influence.section().depthLayers();
            for (int k = 0; k < layers; k++) {
                double at = profile.applyAsDouble((k + 0.5) / layers);
                amplitudes[influence.scaleColumnOf(HandleAxis.LENGTH, k)] = 0.005 * at;
                amplitudes[influence.scaleColumnOf(HandleAxis.WIDTH, k)] = 0.010 * at;
                amplitudes[influence.scaleColumnOf(HandleAxis.THICKNESS, k)] = 0.006 * at;
            }
            return amplitudes;
        }

        void check(String name, SectionOutput output, double share) {
            double expected = fine.value(output, fineStrain);
            boolean isFace = output == SectionOutput.FACE_CENTRE;
            double own = fine.section().along() == HandleAxis.WIDTH ? 0.010 : 0.005;
            double free = isFace ? Math.max(0.006 * thickness, Math.abs(expected)) : own * size;
            assertEquals(expected, quick.value(output, quickStrain), share * free, name + " " + output);
        }
    }
}
