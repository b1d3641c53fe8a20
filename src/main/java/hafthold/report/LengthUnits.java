package hafthold.report;

/** Units a reader wants movements in. */
public enum LengthUnits {
    /** Millimetres. */
    MM,
    /** Millimetres, and thousandths of an inch beside them. */
    INCH
}
