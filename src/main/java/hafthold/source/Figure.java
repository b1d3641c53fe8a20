package hafthold.source;

import hafthold.quantity.Band;

/**
 * A number that can be questioned: its band, where it comes from and how far to trust it.
 *
 * @param band low, value, high in the unit that the holder of the figure names
 * @param evidence how well it is founded
 * @param sourceKey key of a row in {@code sources.csv}
 * @param locator table, page, equation or remark inside the source; may be empty
 */
public record Figure(Band band, Evidence evidence, String sourceKey, String locator) {

    /** The figure to work with. */
    public double value() {
        return band.value();
    }

    /** The same provenance with another band, for a figure converted to another unit. */
    public Figure withBand(Band other) {
        return new Figure(other, evidence, sourceKey, locator);
    }
}
