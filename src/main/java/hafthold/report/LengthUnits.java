package hafthold.report;

/** Units a reader wants movements in. */
public enum LengthUnits {
    /** Millimetres. */
    MM,
    /** Thousandths of an inch. */
    THOU,
    /** Millimetres, and thousandths of an inch beside them. */
    BOTH
}
