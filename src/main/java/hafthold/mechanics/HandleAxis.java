package hafthold.mechanics;

/** The three directions of a handle. */
public enum HandleAxis {
    /** From bolster to butt. */
    LENGTH(0),
    /** Edge to edge across the tang. */
    WIDTH(1),
    /** From the tang to the outer face. */
    THICKNESS(2);

    private final int place;

    HandleAxis(int place) {
        this.place = place;
    }

    /** Place among three numbers of which there is one an axis: length 0, width 1, thickness 2. */
    int place() {
        return place;
    }
}
