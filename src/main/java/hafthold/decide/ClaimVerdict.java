package hafthold.decide;

import java.util.Locale;

/** Whose affair a step on a returned knife is. */
public enum ClaimVerdict {
    /** The weather where it lives explains what was measured, with everything else as usual. */
    WEATHER,
    /** The wood was wetter or drier at final sanding than was thought. */
    FINISH,
    /** The air where it lives is drier or damper than that of the tables. */
    PLACE,
    /** Something that happened to it. */
    USE,
    /** Both the wood at final sanding and the air where it lives. */
    FINISH_AND_PLACE,
    /** Something that happened to it, and the wood at final sanding. */
    FINISH_AND_USE,
    /** Something that happened to it, and the air where it lives. */
    PLACE_AND_USE,
    /** More than one of these would do, and what was measured does not tell them apart. */
    OPEN,
    /** None of these explains it. */
    NOT_EXPLAINED,
    /** What was measured may be misread by more than any stock or home would move it: it tells next to nothing. */
    TOO_COARSE;

    /** True where it says what it was. */
    public boolean namesACause() {
        return this != OPEN && this != NOT_EXPLAINED && this != TOO_COARSE;
    }

    /** The word used in answers. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
