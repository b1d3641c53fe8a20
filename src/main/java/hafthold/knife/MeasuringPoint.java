package hafthold.knife;

import java.util.Locale;

/** Where on a returned knife a step or a ring is measured. */
public enum MeasuringPoint {
    /** Edge of the scales against the tang, the mean of both sides, half way up the scale. */
    EDGES,
    /** The same of the left scale alone. */
    EDGE_LEFT,
    /** The same of the right scale alone. */
    EDGE_RIGHT,
    /** Head of a pin against the face of the scale, that which stands out or sinks furthest. */
    PIN_HEADS,
    /** Ring or halo that shows beside a pin, the widest. */
    PIN_GAP,
    /** End of a scale against the steel at bolster and butt, each. */
    ENDS,
    /** Edge of the scale against that of the bolster. */
    BOLSTER;

    /** The key in a file and in answers. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** True for the edge of the scales against the tang, of both sides or of one. */
    public boolean isEdge() {
        return this == EDGES || this == EDGE_LEFT || this == EDGE_RIGHT;
    }

    /** True for what rises where the wood swells: all but the heads of pins, which sink then. */
    public boolean risesWithDamp() {
        return this != PIN_HEADS;
    }

    /** True where the figure has a side to it: proud or shy; a ring is only wide or not. */
    public boolean isSigned() {
        return this != PIN_GAP;
    }
}
