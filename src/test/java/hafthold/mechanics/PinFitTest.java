package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PinFitTest {
    /** A plain hole of d grows to d (1 + strain): 6 mm at -1 % closes by 0.06 mm. */
    @Test
    void holeGrowsAsIfItWereFilled() {
        PinFit tight = new PinFit(6e-3, 0, ClearanceFiller.NONE, 11e-6);
        assertEquals(-0.06e-3, tight.gapMetres(-0.01, 0), 1e-12);
        assertEquals(0.06e-3, tight.gapMetres(0.01, 0), 1e-12);
    }

    @Test
    void hardFillerIsNoClearance() {
        PinFit filled = new PinFit(6e-3, 0.05e-3, ClearanceFiller.HARD, 0);
        assertEquals(-0.0605e-3, filled.gapMetres(-0.01, 0), 1e-12);
        assertEquals(-0.0105e-3, new PinFit(6e-3, 0.05e-3, ClearanceFiller.SOFT, 0).gapMetres(-0.01, 0), 1e-12);
    }

    @Test
    void warmPinFillsItsHole() {
        PinFit brass = new PinFit(6e-3, 0, ClearanceFiller.NONE, 19e-6);
        assertEquals(-6e-3 * 19e-6 * 20, brass.gapMetres(0, 20), 1e-15);
        assertEquals(9e-3 * 19e-6 * 20 - 0.05e-3, brass.headProudMetres(9e-3, 0.05e-3, 20), 1e-15);
    }

    @Test
    void clearanceSavesTheScale() {
        LekhnitskiiHole walnut = LekhnitskiiHole.throughScale(Handles.WALNUT_FLAT);
        double tight = new PinFit(6e-3, 0, ClearanceFiller.NONE, 0)
                .contact(walnut, 0, -0.01, 0)
                .largestTensionAcrossPascals();
        double loose = new PinFit(6e-3, 0.05e-3, ClearanceFiller.NONE, 0)
                .contact(walnut, 0, -0.01, 0)
                .largestTensionAcrossPascals();
        double filled = new PinFit(6e-3, 0.05e-3, ClearanceFiller.HARD, 0)
                .contact(walnut, 0, -0.01, 0)
                .largestTensionAcrossPascals();
        assertEquals(6.36e6, tight, 0.005e6);
        assertEquals(tight, filled, 1e-9 * tight);
        assertTrue(loose < 0.3 * tight);
    }

    @Test
    void refusesPinsThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new PinFit(0, 0, ClearanceFiller.NONE, 0));
        assertThrows(IllegalArgumentException.class, () -> new PinFit(6e-3, -1e-5, ClearanceFiller.NONE, 0));
        assertThrows(IllegalArgumentException.class, () -> new PinFit(6e-3, 0, ClearanceFiller.NONE, Double.NaN));
    }
}
