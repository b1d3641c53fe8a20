package hafthold.knife;

/**
 * Something about a build cannot be: a size no knife has, parts that do not fit together. The reader of a build file
 * adds file and line.
 */
public final class UnfitBuildException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String key;
    private final String value;
    private final String expectation;

    /**
     * Says what does not fit.
     *
     * @param key path of the part as a build file names it, such as {@code thickness} or {@code pins[2].along}; counts
     *     from 1
     * @param value what it is, for people
     * @param expectation what would be right
     */
    public UnfitBuildException(String key, String value, String expectation) {
        super(key + ": '" + value + "' is not right: expected " + expectation);
        this.key = key;
        this.value = value;
        this.expectation = expectation;
    }

    /** Path of the part as a build file names it. */
    public String key() {
        return key;
    }

    /** What it is, for people. */
    public String value() {
        return value;
    }

    /** What would be right. */
    public String expectation() {
        return expectation;
    }
}
