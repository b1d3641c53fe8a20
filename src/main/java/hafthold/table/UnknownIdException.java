package hafthold.table;

import java.util.Collection;

/** Someone asked for a place, material, treatment or finish that no table has. */
public final class UnknownIdException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String expectation;

    /**
     * Says what was asked for and what is nearest to it.
     *
     * @param kind what sort of thing, such as "place"
     * @param typed what was asked for
     * @param known ids to choose from
     * @param listing how to see them all
     */
    public UnknownIdException(String kind, String typed, Collection<String> known, String listing) {
        this(kind, typed, meant(typed, known) + " (" + listing + ")");
    }

    /**
     * Says how what was asked for is written.
     *
     * @param hint how, as a clause that begins with its comma or semicolon
     */
    static UnknownIdException hinting(String kind, String typed, String hint) {
        return new UnknownIdException(kind, typed, hint);
    }

    private UnknownIdException(String kind, String typed, String hint) {
        super("no " + kind + " '" + typed + "'" + hint);
        this.expectation = "the id of a " + kind + hint;
    }

    private static String meant(String typed, Collection<String> known) {
        return NearestWord.among(typed, known)
                .map(near -> "; did you mean " + near + "?")
                .orElse("");
    }

    /** What would be right, for a message that names the value itself. */
    String expectation() {
        return expectation;
    }
}
