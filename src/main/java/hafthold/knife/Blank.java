package hafthold.knife;

import hafthold.quantity.Length;

/**
 * A piece of stock as it is kept until scales are made of it, bare; it lies like the scale that comes of it.
 *
 * @param thickness away from the tang to come, 1 to 120 mm
 * @param width across the tang to come, 5 to 400 mm
 * @param length along the handle to come, 20 to 1500 mm
 * @param open where air gets at it
 */
public record Blank(Length thickness, Length width, Length length, Open open) {

    /**
     * Where air gets at a blank.
     *
     * @param bothFaces whether both wide faces are open, or one while the other lies on something
     * @param edges whether its long edges are open
     * @param ends whether its end grain is open, or waxed
     */
    public record Open(boolean bothFaces, boolean edges, boolean ends) {}

    /** Rejects sizes that no blank of a handle has. */
    public Blank {
        require("thickness", thickness, 1, 120);
        require("width", width, 5, 400);
        require("length", length, 20, 1500);
    }

    private static void require(String what, Length size, double least, double most) {
        if (!(size.millimetres() >= least && size.millimetres() <= most)) {
            throw new IllegalArgumentException("the " + what + " of a blank is " + (long) least + " to " + (long) most
                    + " mm, got " + size.millimetres() + " mm; is the unit right?");
        }
    }

    /** From where no water passes, its middle or the face it lies on, to the open face. */
    public double depthMetres() {
        return open.bothFaces() ? thickness.metres() / 2 : thickness.metres();
    }

    /** From its middle to an open edge; infinity where the edges are closed. */
    public double toEdgeMetres() {
        return open.edges() ? width.metres() / 2 : Double.POSITIVE_INFINITY;
    }

    /** From its middle to an open end; infinity where the ends are sealed. */
    public double toEndMetres() {
        return open.ends() ? length.metres() / 2 : Double.POSITIVE_INFINITY;
    }
}
