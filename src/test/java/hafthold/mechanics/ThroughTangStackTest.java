package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ThroughTangStackTest {
    private static final double FACE = 300e-6;
    private static final StackSpring GUARD = new StackSpring("guard", 6e-3, FACE, 105e9, Double.POSITIVE_INFINITY);
    private static final StackSpring LEATHER = new StackSpring("leather", 12e-3, FACE, 0.1e9, 20e6);
    private static final StackSpring BURL = new StackSpring("burl", 45e-3, FACE, 1.2e9, 8e6);

    /** A tang of 30 mm2 drawn up with 500 N. */
    private static ThroughTangStack stack(double preload) {
        return new ThroughTangStack(List.of(GUARD, LEATHER, BURL), 30e-6, 200e9, preload);
    }

    private static double softness() {
        return 6e-3 / (105e9 * FACE) + 12e-3 / (0.1e9 * FACE) + 45e-3 / (1.2e9 * FACE) + 63e-3 / (200e9 * 30e-6);
    }

    @Test
    void contributionsAddUpAgainstTheSteel() {
        ThroughTangStack.State dry = stack(0).respond(stack(0).drawnUp(), List.of(0.0, -0.01, -0.004), 0.0001);
        assertEquals(-6e-3 * 0.0001, dry.contributionsMetres().get(0), 1e-15);
        assertEquals(12e-3 * -0.0101, dry.contributionsMetres().get(1), 1e-15);
        assertEquals(45e-3 * -0.0041, dry.contributionsMetres().get(2), 1e-15);
        assertEquals(6e-7 + 12e-3 * 0.0101 + 45e-3 * 0.0041, dry.gapMetres(), 1e-12);
        assertFalse(dry.isTight());
        assertEquals(1, dry.firstJointToOpen());
    }

    @Test
    void preloadIsUsedUpBeforeAGapOpens() {
        ThroughTangStack stack = stack(500);
        double spring = 500 * softness();
        ThroughTangStack.State half = stack.respond(stack.drawnUp(), List.of(0.0, -spring / 2 / 12e-3, 0.0), 0);
        assertEquals(250, half.forceNewtons(), 1e-9);
        assertTrue(half.isTight());
        ThroughTangStack.State open = stack.respond(stack.drawnUp(), List.of(0.0, -2 * spring / 12e-3, 0.0), 0);
        assertEquals(spring, open.gapMetres(), 1e-12);
        assertEquals(0, open.forceNewtons());
    }

    /** A damp season crushes the burl; back at the start the lost length is a gap. */
    @Test
    void crushedPartLeavesAGap() {
        ThroughTangStack stack = stack(0);
        double most = 8e6 * FACE;
        double swelling = 3 * most * softness() / 45e-3;
        ThroughTangStack.State damp = stack.respond(stack.drawnUp(), List.of(0.0, 0.0, swelling), 0);
        assertEquals(most, damp.forceNewtons(), 1e-6);
        assertEquals(2 * most * softness(), damp.setsMetres().get(2), 1e-12);
        ThroughTangStack.State back = stack.respond(damp, List.of(0.0, 0.0, 0.0), 0);
        assertEquals(2 * most * softness(), back.gapMetres(), 1e-12);
        ThroughTangStack.State again = stack.respond(back, List.of(0.0, 0.0, swelling), 0);
        assertEquals(damp.setsMetres().get(2), again.setsMetres().get(2), 1e-12);
    }

    @Test
    void steelAndPartsGrowingTogetherChangeNothing() {
        ThroughTangStack stack = stack(500);
        ThroughTangStack.State warm = stack.respond(stack.drawnUp(), List.of(0.001, 0.001, 0.001), 0.001);
        assertEquals(500, warm.forceNewtons(), 1e-9);
    }

    @Test
    void refusesStacksThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new ThroughTangStack(List.of(), 1e-5, 2e11, 0));
        assertThrows(IllegalArgumentException.class, () -> new StackSpring("air", 0, FACE, 1e9, 1e6));
        ThroughTangStack stack = stack(0);
        ThroughTangStack.State drawn = stack.drawnUp();
        assertThrows(IllegalArgumentException.class, () -> stack.respond(drawn, List.of(0.0), 0));
    }
}
