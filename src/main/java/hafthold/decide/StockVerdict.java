package hafthold.decide;

import java.util.Locale;

/** Whether a block may be worked for where it goes. */
public enum StockVerdict {
    /** Mean and core are near enough to where they are to be, nine times of ten. */
    READY,
    /** Wetter than it is to be. */
    WET,
    /** Drier than it is to be. */
    DRY,
    /** What was read does not tell. */
    OPEN,
    /** What was read does not fit the block as it was described. */
    ODD,
    /** Nothing was read that could tell its moisture, and nothing was asked but how it is filled. */
    FILL_ONLY;

    /** The word of keys and of data. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
