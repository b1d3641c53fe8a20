package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.simulate.BlankYear;
import hafthold.simulate.BlankYear.Week;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class DaySpanProperties {
    private static final List<Week> WEEKS = IntStream.range(0, BlankYear.WEEKS)
            .mapToObj(week -> new Week(7 * week, week == 51 ? 364 : 7 * week + 6, 20, 0.5, 0.1, 0.1, 0.1))
            .toList();

    /** Every day lies in a span exactly where its week passes, New Year or not. */
    @Property
    void spansHoldTheDaysOfTheWeeksThatPass(@ForAll long bits, @ForAll @IntRange(max = 364) int day) {
        BitSet passing = BitSet.valueOf(new long[] {bits});
        List<DaySpan> spans = DaySpan.of(WEEKS, passing::get);
        long holding = spans.stream().filter(span -> span.has(day)).count();
        assertEquals(passing.get(BlankYear.weekOf(day)) ? 1 : 0, holding);
        int days = spans.stream().mapToInt(DaySpan::days).sum();
        int expected = IntStream.range(0, BlankYear.WEEKS)
                .filter(passing::get)
                .map(week -> WEEKS.get(week).lastDay() - WEEKS.get(week).firstDay() + 1)
                .sum();
        assertEquals(expected, days);
    }

    /** After so many days of waiting it has begun, and not a day sooner. */
    @Property
    void waitingEndsOnItsFirstDay(
            @ForAll @IntRange(max = 364) int first,
            @ForAll @IntRange(max = 364) int last,
            @ForAll @IntRange(max = 364) int day) {
        DaySpan span = new DaySpan(first, last);
        int wait = span.daysAfter(day);
        assertTrue(span.has((day + wait) % 365));
        if (wait > 0) {
            assertEquals(first, (day + wait) % 365);
            assertTrue(!span.has((day + wait - 1) % 365));
        }
    }
}
