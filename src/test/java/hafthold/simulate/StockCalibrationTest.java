package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Invented blocks whose truth is worked out on a grid, judged: bands of eight of ten must hold it so often as chance allows.
 * The long count is {@link StockCampaign}; this one is short, so that it sees only what is badly off.
 */
class StockCalibrationTest {
    private static final int BLOCKS = 24;
    /** Of 24 with 80 in 100 each, fewer than 14 come 6 times in 1000 (binomial distribution). */
    private static final int LEAST = 14;

    /** Of 24 with 10 in 100 each, more than 6 come 9 times in 1000. */
    private static final int MOST_LATER = 6;

    @Test
    void bandsHoldTheTruthOfAFinerModel() {
        List<StockTrial> trials = StockTally.trials(BLOCKS, 11, 6, 600);
        StockTally tally = StockTally.of(trials);
        assertTrue(tally.mean() >= LEAST, tally::toString);
        assertTrue(tally.core() >= LEAST, tally::toString);
        assertTrue(tally.date() >= LEAST, tally::toString);
        assertTrue(tally.later() <= MOST_LATER, tally::toString);
        assertTrue(tally.readyWrongly() <= 1, tally::toString);
    }
}
