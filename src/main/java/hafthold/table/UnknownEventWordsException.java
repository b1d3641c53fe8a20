package hafthold.table;

/** The words that say when an event happens are not understood; the message says what would be right. */
public final class UnknownEventWordsException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnknownEventWordsException(String message) {
        super(message);
    }
}
