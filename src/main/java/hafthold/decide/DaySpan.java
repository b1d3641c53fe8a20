package hafthold.decide;

import hafthold.air.CommonYear;
import hafthold.simulate.BlankYear;
import hafthold.simulate.BlankYear.Week;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Days of a year that repeats, from the first to the last, both included; it may run over New Year.
 *
 * @param firstDay from 0 on 1 January
 * @param lastDay likewise
 */
public record DaySpan(int firstDay, int lastDay) {

    /** Runs of weeks that pass a test, in the order of the year; one whole year where all do. */
    static List<DaySpan> of(List<Week> weeks, IntPredicate passes) {
        int count = BlankYear.WEEKS;
        List<DaySpan> spans = new ArrayList<>();
        for (int week = 0; week < count; week++) {
            if (passes.test(week) && !passes.test((week + count - 1) % count)) {
                int last = week;
                while (passes.test((last + 1) % count)) {
                    last++;
                }
                spans.add(new DaySpan(
                        weeks.get(week).firstDay(), weeks.get(last % count).lastDay()));
            }
        }
        return spans.isEmpty() && passes.test(0) ? List.of(new DaySpan(0, CommonYear.DAYS - 1)) : spans;
    }

    /** Number of days. */
    public int days() {
        return Math.floorMod(lastDay - firstDay, CommonYear.DAYS) + 1;
    }

    /** True for the whole year. */
    public boolean isWholeYear() {
        return days() == CommonYear.DAYS;
    }

    /** True where a day, from 0 on 1 January, lies in it. */
    public boolean has(int day) {
        return Math.floorMod(day - firstDay, CommonYear.DAYS) < days();
    }

    /** Days from a day until it begins; 0 for a day within. */
    public int daysAfter(int day) {
        return has(day) ? 0 : Math.floorMod(firstDay - day, CommonYear.DAYS);
    }
}
