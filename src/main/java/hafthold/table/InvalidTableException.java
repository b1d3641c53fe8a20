package hafthold.table;

/** A file or table cannot be used; the message names file, line, column, the value found and what is expected. */
public final class InvalidTableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * An error at one cell.
     *
     * @param file file name as the user knows it
     * @param line line in that file, from 1
     * @param column column name
     * @param value text found there
     * @param expectation what would be right
     */
    public InvalidTableException(String file, long line, String column, String value, String expectation) {
        super(file + " line " + line + ", column " + column + ": '" + value + "' is not right: expected "
                + expectation);
    }

    /**
     * An error at one key of a file that people type.
     *
     * @param key its path, such as tang.width
     */
    static InvalidTableException atKey(String file, long line, String key, String value, String expectation) {
        return atKey(file, line, key, "'" + value + "' is not right: expected " + expectation);
    }

    /** Likewise, with what is wrong in a sentence of its own. */
    static InvalidTableException atKey(String file, long line, String key, String problem) {
        return new InvalidTableException(file + " line " + line + ", " + key, problem);
    }

    /** An error of a whole file. */
    public InvalidTableException(String file, String problem) {
        super(file + ": " + problem);
    }
}
