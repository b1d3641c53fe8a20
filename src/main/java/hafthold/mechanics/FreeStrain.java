package hafthold.mechanics;

/**
 * A free strain that is the same everywhere in a band of grid rows: what the material would do if nothing held it.
 *
 * <p>A prescribed extension out of the section is the free strain of the opposite sign in every row.
 *
 * @param firstRow first row of elements
 * @param endRow row after the last
 * @param along strain along the section
 * @param through strain through the thickness
 * @param out strain out of the section
 */
record FreeStrain(int firstRow, int endRow, double along, double through, double out) {

    boolean covers(int row) {
        return firstRow <= row && row < endRow;
    }
}
