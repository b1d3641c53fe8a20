package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SectionInfluenceTest {
    private static final SectionLayer TANG = new SectionLayer(4e-3, Handles.STEEL);
    private static final SectionLayer GLUE = new SectionLayer(0.1e-3, Handles.EPOXY);
    private static final SectionLayer SCALE = new SectionLayer(7e-3, Handles.WALNUT_FLAT);

    private static SectionInfluence lined(SectionLayer liner) {
        return BondedSection.acrossWidth(13e-3, new Layup(TANG, GLUE, List.of(liner), SCALE))
                .influence();
    }

    @Test
    void everyModeHasItsOwnColumn() {
        SectionInfluence influence = lined(new SectionLayer(1e-3, Handles.ACRYLIC));
        boolean[] used = new boolean[influence.columns()];
        used[influence.tangColumn()] = true;
        used[influence.glueColumn()] = true;
        for (HandleAxis axis : HandleAxis.values()) {
            used[influence.linerColumnOf(0, axis)] = true;
            for (int k = 0; k < influence.section().depthLayers(); k++) {
                used[influence.scaleColumnOf(axis, k)] = true;
            }
        }
        for (boolean one : used) {
            assertTrue(one);
        }
    }

    /** A steel liner glued to the tang by steel-stiff glue is a thicker tang. */
    @Test
    void steelLinerIsMoreTang() {
        SectionLayer stiffGlue = new SectionLayer(0.1e-3, Handles.STEEL);
        SectionInfluence lined = BondedSection.acrossWidth(
                        13e-3, new Layup(TANG, stiffGlue, List.of(new SectionLayer(0.9e-3, Handles.STEEL)), SCALE))
                .influence();
        SectionInfluence thick = BondedSection.acrossWidth(
                        13e-3, new Layup(new SectionLayer(6e-3, Handles.STEEL), stiffGlue, SCALE))
                .influence();
        double[] a = lined.evenScaleStrain(0, 0.01, 0.008);
        double[] b = thick.evenScaleStrain(0, 0.01, 0.008);
        // The steel corner that offsets count from dents a little where the scale pulls on it; slopes do not see that.
        double slope = thick.value(SectionOutput.EDGE_OUTER, b) - thick.value(SectionOutput.EDGE_MID, b);
        assertEquals(
                slope,
                lined.value(SectionOutput.EDGE_OUTER, a) - lined.value(SectionOutput.EDGE_MID, a),
                0.001 * slope);
        double face = thick.value(SectionOutput.FACE_CENTRE, b);
        assertEquals(face, lined.value(SectionOutput.FACE_CENTRE, a), 0.001 * face);
        assertEquals(
                thick.value(SectionOutput.GLUE_SHEAR_2_MM, b),
                lined.value(SectionOutput.SCALE_GLUE_SHEAR_2_MM, a),
                0.01 * thick.value(SectionOutput.GLUE_SHEAR_2_MM, b));
    }

    /** Two liners, three glue lines: warmed evenly, parts of equal expansion strain nothing. */
    @Test
    void evenExpansionOfLinedHandleStrainsNothing() {
        SectionLayer liner = new SectionLayer(0.8e-3, Handles.ACRYLIC);
        SectionInfluence influence = BondedSection.acrossWidth(
                        13e-3, new Layup(TANG, GLUE, List.of(liner, liner), SCALE))
                .influence();
        double[] all = influence.evenScaleStrain(0.001, 0.001, 0.001);
        all[influence.tangColumn()] = 0.001;
        all[influence.glueColumn()] = 0.001;
        for (int i = 0; i < 2; i++) {
            for (HandleAxis axis : HandleAxis.values()) {
                all[influence.linerColumnOf(i, axis)] = 0.001;
            }
        }
        assertEquals(0, influence.value(SectionOutput.GLUE_SHEAR_1_MM, all), 10);
        assertEquals(0, influence.value(SectionOutput.SCALE_GLUE_PEEL_1_MM, all), 10);
        assertEquals(0, influence.value(SectionOutput.EDGE_OUTER, all), 1e-12);
        assertEquals(0.001 * 10.9e-3, influence.value(SectionOutput.FACE_EDGE, all), 1e-12);
        assertEquals(0.001 * 10.9e-3, influence.value(SectionOutput.FREE_FACE, all), 1e-12);
    }

    @Test
    void swellingLinerPushesTheScaleOutAndLoadsBothGlueLines() {
        SectionInfluence influence = lined(new SectionLayer(1e-3, OrthotropicElasticity.isotropic(5e9, 0.3)));
        double[] amplitudes = new double[influence.columns()];
        amplitudes[influence.linerColumnOf(0, HandleAxis.WIDTH)] = 0.01;
        assertTrue(influence.value(SectionOutput.GLUE_SHEAR_1_MM, amplitudes) > 1e6);
        assertTrue(influence.value(SectionOutput.SCALE_GLUE_SHEAR_1_MM, amplitudes) < 0);
        assertTrue(influence.value(SectionOutput.EDGE_TANG_LINE, amplitudes) > 0);
        amplitudes[influence.linerColumnOf(0, HandleAxis.THICKNESS)] = 0.01;
        assertEquals(10e-6, influence.value(SectionOutput.FREE_FACE, amplitudes), 1e-12);
    }

    /** Layers add up to the whole whatever they are: coarse and fine depth layers answer an even strain alike. */
    @Test
    void depthLayersDoNotChangeAnEvenStrain() {
        Layup layup = new Layup(TANG, GLUE, SCALE);
        SectionInfluence usual = BondedSection.acrossWidth(13e-3, layup).influence();
        SectionInfluence two = new BondedSection(HandleAxis.WIDTH, 13e-3, layup, List.of(0.0, 0.5, 1.0)).influence();
        SectionInfluence ten = new BondedSection(
                        HandleAxis.WIDTH, 13e-3, layup, List.of(0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0))
                .influence();
        for (SectionOutput output : SectionOutput.values()) {
            double expected = usual.value(output, usual.evenScaleStrain(0.0003, 0.01, 0.008));
            double tolerance = 0.003 * Math.abs(expected);
            assertEquals(expected, two.value(output, two.evenScaleStrain(0.0003, 0.01, 0.008)), tolerance);
            assertEquals(expected, ten.value(output, ten.evenScaleStrain(0.0003, 0.01, 0.008)), tolerance);
        }
    }

    /** A damp outer face on a dry core: the flank is proud outside and pulled in below, the core is in tension. */
    @Test
    void wetSkinPullsOnTheCore() {
        SectionInfluence influence = Handles.walnut().influence();
        int last = influence.section().depthLayers() - 1;
        double[] skin = new double[influence.columns()];
        skin[influence.scaleColumnOf(HandleAxis.WIDTH, last)] = 0.01;
        assertTrue(influence.scaleStressPascals(HandleAxis.WIDTH, last, skin) < -5e6);
        assertTrue(influence.scaleStressPascals(HandleAxis.WIDTH, last - 1, skin) > 0);
        assertEquals(
                influence.largestScaleTensionPascals(HandleAxis.WIDTH, skin),
                influence.scaleStressPascals(HandleAxis.WIDTH, last - 1, skin));
        assertTrue(influence.value(SectionOutput.EDGE_OUTER, skin) > 4 * influence.value(SectionOutput.EDGE_MID, skin));
    }

    /** Every coefficient is the answer to one unit, so a year is a matrix product. */
    @Test
    void coefficientsAreAnswersToUnits() {
        SectionInfluence influence = Handles.walnut().influence();
        for (int column = 0; column < influence.columns(); column++) {
            double[] unit = new double[influence.columns()];
            unit[column] = 1;
            for (SectionOutput output : SectionOutput.values()) {
                assertEquals(influence.coefficient(output, column), influence.value(output, unit));
                assertEquals(influence.coefficients(output)[column], influence.value(output, unit));
            }
        }
    }

    @Test
    void heldExtensionIsAModeOfItsOwn() {
        SectionInfluence held = Handles.walnut().influence(OutOfSection.HELD, 0);
        SectionInfluence free = Handles.walnut().influence(OutOfSection.FREE, 0);
        double[] swelling = free.evenScaleStrain(0.001, 0.01, 0.008);
        double extension = free.value(SectionOutput.EXTENSION_OUT, swelling);
        double[] same = held.evenScaleStrain(0.001, 0.01, 0.008);
        same[held.extensionColumn()] = extension;
        for (SectionOutput output : SectionOutput.values()) {
            double expected = free.value(output, swelling);
            assertEquals(expected, held.value(output, same), 1e-9 * Math.abs(expected), output.name());
        }
        assertThrows(IllegalStateException.class, free::extensionColumn);
    }

    @Test
    void refusesWrongColumns() {
        SectionInfluence influence = Handles.walnut().influence();
        assertThrows(IndexOutOfBoundsException.class, () -> influence.linerColumnOf(0, HandleAxis.WIDTH));
        assertThrows(IndexOutOfBoundsException.class, () -> influence.scaleColumnOf(HandleAxis.WIDTH, 99));
        assertThrows(IllegalArgumentException.class, () -> influence.value(SectionOutput.EDGE_MID, new double[3]));
        double[] none = new double[influence.columns()];
        assertThrows(IllegalArgumentException.class, () -> influence.scaleStressPascals(HandleAxis.THICKNESS, 0, none));
    }
}
