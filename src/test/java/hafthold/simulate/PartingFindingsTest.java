package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.mechanics.JointLine;
import org.junit.jupiter.api.Test;

class PartingFindingsTest {

    /** Two equal bars of 3 and 6 GPa that differ by 0.1 %: 0.001 / (1/3 + 1/6) GPa = 2 MPa, pull and press alike. */
    @Test
    void joinedBarsShareTheirDifference() {
        double stress = new JointLine(3e9, 6e9).pascalsPerStrain() * 0.001;
        assertEquals(2e6, stress, 1);
        assertEquals(0.001, stress / 3e9 + stress / 6e9, 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new JointLine(0, 1));
    }

    /** Dehydration strain by image correlation, PMC2692825 (2009): dentine and enamel 16 to 1. */
    @Test
    void dentineMovesSixteenTimesAsMuchAsEnamel() {
        assertEquals(16, ToothLayers.DENTINE.value() / ToothLayers.ENAMEL.value(), 0.5);
        assertTrue(ToothLayers.mismatch(0.03) > 0.003);
    }
}
