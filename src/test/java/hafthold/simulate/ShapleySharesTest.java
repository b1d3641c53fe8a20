package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ShapleySharesTest {

    /**
     * The glove game, a textbook example (from memory: one player has a left glove, two have a right one, a pair is worth
     * 1): the left-hander's share is 2/3, the others' 1/6 each.
     */
    @Test
    void sharesOutTheGloveGameAsTextbooksDo() {
        double[][] shares = ShapleyShares.of(3, set -> new double[] {(set & 1) == 1 && (set & 6) != 0 ? 1 : 0});
        assertArrayEquals(new double[] {2 / 3.0}, shares[0], 1e-12);
        assertArrayEquals(new double[] {1 / 6.0}, shares[1], 1e-12);
        assertArrayEquals(new double[] {1 / 6.0}, shares[2], 1e-12);
    }

    @Test
    void whatOnlyAddsUpGetsWhatItAdds() {
        double[] each = {0.3, -2, 5, 0.01};
        double[][] shares = ShapleyShares.of(4, set -> {
            double sum = 7;
            for (int thing = 0; thing < each.length; thing++) {
                sum += (set >> thing & 1) * each[thing];
            }
            return new double[] {sum, -sum};
        });
        for (int thing = 0; thing < each.length; thing++) {
            assertEquals(each[thing], shares[thing][0], 1e-12);
            assertEquals(-each[thing], shares[thing][1], 1e-12);
        }
    }

    @Test
    void sharesAddUpToTheWholeHoweverTheThingsWorkTogether() {
        double[][] shares = ShapleyShares.of(3, set -> new double[] {Math.exp(Integer.bitCount(set)) + set * set});
        double sum = shares[0][0] + shares[1][0] + shares[2][0];
        assertEquals(Math.exp(3) + 49 - 1, sum, 1e-9);
    }
}
