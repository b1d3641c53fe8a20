package hafthold.cli;

/** The options of a call do not go together; the message says what would be right. */
final class WrongUsageException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    WrongUsageException(String message) {
        super(message);
    }
}
