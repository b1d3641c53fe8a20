package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quarter model with turned constants against a full-width model with the whole turned stiffness. */
class RingAngleTest {
    private static final double ACROSS = 0.010;
    private static final double THROUGH = 0.0055;
    private static final double OUTER = 7e-3;

    private static SectionInfluence quarter(double ringAngle) {
        return BondedSection.acrossWidth(13e-3, Handles.layup(Handles.WALNUT_FLAT.turnedAboutLength(ringAngle)))
                .influence(OutOfSection.HELD, 0);
    }

    private static double[] swelling(SectionInfluence influence, double ringAngle) {
        double s = Math.pow(Math.sin(ringAngle), 2);
        return influence.evenScaleStrain(0, ACROSS * (1 - s) + THROUGH * s, ACROSS * s + THROUGH * (1 - s));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 90})
    void flatAndQuarterSawnAreTheSameInBothPrograms(int degrees) {
        double angle = Math.toRadians(degrees);
        FullWidthElements full = new FullWidthElements(angle, ACROSS, THROUGH);
        SectionInfluence quarter = quarter(angle);
        double[] swelling = swelling(quarter, angle);
        for (int side = -1; side <= 1; side += 2) {
            assertEquals(quarter.value(SectionOutput.EDGE_OUTER, swelling), full.outerOffset(side), 1e-12);
            assertEquals(quarter.value(SectionOutput.FACE_EDGE, swelling), full.cornerRise(side), 1e-12);
        }
        assertEquals(quarter.value(SectionOutput.FACE_CENTRE, swelling), full.centreRise(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(ints = {15, 30, 45, 60, 75})
    void betweenThemTheQuarterModelGivesTheMeanOfBothFlanks(int degrees) {
        double angle = Math.toRadians(degrees);
        FullWidthElements full = new FullWidthElements(angle, ACROSS, THROUGH);
        SectionInfluence quarter = quarter(angle);
        double[] swelling = swelling(quarter, angle);
        double mean = (full.outerOffset(1) + full.outerOffset(-1)) / 2;
        assertEquals(mean, quarter.value(SectionOutput.EDGE_OUTER, swelling), 0.02 * mean);
        double rise = (full.cornerRise(1) + full.cornerRise(-1)) / 2;
        assertEquals(rise, quarter.value(SectionOutput.FACE_EDGE, swelling), 0.02 * rise);
        assertEquals(full.centreRise(), quarter.value(SectionOutput.FACE_CENTRE, swelling), 0.005 * full.centreRise());
    }

    @ParameterizedTest
    @ValueSource(ints = {15, 30, 45, 60, 75})
    void flanksLeanByNoMoreThanTheFreeShear(int degrees) {
        double angle = Math.toRadians(degrees);
        FullWidthElements full = new FullWidthElements(angle, ACROSS, THROUGH);
        double lean = Math.abs(full.outerOffset(1) - full.outerOffset(-1)) / 2;
        double free = new FlankLean(angle).leanMetres(ACROSS, THROUGH, OUTER);
        assertTrue(0.6 * free < lean && lean < free, lean + " of " + free);
    }

    @Test
    void uprightAndFlatRingsDoNotLean() {
        assertEquals(0, new FlankLean(0).leanMetres(ACROSS, THROUGH, OUTER));
        assertEquals(0, new FlankLean(Math.PI / 2).leanMetres(ACROSS, THROUGH, OUTER), 1e-18);
        assertEquals(0.0045 * OUTER, new FlankLean(Math.PI / 4).leanMetres(ACROSS, THROUGH, OUTER), 1e-15);
    }
}
