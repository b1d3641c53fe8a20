package hafthold.quantity;

/** A text that should be a quantity is none; the message says what was read and what would be right. */
public final class QuantityFormatException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Takes the text as typed and what was expected, both for the person who typed it. */
    public QuantityFormatException(String typed, String expectation) {
        super("'" + typed + "' is not right: " + expectation);
    }
}
