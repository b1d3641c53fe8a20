package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import org.junit.jupiter.api.Test;

class HeldStressTest {
    @Test
    void halfOfAHeldStressRemains() {
        assertEquals(new Band(1e6, 2e6, 4e6), HeldStress.USUAL.sizePascals(-4e6));
        assertEquals(Evidence.ASSUMED, HeldStress.USUAL.remainingShare().evidence());
    }

    @Test
    void refusesMoreThanAll() {
        Figure more = new Figure(new Band(0.5, 1, 1.2), Evidence.ASSUMED, "workshop-judgement", "");
        assertThrows(IllegalArgumentException.class, () -> new HeldStress(more));
    }
}
