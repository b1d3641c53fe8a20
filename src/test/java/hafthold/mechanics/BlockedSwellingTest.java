package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BlockedSwellingTest {
    private static final double WEEK = 7 * 86400.0;
    private static final BlockedSwelling QUICK = new BlockedSwelling(0.006, 0, 3 * WEEK);
    private static final BlockedSwelling CREEPING = new BlockedSwelling(0.006, 0.5, 3 * WEEK);

    @Test
    void belowYieldNothingIsLost() {
        BlockedSwelling.State wet = QUICK.after(BlockedSwelling.State.UNUSED, 0.005, WEEK);
        assertEquals(0.005, wet.stressStrain(), 1e-15);
        BlockedSwelling.State back = QUICK.after(wet, 0, WEEK);
        assertEquals(0, back.gapStrain(), 1e-15);
    }

    @Test
    void beyondYieldTheExcessIsTheGapOnDryingBack() {
        BlockedSwelling.State wet = QUICK.after(BlockedSwelling.State.UNUSED, 0.010, 0);
        assertEquals(0.006, wet.stressStrain(), 1e-15);
        BlockedSwelling.State back = QUICK.after(wet, 0, WEEK);
        assertEquals(0.004, back.gapStrain(), 1e-15);
        BlockedSwelling.State second = QUICK.after(QUICK.after(back, 0.010, 0), 0, 0);
        assertEquals(0.004, second.gapStrain(), 1e-15);
    }

    /** Standard linear solid held at x: stress x (1 - s (1 - exp(-t / tau))). */
    @Test
    void heldStressRelaxesExponentially() {
        BlockedSwelling.State state = BlockedSwelling.State.UNUSED;
        for (int week = 1; week <= 12; week++) {
            state = CREEPING.after(state, 0.004, WEEK);
            assertEquals(0.004 * (1 - 0.5 * -Math.expm1(-week / 3.0)), state.stressStrain(), 1e-12);
        }
        assertEquals(0, state.set());
    }

    @Test
    void relaxedPartComesBackSlowlyAndSetDoesNot() {
        BlockedSwelling.State state = CREEPING.after(BlockedSwelling.State.UNUSED, 0.010, 0);
        state = CREEPING.after(state, 0.010, 50 * WEEK);
        BlockedSwelling.State dried = CREEPING.after(state, 0, 0);
        assertEquals(0.004 + 0.5 * 0.006, dried.gapStrain(), 1e-6);
        BlockedSwelling.State rested = CREEPING.after(dried, 0, 200 * WEEK);
        assertEquals(0.004, rested.gapStrain(), 1e-6);
    }

    @Test
    void smallStepsAndLargeStepsAgree() {
        BlockedSwelling.State once = CREEPING.after(BlockedSwelling.State.UNUSED, 0.008, 6 * WEEK);
        BlockedSwelling.State often = BlockedSwelling.State.UNUSED;
        for (int hour = 0; hour < 6 * 168; hour++) {
            often = CREEPING.after(often, 0.008, 3600);
        }
        assertEquals(once.stressStrain(), often.stressStrain(), 1e-12);
        assertTrue(once.set() > 0);
    }

    @Test
    void usualWoodIsTheMiddleOfItsRange() {
        assertEquals(0.006, BlockedSwelling.acrossGrain().yieldStrain());
        assertEquals(0.5, BlockedSwelling.acrossGrain().relaxingShare());
    }

    @Test
    void refusesNumbersOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> new BlockedSwelling(0, 0.5, WEEK));
        assertThrows(IllegalArgumentException.class, () -> new BlockedSwelling(0.006, 1, WEEK));
        assertThrows(IllegalArgumentException.class, () -> QUICK.after(BlockedSwelling.State.UNUSED, 0.001, -1));
    }
}
