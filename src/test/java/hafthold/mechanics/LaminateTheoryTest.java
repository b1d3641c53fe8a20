package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Far from its edges a bonded handle is a laminate: the section solver against classical lamination theory. */
class LaminateTheoryTest {
    private static double reference(String kind, String item) {
        return ReferenceTable.rows("laminate.csv").stream()
                .filter(row -> row[0].equals(kind) && row[1].equals(item))
                .mapToDouble(row -> Double.parseDouble(row[2]) * (row[3].equals("MPa") ? 1e6 : 1))
                .findFirst()
                .orElseThrow();
    }

    private static double[] walnutSwelling(SectionInfluence influence) {
        return influence.evenScaleStrain(0, 0.01, 0);
    }

    private static double[] acrylicFrost(SectionInfluence influence) {
        double kelvin = -40;
        double[] frost = influence.evenScaleStrain(70e-6 * kelvin, 70e-6 * kelvin, 70e-6 * kelvin);
        frost[influence.tangColumn()] = 11e-6 * kelvin;
        frost[influence.glueColumn()] = 60e-6 * kelvin;
        return frost;
    }

    /** What is lost at the edges weighs as one over the size, so two sizes tell what an endless handle does. */
    private static double endless(
            HandleAxis along, OrthotropicElasticity scale, Function<SectionInfluence, double[]> state) {
        double[] answers = new double[2];
        for (int i = 0; i < 2; i++) {
            SectionInfluence influence = new BondedSection(
                            along, 0.5 * (i + 1), Handles.layup(scale), BondedSection.DEPTH_SHARES)
                    .influence();
            answers[i] = influence.value(SectionOutput.EXTENSION_OUT, state.apply(influence));
        }
        return 2 * answers[1] - answers[0];
    }

    @Test
    void endlessHandlesExtendLikeLaminates() {
        assertEquals(
                reference("walnut", "strain along the length"),
                endless(HandleAxis.WIDTH, Handles.WALNUT_FLAT, LaminateTheoryTest::walnutSwelling),
                1e-8);
        assertEquals(
                reference("walnut", "strain across the width"),
                endless(HandleAxis.LENGTH, Handles.WALNUT_FLAT, LaminateTheoryTest::walnutSwelling),
                1e-8);
        assertEquals(
                reference("acrylic", "strain across the width"),
                endless(HandleAxis.LENGTH, Handles.ACRYLIC, LaminateTheoryTest::acrylicFrost),
                1e-8);
    }

    @Test
    void middleOfWideWalnutHandleCarriesLaminateStress() {
        SectionInfluence influence = BondedSection.acrossWidth(0.5, Handles.layup(Handles.WALNUT_FLAT))
                .influence(OutOfSection.HELD, 0);
        double[] state = walnutSwelling(influence);
        state[influence.extensionColumn()] = reference("walnut", "strain along the length");
        assertEquals(
                reference("walnut", "scale stress along"), influence.value(SectionOutput.SCALE_STRESS_OUT, state), 50);
        assertEquals(
                reference("walnut", "scale stress across"),
                influence.value(SectionOutput.SCALE_STRESS_ALONG, state),
                500);
    }

    @Test
    void middleOfLongAcrylicHandleCarriesLaminateStressAtEveryDepth() {
        SectionInfluence influence =
                BondedSection.alongLength(0.5, Handles.layup(Handles.ACRYLIC)).influence(OutOfSection.HELD, 0);
        double[] state = acrylicFrost(influence);
        state[influence.extensionColumn()] = reference("acrylic", "strain across the width");
        for (HandleAxis axis : new HandleAxis[] {HandleAxis.LENGTH, HandleAxis.WIDTH}) {
            for (int k = 0; k < influence.section().depthLayers(); k++) {
                assertEquals(
                        reference("acrylic", "scale stress along"), influence.scaleStressPascals(axis, k, state), 50);
            }
        }
    }

    /** A strain in one depth layer only: sum Q h (e - free) = 0 over the layers with Q = E / (1 - nu^2), no extension. */
    @Test
    void everyDepthLayerWeighsByItsThickness() {
        SectionInfluence influence =
                BondedSection.acrossWidth(0.5, Handles.layup(Handles.ACRYLIC)).influence(OutOfSection.HELD, 0);
        double scale = 3.2e9 / (1 - 0.37 * 0.37);
        double stiffness = 200e9 / (1 - 0.29 * 0.29) * 2e-3 + 2e9 / (1 - 0.38 * 0.38) * 0.1e-3 + scale * 7e-3;
        for (int k = 0; k < influence.section().depthLayers(); k++) {
            double[] state = new double[influence.columns()];
            state[influence.scaleColumnOf(HandleAxis.WIDTH, k)] = 0.01;
            double share = BondedSection.DEPTH_SHARES.get(k + 1) - BondedSection.DEPTH_SHARES.get(k);
            double extension = scale * 7e-3 * share * 0.01 / stiffness;
            for (int layer = 0; layer < influence.section().depthLayers(); layer++) {
                double expected = scale * (extension - (layer == k ? 0.01 : 0));
                assertEquals(expected, influence.scaleStressPascals(HandleAxis.WIDTH, layer, state), 200);
            }
        }
    }
}
