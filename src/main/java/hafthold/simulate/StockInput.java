package hafthold.simulate;

import java.util.Locale;

/** What is not known of a block on the shelf. */
public enum StockInput {
    /** How fast water goes through it. */
    DIFFUSIVITY,
    /** How much faster along the grain. */
    ALONG_RATIO,
    /** How much water it holds at rest. */
    SORPTION,
    /** How far it swells. */
    SWELLING,
    /** How wet it was once. */
    WET_ONCE,
    /** How long it had dried before it came into the storage. */
    DRIED_FOR,
    /** In which air it had. */
    DRIED_IN,
    /** How far the hygrometer of the storage is off. */
    HYGROMETER,
    /** How tight its wax is. */
    SEAL;

    /** The word of keys and of data. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** True for what is drawn evenly between two ends; all others are positions in a range, as {@link Doubt} has them. */
    boolean isEven() {
        return this == WET_ONCE || this == DRIED_FOR || this == DRIED_IN;
    }
}
