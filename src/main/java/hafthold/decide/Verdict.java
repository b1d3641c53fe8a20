package hafthold.decide;

import java.util.Locale;

/** What to tell the customer about a handle, best first. */
public enum Verdict {
    /** Nothing, or nearly nothing, that fingers find. */
    STAYS,
    /** Moves with the seasons; usable with the care that goes with it. */
    CARE,
    /** Not as it stands: something about the build must change. */
    CHANGE,
    /** Do not build it for this place. */
    REFUSE,
    /** The figures do not carry an answer. */
    UNKNOWN;

    /** The word used in answers. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
