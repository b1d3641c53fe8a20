package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.ClaimRow.Part;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds of any claim. */
class ClaimProperties {
    private static final double USUAL = ClaimOrders.steps(ClaimOrders.walnut(50), ClaimOrders.home(0), false)[0];

    /** The better it is measured, the less is left open; and what reads as is usual is consistent. */
    @Property(tries = 4)
    void preciserMeasuringNarrows(@ForAll @IntRange(min = 1, max = 4) int hundredths) {
        ClaimRow coarse = row(USUAL, hundredths / 25.0);
        ClaimRow fine = row(USUAL, hundredths / 100.0);
        assertTrue(width(fine) < width(coarse), fine.fitted() + " " + coarse.fitted());
        assertTrue(fine.consistent() && coarse.consistent());
        assertTrue(fine.asFarOut() > 0.5, "" + fine.asFarOut());
    }

    /** As far above what is usual as below it: the same verdict on either side, its parts the other way round. */
    @Property(tries = 4)
    void bothSidesAreJudgedAlike(@ForAll @IntRange(min = 4, max = 12) int hundredths) {
        ClaimRow above = row(USUAL + hundredths / 100.0, 0.03);
        ClaimRow below = row(USUAL - hundredths / 100.0, 0.03);
        assertTrue(above.of(Part.FINISH).value() > 0 && below.of(Part.FINISH).value() < 0);
        assertTrue(above.of(Part.PLACE).value() > 0 && below.of(Part.PLACE).value() < 0);
        double up = above.of(Part.FINISH).value() + above.of(Part.PLACE).value();
        double down = below.of(Part.FINISH).value() + below.of(Part.PLACE).value();
        assertEquals(up, -down, 0.4 * up);
    }

    private static ClaimRow row(double millimetres, double error) {
        return ClaimOrders.judge(ClaimOrders.history(error, false, millimetres), 200, List.of())
                .rows()
                .get(0);
    }

    private static double width(ClaimRow row) {
        return row.fitted().high() - row.fitted().low();
    }
}
