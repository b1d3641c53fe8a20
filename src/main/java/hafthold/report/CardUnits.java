package hafthold.report;

/** Units a customer's card gives movements in. */
public enum CardUnits {
    /** Millimetres. */
    MM,
    /** Thousandths of an inch. */
    THOU,
    /** Millimetres, and thousandths of an inch beside them. */
    BOTH
}
