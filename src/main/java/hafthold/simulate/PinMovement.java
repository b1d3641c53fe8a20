package hafthold.simulate;

/**
 * One pin in one scale through the year, metres; gaps are negative where hole and pin overlap.
 *
 * @param along room along the handle
 * @param across room across the handle
 * @param head head above the face; without swing for a hidden pin
 * @param filledRing room that something soft fills, so that no gap shows before it is stretched beyond
 * @param splitUse tension beside the hole over what the scale bears across its grain, hour by hour, 0 without squeeze
 */
record PinMovement(Swing along, Swing across, Swing head, double filledRing, double[] splitUse) {

    /** Largest of the uses. */
    double largestSplitUse() {
        return Swing.of(splitUse).above();
    }

    /** Widest opening along the handle that shows, not negative. */
    double gapAlong() {
        return Math.max(0, along.above() - filledRing);
    }

    /** Widest opening across the handle that shows, not negative. */
    double gapAcross() {
        return Math.max(0, across.above() - filledRing);
    }

    /** Widest opening that shows, not negative. */
    double gap() {
        return Math.max(gapAlong(), gapAcross());
    }

    /** Largest overlap, not negative. */
    double squeeze() {
        return Math.max(along.below(), across.below());
    }
}
