package hafthold.report.chart;

import java.util.List;

/**
 * One row of a {@link VerdictChart}.
 *
 * @param label what it counts
 * @param shares of stays, care, change, refuse and unknown, 0 to 1
 */
public record VerdictBar(String label, List<Double> shares) {
    private static final int VERDICTS = 5;

    /** Keeps its own copy; rejects anything but five shares. */
    public VerdictBar {
        shares = List.copyOf(shares);
        if (shares.size() != VERDICTS) {
            throw new IllegalArgumentException("a bar needs five shares, got " + shares.size());
        }
    }
}
