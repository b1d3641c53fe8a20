package hafthold.material;

import hafthold.quantity.Band;

/** Free dimensional change of a material with moisture, along its principal axes. */
public sealed interface Swelling permits ShrinkageSwelling, LinearSwelling {

    /**
     * Free strain from one moisture content to another.
     *
     * @param axis {@link Axis#ALONG}, {@link Axis#ACROSS} or {@link Axis#THROUGH}
     * @param fromMoistureFraction moisture content at which the strain is zero, kg/kg
     * @param toMoistureFraction moisture content asked for, kg/kg
     * @return change over size at the first moisture content; positive for growth
     */
    double strain(Axis axis, double fromMoistureFraction, double toMoistureFraction);

    /** How far the movement along an axis may be off, as factors about 1 (low, 1, high). */
    Band relativeBand(Axis axis);
}
