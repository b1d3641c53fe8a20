package hafthold.mechanics;

import java.util.BitSet;

/**
 * A free strain that is the same everywhere in some rows of a grid: what the material would do if nothing held it.
 *
 * <p>A prescribed extension out of the section is the free strain of the opposite sign in every row.
 *
 * @param rows rows of elements
 * @param along strain along the section
 * @param through strain through the thickness
 * @param out strain out of the section
 */
record FreeStrain(BitSet rows, double along, double through, double out) {

    /** Keeps its own set. */
    FreeStrain {
        rows = BitSet.valueOf(rows.toLongArray());
    }

    /** A free strain in the rows from a first one to before an end. */
    FreeStrain(int firstRow, int endRow, double along, double through, double out) {
        this(span(firstRow, endRow), along, through, out);
    }

    private static BitSet span(int firstRow, int endRow) {
        BitSet rows = new BitSet();
        rows.set(firstRow, endRow);
        return rows;
    }

    boolean covers(int row) {
        return rows.get(row);
    }
}
