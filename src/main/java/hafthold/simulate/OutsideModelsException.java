package hafthold.simulate;

/** The models cannot answer for these figures; the message says which and why. */
public final class OutsideModelsException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Says what lies outside. */
    public OutsideModelsException(String message) {
        super(message);
    }
}
