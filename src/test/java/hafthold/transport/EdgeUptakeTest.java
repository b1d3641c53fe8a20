package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class EdgeUptakeTest {
    private static final double H = 8e-3;
    private static final double B = 13e-3;
    private static final double L = 55e-3;
    private static final double ACROSS = 1.5;
    private static final double ALONG = 12;

    @Test
    void sealedEdgesAndEndsAddNothing() {
        assertEquals(1, EdgeUptake.factor(H, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, ACROSS, ALONG), 0);
    }

    /**
     * Newman 1931: the share still to come in a block is the product of those of its crossed slabs. Once the first terms
     * of their series are left, it falls as in one slab of D times the factor.
     */
    @Test
    void aBlockEndsItsSettlingAsASlabOfTheFasterDiffusivity() {
        double factor = EdgeUptake.factor(H, B, L, ACROSS, ALONG);
        double seconds = 2 * Sheet.UNIT_SECONDS;
        double block = block(seconds) / block(2 * seconds);
        double slab = toCome(factor / (H * H), seconds) / toCome(factor / (H * H), 2 * seconds);
        assertEquals(1, block / slab, 1e-3);
    }

    /** Rates of slabs that only the film holds back add: here at a Biot number of 1/1000. */
    @Test
    void aBlockThatItsFinishHoldsBackSettlesAsASlabWithMoreSurface() {
        double biot = 1e-3;
        double one = square(SettlingTime.firstRoot(biot));
        double crossed = square(SettlingTime.firstRoot(biot * B / H) * H / B)
                + square(SettlingTime.firstRoot(biot * L / H) * H / L);
        assertEquals(EdgeUptake.exposedAreaRatio(H, B, L), (one + crossed) / one, 1e-3);
    }

    @Test
    void sizesThatAreNoSizesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> EdgeUptake.factor(0, B, L, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> EdgeUptake.factor(H, B, L, 1, -1));
        assertThrows(IllegalArgumentException.class, () -> EdgeUptake.exposedAreaRatio(H, -B, L));
    }

    private static double square(double x) {
        return x * x;
    }

    private static double block(double seconds) {
        return toCome(1 / (H * H), seconds) * toCome(ACROSS / (B * B), seconds) * toCome(ALONG / (L * L), seconds);
    }

    /** Crank 1975, equation 4.18: share still to come. */
    private static double toCome(double inverseSquare, double seconds) {
        double sum = 0;
        for (int n = 0; n < 2000; n++) {
            double k = (2 * n + 1) * Math.PI;
            sum += 8 / (k * k) * Math.exp(-k * k / 4 * Sheet.DIFFUSIVITY * seconds * inverseSquare);
        }
        return sum;
    }
}
