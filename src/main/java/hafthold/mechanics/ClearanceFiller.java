package hafthold.mechanics;

/** What fills the room between a pin and its hole. */
public enum ClearanceFiller {
    /** Nothing. */
    NONE,
    /** Something that gives, such as a flexible sealant or wax; counts as open. */
    SOFT,
    /** Hard epoxy or the like: the scale meets it as if it were pin. */
    HARD
}
