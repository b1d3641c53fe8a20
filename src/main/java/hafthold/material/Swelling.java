package hafthold.material;

import hafthold.quantity.Band;

/**
 * Free dimensional change of a material with moisture along its principal axes: proportional to the change of moisture
 * content below a limit, none above it.
 */
public sealed interface Swelling permits ShrinkageSwelling, LinearSwelling {

    /**
     * Strain per moisture content.
     *
     * @param axis {@link Axis#ALONG}, {@link Axis#ACROSS} or {@link Axis#THROUGH}
     * @param fromMoistureFraction moisture content at which the strain counts from zero, kg/kg
     * @return dimensionless strain per kg/kg, of the size at that moisture content; zero or more
     */
    double perMoisture(Axis axis, double fromMoistureFraction);

    /** Moisture content in kg/kg above which nothing moves any more; infinite where there is none. */
    double stillAboveFraction();

    /** How far the movement along an axis may be off, as factors about 1 (low, 1, high). */
    Band relativeBand(Axis axis);

    /**
     * The same movement of a material that became heavier without growing, told per moisture content of the heavier mass.
     *
     * @param factor heavier dry mass over the former, positive
     */
    Swelling perHeavierMass(double factor);

    /**
     * Free strain from one moisture content to another.
     *
     * @param axis {@link Axis#ALONG}, {@link Axis#ACROSS} or {@link Axis#THROUGH}
     * @param fromMoistureFraction moisture content at which the strain is zero, kg/kg
     * @param toMoistureFraction moisture content asked for, kg/kg
     * @return change over size at the first moisture content; positive for growth
     */
    default double strain(Axis axis, double fromMoistureFraction, double toMoistureFraction) {
        double from = Math.min(fromMoistureFraction, stillAboveFraction());
        double to = Math.min(toMoistureFraction, stillAboveFraction());
        return perMoisture(axis, from) * (to - from);
    }
}
