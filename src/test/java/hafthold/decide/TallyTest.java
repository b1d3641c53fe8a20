package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TallyTest {
    @Test
    void theUsualVerdictIsTheBestThatMoreThanHalfKeep() {
        assertEquals(Verdict.CARE, new Tally(Map.of(Verdict.STAYS, 2, Verdict.CARE, 1, Verdict.REFUSE, 2)).usual());
        assertEquals(Verdict.CARE, new Tally(Map.of(Verdict.STAYS, 2, Verdict.CARE, 2)).usual(), "half is not enough");
        assertEquals(Verdict.STAYS, new Tally(Map.of(Verdict.STAYS, 3, Verdict.CARE, 2)).usual());
        assertEquals(Verdict.UNKNOWN, new Tally(Map.of(Verdict.STAYS, 1, Verdict.UNKNOWN, 1)).usual());
    }

    @Test
    void nothingHasNoShare() {
        assertEquals(0, new Tally(Map.of()).share(Verdict.STAYS));
        assertEquals(0.25, new Tally(Map.of(Verdict.STAYS, 1, Verdict.REFUSE, 3)).share(Verdict.STAYS));
    }
}
