package hafthold.table;

import java.util.Collection;

/** Someone asked for a place, material, treatment or finish that no table has. */
public final class UnknownIdException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * Says what was asked for and what is nearest to it.
     *
     * @param kind what sort of thing, such as "place"
     * @param typed what was asked for
     * @param known ids to choose from
     * @param listing command that lists them
     */
    public UnknownIdException(String kind, String typed, Collection<String> known, String listing) {
        super("no " + kind + " '" + typed + "'"
                + NearestWord.of(typed, known)
                        .map(near -> "; did you mean " + near + "?")
                        .orElse("")
                + " (" + listing + " lists them all)");
    }
}
