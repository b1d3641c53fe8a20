package hafthold.table;

/**
 * How much a recorded file may lack.
 *
 * @param longGaps true where gaps of more than {@value #SHORT_GAP_HOURS} hours and up to {@value #LONGEST_GAP_HOURS} may be
 *     bridged by a straight line
 * @param partOfYear true where the file may cover a part of the year
 */
public record HourlyReading(boolean longGaps, boolean partOfYear) {
    /** Gaps of this many hours are always bridged. */
    public static final int SHORT_GAP_HOURS = 6;

    /** No gap longer than this is bridged: thirty days. */
    public static final int LONGEST_GAP_HOURS = 30 * 24;

    /** A whole year without long gaps. */
    public static final HourlyReading STRICT = new HourlyReading(false, false);

    /** A whole year, its long gaps bridged where asked for. */
    public static HourlyReading wholeYear(boolean longGaps) {
        return new HourlyReading(longGaps, false);
    }

    /** Hours that may be bridged. */
    int bridgedHours() {
        return longGaps ? LONGEST_GAP_HOURS : SHORT_GAP_HOURS;
    }
}
