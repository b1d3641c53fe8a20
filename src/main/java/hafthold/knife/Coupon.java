package hafthold.knife;

import hafthold.material.Cut;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import java.util.List;
import java.util.Optional;

/**
 * A strip or offcut of the shop's own stock that was measured in more than one air.
 *
 * @param name what it is called
 * @param material id as typed
 * @param ownName name under which the shop's own figures are to be kept; empty where they replace those of the material
 * @param cut how it lies; empty for the usual cut of the material
 * @param endGrainSeen whether someone looked at the rings on its end, so that the cut is true to a few degrees
 * @param width across its face, about
 * @param thickness through it, about
 * @param length along it, about
 * @param pieces how many alike pieces were weighed together, 1 or more
 * @param tools what it was measured with
 * @param ovenDry weight of all pieces dried in an oven until it changes no more
 * @param readings in the order of time, one or more
 */
public record Coupon(
        String name,
        String material,
        Optional<String> ownName,
        Optional<Cut> cut,
        boolean endGrainSeen,
        Length width,
        Length thickness,
        Length length,
        int pieces,
        CouponTools tools,
        Optional<Mass> ovenDry,
        List<CouponReading> readings) {

    /** Keeps its own copy. */
    public Coupon {
        readings = List.copyOf(readings);
        if (readings.isEmpty() || pieces < 1) {
            throw new IllegalArgumentException("a coupon has a reading and a piece, got " + readings.size()
                    + " readings of " + pieces + " pieces");
        }
    }

    /** The size of a side, about. */
    public Length size(CouponSide side) {
        return switch (side) {
            case WIDTH -> width;
            case THICKNESS -> thickness;
            case LENGTH -> length;
        };
    }

    /** How often a side was measured. */
    public long sizesOf(CouponSide side) {
        return readings.stream().filter(one -> one.sizes().containsKey(side)).count();
    }

    /** How often it was weighed, dry in the oven among them. */
    public long weights() {
        return readings.stream().filter(one -> one.weight().isPresent()).count() + (ovenDry.isPresent() ? 1 : 0);
    }

    /** The same measured with other tools. */
    public Coupon with(CouponTools others) {
        return changed(endGrainSeen, others, ovenDry, readings);
    }

    /** The same with other readings. */
    public Coupon with(List<CouponReading> others) {
        return changed(endGrainSeen, tools, ovenDry, others);
    }

    /** The same with a weight from the oven. */
    public Coupon driedTo(Mass dry) {
        return changed(endGrainSeen, tools, Optional.of(dry), readings);
    }

    /** The same with its rings looked at. */
    public Coupon withRingsSeen() {
        return changed(true, tools, ovenDry, readings);
    }

    private Coupon changed(boolean seen, CouponTools with, Optional<Mass> dry, List<CouponReading> read) {
        return new Coupon(name, material, ownName, cut, seen, width, thickness, length, pieces, with, dry, read);
    }
}
