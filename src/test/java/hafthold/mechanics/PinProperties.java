package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class PinProperties {
    private static final LekhnitskiiHole WALNUT = LekhnitskiiHole.throughScale(Handles.WALNUT_FLAT);

    /** At the solver's own angles contact is exact: no pull, no overlap, no pressure across a gap. */
    @Property(tries = 60)
    void wallIsPressedOrOpenNeverBoth(
            @ForAll @Scale(6) @DoubleRange(min = -0.01, max = 0.01) double along,
            @ForAll @Scale(6) @DoubleRange(min = -0.01, max = 0.01) double across) {
        PinContact contact = WALNUT.pinContact(along, across);
        double size = 1e9 * (Math.abs(along) + Math.abs(across));
        for (int j = 0; j <= 64; j++) {
            assertTrue(contact.pressurePascals(j * Math.PI / 128) >= -1e-9 * size);
        }
        if (along <= 0 && across <= 0) {
            assertEquals(0, contact.largestPressurePascals());
        }
    }

    @Property(tries = 40)
    void stressGrowsInStepWithSqueeze(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.005) double along,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.01) double across,
            @ForAll @Scale(3) @DoubleRange(min = 0.1, max = 2) double factor) {
        double once = WALNUT.pinContact(along, across).hoopPascals(0.4);
        double scaled = WALNUT.pinContact(factor * along, factor * across).hoopPascals(0.4);
        assertEquals(factor * once, scaled, 1e-6 * Math.abs(once) + 1e-3);
    }

    @Property(tries = 40)
    void turningThePlateTurnsTheStress(
            @ForAll @Scale(6) @DoubleRange(min = 0.004, max = 0.01) double along,
            @ForAll @Scale(6) @DoubleRange(min = 0.004, max = 0.01) double across,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 1.5707) double angle) {
        double here = WALNUT.pinContact(along, across).hoopPascals(angle);
        double turned = WALNUT.turned().pinContact(across, along).hoopPascals(Math.PI / 2 - angle);
        assertEquals(here, turned, 1e-6 * 1e7);
    }

    @Property
    void gapFollowsTheScaleAndTheClearance(
            @ForAll @Scale(6) @DoubleRange(min = -0.02, max = 0.02) double strain,
            @ForAll @Scale(2) @DoubleRange(min = 0, max = 0.3) double clearanceMillimetres) {
        PinFit open = new PinFit(6e-3, clearanceMillimetres * 1e-3, ClearanceFiller.NONE, 17e-6);
        PinFit filled = new PinFit(6e-3, clearanceMillimetres * 1e-3, ClearanceFiller.HARD, 17e-6);
        assertEquals(open.gapMetres(strain, 0) - open.openClearanceMetres(), filled.gapMetres(strain, 0), 1e-15);
        assertTrue(open.gapMetres(strain, 0) >= filled.gapMetres(strain, 0));
        assertTrue(open.gapMetres(strain, -30) >= open.gapMetres(strain, 0));
    }
}
