package hafthold.mechanics;

/** What happens at right angles to a section (generalised plane strain). */
public enum OutOfSection {
    /** The extension is given; zero unless its mode is used. */
    HELD,
    /** The whole section, steel included, extends evenly until no force is left. */
    FREE
}
