package hafthold.source;

import java.util.Locale;

/** How well a figure is founded, strongest first. */
public enum Evidence {
    /** The workshop measured it on its own stock. */
    MEASURED,
    /** Read in a published source. */
    PUBLISHED,
    /** Worked out or judged from published figures of something near. */
    ESTIMATED,
    /** A published figure as remembered; the print was not seen again. */
    MEMORY,
    /** Chosen so that the sum can be done. */
    ASSUMED,
    /** Nothing is known. */
    UNKNOWN;

    /** The weaker of two. */
    public Evidence weaker(Evidence other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** The word used in tables: the name in lower case. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The word used in answers, which know four grades only: measured, published, estimated, unknown. */
    public String grade() {
        return switch (this) {
            case MEASURED, PUBLISHED, UNKNOWN -> word();
            case ESTIMATED, MEMORY, ASSUMED -> ESTIMATED.word();
        };
    }
}
