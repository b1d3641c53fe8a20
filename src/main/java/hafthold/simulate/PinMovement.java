package hafthold.simulate;

/**
 * One pin in one scale through the year, metres; gaps are negative where hole and pin overlap.
 *
 * @param along room along the handle
 * @param across room across the handle
 * @param head head above the face; without swing for a hidden pin
 * @param splitUse tension beside the hole over what the scale bears across its grain, 0 without squeeze
 */
record PinMovement(Swing along, Swing across, Swing head, double splitUse) {

    /** Widest opening, not negative. */
    double gap() {
        return Math.max(along.above(), across.above());
    }

    /** Largest overlap, not negative. */
    double squeeze() {
        return Math.max(along.below(), across.below());
    }
}
