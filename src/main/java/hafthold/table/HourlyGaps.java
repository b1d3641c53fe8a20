package hafthold.table;

/** Straight lines over short gaps in a closed hourly series; a gap is marked by NaN. */
final class HourlyGaps {
    private HourlyGaps() {}

    /** First hour of a run of gaps longer than allowed, -1 where there is none. */
    static int tooLong(double[] closed, int allowed) {
        int run = 0;
        for (int i = 0; i < 2 * closed.length; i++) {
            run = Double.isNaN(closed[i % closed.length]) ? run + 1 : 0;
            if (run > allowed) {
                return (i - run + 1) % closed.length;
            }
        }
        return -1;
    }

    /** Fills every gap in place and counts the hours filled; at least one hour must be there. */
    static int fill(double[] closed) {
        int n = closed.length;
        int anchor = 0;
        while (Double.isNaN(closed[anchor])) {
            anchor++;
        }
        int filled = 0;
        int last = anchor;
        for (int i = anchor + 1; i <= anchor + n; i++) {
            if (Double.isNaN(closed[i % n])) {
                continue;
            }
            double from = closed[last % n];
            double to = closed[i % n];
            for (int j = last + 1; j < i; j++) {
                closed[j % n] = from + (to - from) * (j - last) / (i - last);
                filled++;
            }
            last = i;
        }
        return filled;
    }
}
